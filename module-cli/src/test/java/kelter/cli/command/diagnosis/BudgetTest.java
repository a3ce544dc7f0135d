package kelter.cli.command.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import kelter.cli.program.Console;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The budget of a calculation of each module, at the command line. */
class BudgetTest {

  static Stream<List<String>> calculations() {
    return Stream.of(
        List.of("heater-resistance", "power=2 kW ± 10 W (k=2)", "voltage=230 V ± 1 V (k=2)"),
        List.of("jet-flow"),
        List.of("hydraulic-power"),
        List.of(
            "present-value",
            "amount=100 ± 2 (k=2)",
            "time=5 a ± 0.1 (k=2)",
            "rate=3 % ± 0.2 (k=2)"));
  }

  /** Uncertainties of normal inputs that are small beside their values are nearly linear. */
  @ParameterizedTest
  @MethodSource("calculations")
  void firstOrderHoldsAgainstMonteCarlo(List<String> words) {
    List<String> given = words.size() == 1 ? withUncertainty(words.get(0)) : words;
    String[] arguments =
        Stream.concat(Stream.concat(Stream.of("compute"), given.stream()), Stream.of("--budget"))
            .toArray(String[]::new);
    Console console = Console.run(arguments);

    assertEquals(0, console.code(), console.err());
    assertTrue(console.out().contains("Budget of"), console.out());
    assertTrue(console.out().contains("(k = 1.96, 95 %)"), console.out());
    assertTrue(console.out().contains("first order  holds to"), console.out());
    assertFalse(console.out().contains("does not hold"), console.out());
    assertTrue(console.widest() <= 80, console.out());
    assertEquals(console.out(), Console.run(arguments).out(), "the same seed, the same text");
  }

  private static List<String> withUncertainty(String name) {
    return name.equals("jet-flow")
        ? List.of(name, "pressure=20 kPa ± 0.4 (k=2)", "area=30 mm2 ± 0.5 (k=2)")
        : List.of(
            name,
            "flow=15 L/min ± 0.3 (k=2)",
            "head=3 m ± 0.05 (k=2)",
            "electric-power=60 W ± 1 (k=2)");
  }

  /** Ohm's and Joule's laws: R = U²/P, so u(R)/R = 2 u(U)/U by the voltage, u(P)/P by the power. */
  @Test
  void theLargestContributorComesFirst() {
    String out =
        Console.run(
                "compute",
                "heater-resistance",
                "power=2 kW ± 2.5 W (k=1)",
                "voltage=230 V ± 0.5 V (k=1)",
                "--budget")
            .out();
    String table = out.substring(out.indexOf("Budget of resistance,"));
    assertTrue(table.indexOf("  voltage") < table.indexOf("  power"), table);
    assertTrue(table.contains("0.115"), table); // 26.45 x 2 x 0.5 / 230
    assertTrue(table.contains("0.03306"), table); // 26.45 x 2.5 / 2000
    assertTrue(table.contains("26.45 ± 0.23 ohm"), table); // 1.96 x 0.1197
  }

  @Test
  void aDominatingRectangularIsTold() {
    Console console =
        Console.run(
            "compute", "heater-resistance", "power=2 kW ± 5 %", "voltage=230 V", "--budget");
    assertTrue(console.out().contains("does not hold"), console.out());
  }

  @Test
  void repeatedReadingsHaveALineOfTheirOwn() {
    Console console =
        Console.run(
            "compute",
            "heater-resistance",
            "power=2 kW",
            "voltage=230 V; 231 V; 229 V ± 1 (U-shaped)",
            "--budget");
    assertTrue(console.out().contains("voltage: scatter of 3"), console.out());
    assertTrue(console.out().contains("t, dof 2"), console.out());
    assertTrue(console.out().contains("U-shaped"), console.out());
    assertTrue(console.widest() <= 80, console.out());
  }

  @Test
  void jsonHoldsTheSame() {
    String[] arguments = {
      "compute",
      "heater-resistance",
      "power=2 kW ± 10 W (k=2)",
      "voltage=230 V ± 1 V (k=2)",
      "--shared",
      "power,voltage",
      "--seed",
      "7",
      "--budget",
      "--format",
      "json"
    };
    String out = Console.run(arguments).out();
    for (String name :
        List.of("budgets", "lines", "shared", "monte-carlo", "first-order-holds", "expanded")) {
      assertTrue(out.contains("\"" + name + "\""), out);
    }
    assertTrue(out.contains("\"seed\" : \"7\""), out);
    assertEquals(out, Console.run(arguments).out());
  }

  @Test
  void mistakesAreTold() {
    String[] start = {"compute", "heater-resistance", "power=2 kW ± 1 %", "voltage=230 V"};
    assertTrue(err(start, "--seed", "7").contains("add --budget"));
    assertTrue(err(start, "--budget", "--shared", "powr,voltage").contains("'power'"));
    assertTrue(err(start, "--budget", "--shared", "power,voltage").contains("must each state it"));
    assertTrue(err(start, "--budget", "--shared", "power").contains("name two"));
    assertTrue(err(start, "--budget", "--trials", "5").contains("40000"));
  }

  private static String err(String[] start, String... rest) {
    Console console =
        Console.run(Stream.concat(Stream.of(start), Stream.of(rest)).toArray(String[]::new));
    assertEquals(1, console.code());
    return console.err();
  }

  @Test
  void withoutUncertaintyItSaysHowToStateOne() {
    Console console =
        Console.run("compute", "heater-resistance", "power=2 kW", "voltage=230 V", "--budget");
    assertEquals(0, console.code());
    assertTrue(console.out().contains("There is no budget"), console.out());
  }
}

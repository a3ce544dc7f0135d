package kelter.cli.command.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import kelter.cli.program.Console;
import org.junit.jupiter.api.Test;

class SimulateCommandTest {

  private static final String BOILER =
      Path.of("..", "demo", "jobs", "water-boiler.json").toString();
  private static final String DRYER = Path.of("..", "demo", "jobs", "tumble-dryer.json").toString();

  private static Console simulate(String what, String... more) {
    String[] arguments = new String[more.length + 6];
    System.arraycopy(new String[] {"simulate", what, "-n", "12", "--led", "1"}, 0, arguments, 0, 6);
    System.arraycopy(more, 0, arguments, 6, more.length);
    return Console.run(arguments);
  }

  @Test
  void aPersonSeesHowGoodTheDiagnosisIsInEightyColumns() {
    Console console = simulate(BOILER);

    assertEquals(0, console.code(), console.err());
    for (String words :
        List.of(
            "12 machines with seed 1",
            "asked for 6 symptoms",
            "before any reading",
            "Asked for: ",
            "likeliest state is the truth",
            "Brier score",
            "log loss",
            "Expected calibration error",
            "Sure and wrong",
            "Most confused",
            "fixed order",
            "random order")) {
      assertTrue(console.out().contains(words), words + "\n" + console.out());
    }
    assertTrue(console.widest() <= 80, console.out());
  }

  @Test
  void theSameBytesForOneAndTwoThreadsAndOthersForAnotherSeed() {
    String one = simulate(BOILER, "--threads", "1", "--format", "json").out();

    assertEquals(one, simulate(BOILER, "--threads", "2", "--format", "json").out());
    assertNotEquals(one, simulate(BOILER, "--seed", "2", "--format", "json").out());
    for (String field : List.of("sureness", "calibration", "bins", "confusions", "orders")) {
      assertTrue(one.contains("\"" + field + "\""), field);
    }
  }

  @Test
  void asManySymptomsAreAskedForAsIsSaid() {
    String none = simulate(BOILER, "--symptoms", "0").out();
    assertTrue(none.contains("asked for 0 symptoms"), none);
    assertTrue(none.contains("Asked for: nothing."), none);

    String one = simulate(BOILER, "--symptoms", "1").out();
    assertTrue(one.contains("asked for 1 symptom,"), one);

    Console nine = Console.run("simulate", BOILER, "--symptoms", "9");
    assertEquals(1, nine.code());
    assertTrue(nine.err().contains("9 symptoms; 0 to 8 are allowed"), nine.err());
  }

  @Test
  void aKindOfApplianceIsTakenWithTypicalParts() {
    Console console = simulate("kettle");

    assertEquals(0, console.code(), console.err());
    assertTrue(console.out().contains("12 machines with seed 1"), console.out());
  }

  @Test
  void whatCannotBeSimulatedIsToldWithoutATrace() {
    Console unknown = simulate("glaswasher");
    assertEquals(1, unknown.code());
    assertTrue(unknown.err().contains("did you mean 'glasswasher'?"), unknown.err());

    Console nothingKnown = simulate("other");
    assertEquals(1, nothingKnown.code());
    assertTrue(nothingKnown.err().contains("no fault model"), nothingKnown.err());

    Console noCurve = simulate(DRYER, "--wrong-by", "10");
    assertEquals(1, noCurve.code());
    assertTrue(noCurve.err().contains("no component of the machine has a curve"), noCurve.err());

    Console none = Console.run("simulate", BOILER, "-n", "0");
    assertEquals(1, none.code());
    assertTrue(none.err().contains("1 to 1000000 are allowed"), none.err());

    assertEquals(2, Console.run("simulate", BOILER, "-n", "many").code());
  }
}

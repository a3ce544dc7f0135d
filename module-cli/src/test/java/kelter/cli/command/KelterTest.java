package kelter.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import kelter.cli.template.Template;
import kelter.cli.wiring.Modules;
import kelter.core.file.JobFile;
import kelter.core.job.Component;
import kelter.core.job.Job;
import kelter.core.vocabulary.Vocabulary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class KelterTest {

  @TempDir private Path folder;

  @Test
  void withoutAWordItTellsWhatThereIs() {
    Console console = Console.run();

    assertEquals(0, console.code());
    for (String command :
        List.of(
            "new",
            "check",
            "diagnose",
            "weigh",
            "simulate",
            "readings",
            "compute",
            "modules",
            "instruments")) {
      assertTrue(console.out().contains("  " + command), command);
    }
    assertTrue(console.out().contains("Exit codes"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "new",
        "check",
        "diagnose",
        "weigh",
        "simulate",
        "readings",
        "compute",
        "modules",
        "instruments"
      })
  void everyCommandExplainsItselfWithAnExampleIn80Columns(String command) {
    Console console = Console.run(command, "--help");

    assertEquals(0, console.code());
    assertTrue(console.out().contains("Example"), console.out());
    assertTrue(console.out().contains("  kelter " + command), console.out());
    assertTrue(console.widest() <= 80, console.out());
  }

  @Test
  void theVersionIsThatOfTheModule() {
    Console console = Console.run("--version");

    assertEquals(0, console.code());
    String version = Kelter.class.getModule().getDescriptor().rawVersion().orElseThrow();
    assertTrue(console.out().startsWith("kelter " + version + ", Java "), console.out());
    assertTrue(version.matches("\\d+\\.\\d+.*"), version);
  }

  @Test
  void usageMistakesExitWith2AndASuggestion() {
    Console command = Console.run("diagnoes", "x.json");
    assertEquals(2, command.code());
    assertTrue(command.err().contains("diagnose"), command.err());

    Console option = Console.run("diagnose", "--fromat", "json", "x.json");
    assertEquals(2, option.code());
    assertTrue(option.err().contains("kelter diagnose --help"), option.err());

    assertEquals(2, Console.run("diagnose").code());
  }

  @Test
  void unusableInputExitsWith1WithoutATrace() {
    Console console = Console.run("diagnose", folder.resolve("none.json").toString());

    assertEquals(1, console.code());
    assertEquals("", console.out());
    assertTrue(console.err().contains("no such file"));
    assertFalse(console.err().contains("at kelter."));
  }

  @Test
  void heaterResistanceFromItsNameplate() {
    Console console = Console.run("compute", "heater-resistance", "power=2kW", "voltage=230V");

    assertEquals(0, console.code());
    // Ohm's law: 230^2/2000 = 26.45; the band by IEC 60335-1 clause 10, arithmetic on its table.
    assertTrue(console.out().contains("26.45 ohm"), console.out());
    assertTrue(console.out().contains("25.19 ohm"), console.out());
    assertTrue(console.out().contains("29.39 ohm"), console.out());
    assertTrue(console.out().contains("formula"), console.out());
    assertTrue(console.out().contains("IEC 60335-1"), console.out());
    assertTrue(console.out().contains("published"), console.out());
    assertTrue(console.widest() <= 80, console.out());
  }

  @Test
  void wrongUnitIsRefusedWithWhatWasExpected() {
    Console console = Console.run("compute", "heater-resistance", "power=2V", "voltage=230V");

    assertEquals(1, console.code());
    assertTrue(console.err().contains("a power is expected"), console.err());
    assertTrue(console.err().contains("W"), console.err());
  }

  @Test
  void misspeltCalculationAndParameterAreSuggested() {
    assertTrue(Console.run("compute", "heater-resistence").err().contains("heater-resistance"));
    Console parameter = Console.run("compute", "heater-resistance", "powr=2kW", "voltage=230V");
    assertTrue(parameter.err().contains("did you mean 'power'?"), parameter.err());
    assertTrue(parameter.err().contains("is missing"), "all mistakes at once");
  }

  @Test
  void calculationWithoutValuesTellsWhatItTakes() {
    Console console = Console.run("compute", "heater-resistance");

    assertEquals(0, console.code());
    assertTrue(console.out().contains("power") && console.out().contains("voltage"));
  }

  @Test
  void signsThatTheTerminalLacksAreSpeltOut() {
    Console console =
        Console.run(
            StandardCharsets.US_ASCII,
            "compute",
            "heater-resistance",
            "power=2kW ± 50 W",
            "voltage=230V");

    assertEquals(0, console.code());
    assertTrue(console.out().contains("+/-"), console.out());
    assertFalse(console.out().contains("?"), console.out());
  }

  @Test
  void newJobCanBeReadBackAndIsNeverWrittenOver() throws IOException {
    Path file = folder.resolve("job.json");

    assertEquals(0, Console.run("new", "glasswasher", "-o", file.toString()).code());
    assertEquals(0, Console.run("check", file.toString()).code());
    String first = Files.readString(file);
    assertTrue(first.contains("wash-pump"), first);

    assertEquals(1, Console.run("new", "glasswasher", "-o", file.toString()).code());
    assertEquals(first, Files.readString(file));
    assertTrue(Console.run("new", "glaswasher").err().contains("did you mean 'glasswasher'?"));
  }

  /** Which parts a kind of machine has is common practice, no source. */
  @Test
  void aTemplateHasThePartsOfItsMachine() {
    Vocabulary words = Modules.find(Optional.empty()).vocabulary();
    for (String kind : Template.kinds()) {
      Job job = JobFile.parse(Template.of(kind, "2026-11-02", words), words).job();
      List<String> parts =
          job.appliance().components().stream().map(Component::kind).sorted().toList();
      boolean dryer = kind.equals("tumble-dryer");
      boolean washes = kind.startsWith("wash") || kind.equals("glasswasher");
      assertEquals(dryer, parts.contains("air-heater"), kind);
      assertEquals(washes || kind.equals("water-boiler"), parts.contains("heater"), kind);
      assertEquals(washes, parts.contains("drain-pump"), kind);
      assertEquals(dryer || kind.startsWith("wash"), parts.contains("motor"), kind);
      assertEquals(!kind.equals("other"), parts.contains("supply-cord"), kind);
      assertEquals(parts, Template.components(kind).stream().sorted().toList(), kind);
    }
  }

  @Test
  void modulesAreToldWithTheirSources() {
    Console text = Console.run("modules");
    assertEquals(0, text.code());
    for (String id : List.of("hydraulics", "electrical", "costing", "heater-resistance")) {
      assertTrue(text.out().contains(id), id);
    }
    assertTrue(Console.run("modules", "--format", "json").out().contains("\"standing\""));
  }
}

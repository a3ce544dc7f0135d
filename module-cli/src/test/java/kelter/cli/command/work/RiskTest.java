package kelter.cli.command.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import kelter.cli.program.Console;
import org.junit.jupiter.api.Test;

/** The same reading with a coarse and a fine instrument, and the risks of a wrong verdict. */
class RiskTest {

  private static String job(String name) {
    return Path.of("..", "demo", "jobs", name + ".json").toString();
  }

  @Test
  void aFineInstrumentTurnsUndecidedIntoAVerdict() {
    Console coarse = Console.run("check", job("heater-coarse"));
    assertEquals(0, coarse.code(), coarse.err());
    assertTrue(coarse.out().contains("undecided"), coarse.out());
    assertTrue(coarse.out().contains("fine-meter as in the library"), coarse.out());
    assertTrue(coarse.out().contains("common practice, no source"), coarse.out());

    Console fine = Console.run("check", job("heater-fine"));
    assertEquals(0, fine.code(), fine.err());
    assertTrue(fine.out().contains(": conforms"), fine.out());
    assertFalse(fine.out().contains("undecided"), fine.out());
  }

  @Test
  void theLibraryIsToldInEightyColumns() {
    Console text = Console.run("instruments");
    assertEquals(0, text.code(), text.err());
    assertTrue(text.out().contains("bucket-and-watch"), text.out());
    assertTrue(
        text.out().replaceAll("\\s+", " ").contains("common practice, no source"), text.out());
    assertTrue(text.widest() <= 80, text.out());
    assertTrue(Console.run("instruments", "--format", "json").out().contains("expanded-at-end"));
  }

  @Test
  void risksAreToldOnRequestOnly() {
    assertFalse(Console.run("check", job("heater-coarse")).out().contains("Risks"));
    Console risks = Console.run("check", "--risk", job("heater-coarse"));
    assertEquals(0, risks.code(), risks.err());
    assertTrue(risks.out().contains("consumer's risk"), risks.out());
    assertTrue(risks.out().contains("Guard band for 95 %"), risks.out());
    assertTrue(risks.widest() <= 80, risks.out());
    String json = Console.run("check", "--risk", "--format", "json", job("heater-coarse")).out();
    assertTrue(json.contains("\"global-consumer\""), json);
    assertTrue(json.contains("\"to-settle\""), json);
    assertTrue(json.contains("\"library-instruments\""), json);
  }
}

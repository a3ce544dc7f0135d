package kelter.cli.command.diagnosis;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import kelter.cli.program.Console;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Limits are told in a unit that a person can read, whatever unit the reading has. */
class TellingUnitTest {

  @TempDir private Path folder;

  private String check(String reading) throws IOException {
    String text = Files.readString(Path.of("..", "demo", "jobs", "washer-extractor.json"));
    Path job = folder.resolve("job.json");
    Files.writeString(
        job, text.replace("\"reading\": \"26.6 ohm\"", "\"reading\": \"" + reading + "\""));
    return Console.run("check", job.toString()).out().replaceAll("\\s+", " ");
  }

  @Test
  void aUnitThatFitsTheLimitsStays() throws IOException {
    assertTrue(check("26.6 ohm").contains(" ohm; allowed 12.22 to 14."), check("26.6 ohm"));
    assertTrue(check("0.0266 kOhm").contains(" kohm; allowed 0.01222"), check("0.0266 kOhm"));
  }

  @Test
  void aUnitInWhichTheLimitsWouldBeNoughtsIsLeft() throws IOException {
    String said = check("26.6 MOhm");

    assertTrue(said.contains(" Mohm; allowed 12.22 to 14.69 ohm"), said);
    assertFalse(said.contains("e-05"), said);
  }
}

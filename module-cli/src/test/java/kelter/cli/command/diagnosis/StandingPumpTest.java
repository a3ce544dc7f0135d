package kelter.cli.command.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import kelter.cli.program.Console;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A drain pump that does not turn, as a person is told of it. */
class StandingPumpTest {

  private static final String JOB =
      """
      { "format": "kelter-job/2", "id": "standing-pump", "date": "2026-11-25",
        "appliance": {
          "kind": "other", "maker": "Quillby", "age": "5 years",
          "nameplate": { "voltage": "230 V", "frequency": "50 Hz", "power": "2200 W",
                         "protection-class": "I" },
          "components": [
            { "id": "drain-pump", "nameplate": { "power": "30 W", "voltage": "230 V" } },
            { "id": "heater", "nameplate": { "power": "2000 W", "voltage": "230 V" } } ] },
        "complaint": { "said": "water stays in the drum" },
        "symptoms": { "does-not-drain": "yes" },
        "measurements": [ %s ],
        "prices": { "currency": "EUR", "labour-per-hour": "60 EUR" } }
      """;

  @TempDir private Path folder;

  private static String read(String observable, String reading) {
    return ", { \"of\": \"drain-pump\", \"observable\": \"%s\", \"reading\": \"%s\" }"
        .formatted(observable, reading);
  }

  private String run(String command, String measurements) throws IOException {
    return run(command, JOB, measurements);
  }

  private String run(String command, String job, String measurements) throws IOException {
    Path file = folder.resolve("job.json");
    Files.writeString(file, job.formatted(measurements.replaceFirst("^, ", "")));
    Console console =
        command.equals("diagnose")
            ? Console.run(command, "--full", file.toString())
            : Console.run(command, file.toString());
    assertEquals(0, console.code(), console.err());
    return console.out();
  }

  /** The words of an output from one line on, white space run together. */
  private static String after(String out, String start, String end) {
    String part = out.substring(out.indexOf(start));
    return part.substring(0, part.indexOf(end)).replaceAll("\\s+", " ");
  }

  private static final String NO_POWER =
      read("power", "0 W") + read("flow", "0 L/min") + read("turns", "freely");

  @Test
  void noPowerDoesNotConform() throws IOException {
    assertTrue(run("check", NO_POWER).contains("does not conform"), "0 W of 30 W");
  }

  /** Also where somebody calls the noise usual, which a pump without power does not make. */
  @Test
  void noPowerIsAnOpenWindingOrNoVoltageAndTheOhmmeterTells() throws IOException {
    for (String noise : new String[] {"", read("noise", "usual"), read("noise", "silent")}) {
      String out = run("diagnose", NO_POWER + noise);
      String wrong = after(out, "Most likely", "  3. ");
      assertTrue(wrong.contains("no voltage at the drain pump"), wrong);
      assertTrue(wrong.contains("winding of the drain pump open"), wrong);
      String next = after(out, "Check next", "  2. ");
      assertTrue(next.contains("1. drain-pump: resistance of the winding"), next);
      assertTrue(next.contains("dead"), next);
    }
  }

  /** A pump whose nameplate nobody can read takes power too where it runs. */
  @Test
  void noPowerIsFoundWithoutANameplate() throws IOException {
    String bare = JOB.replace("\"power\": \"30 W\", \"voltage\": \"230 V\"", "");
    String out = run("diagnose", bare, NO_POWER);
    String wrong = after(out, "Most likely", "Check next");
    assertTrue(after(wrong, "1. ", " 2. ").contains("no voltage at the drain pump"), wrong);
    assertTrue(wrong.contains("winding of the drain pump open"), wrong);
    String usual = run("diagnose", bare, read("power", "31 W"));
    assertTrue(!after(usual, "Most likely", "Check next").contains("winding"), usual);
  }

  @Test
  void theOhmmeterSaysWhatToRenew() throws IOException {
    String open = run("diagnose", NO_POWER + read("winding-resistance", "OL"));
    assertTrue(after(open, "  1. ", "for:").contains("winding of the drain pump open"), open);
    assertTrue(after(open, "What to do", "  2. ").contains("renew the drain pump"), open);
    String sound = run("diagnose", NO_POWER + read("winding-resistance", "165 ohm"));
    assertTrue(after(sound, "  1. ", "for:").contains("no voltage at the drain pump"), sound);
    String work = after(sound, "What to do", "  2. ");
    assertTrue(work.contains("find where the voltage for the pump stays away"), work);
    assertTrue(work.contains("competent and licensed"), work);
  }

  @Test
  void whatIsStuckIsJammed() throws IOException {
    for (String more : new String[] {"", read("power", "29 W"), read("noise", "hums")}) {
      String out = run("diagnose", read("turns", "stuck") + more);
      String first = after(out, "  1. ", "for:");
      assertTrue(first.contains("drain pump jammed"), first);
      assertTrue(after(out, "What to do", "  2. ").contains("clear the pump chamber"), out);
    }
  }
}

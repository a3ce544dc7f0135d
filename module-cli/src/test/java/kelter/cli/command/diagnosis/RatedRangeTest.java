package kelter.cli.command.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import kelter.cli.program.Console;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A nameplate typed as it stands on the machine, with a range of voltages and two frequencies. */
class RatedRangeTest {

  private static final String JOB =
      """
      {
        "format": "kelter-job/1",
        "id": "range-1",
        "date": "2026-03-01",
        "appliance": {
          "kind": "washer",
          "nameplate": { "voltage": "%s", "frequency": "%s", "power": "1850-2200 W" },
          "components": [
            { "id": "heater", "nameplate": { "power": "2 kW" } },
            {
              "id": "drain-pump",
              "nameplate": { "power": "34 W" },
              "curves": { "head": [["0 L/min", "2.0 m"], ["10 L/min", "1.5 m"], ["20 L/min", "0.5 m"]] }
            }
          ]
        },
        "measurements": [
          { "of": "heater", "observable": "resistance", "reading": "%s", "at": { "temperature": "20 Cel" } },
          { "of": "drain-pump", "observable": "head", "reading": "1.95 m" }
        ]
      }
      """;

  @TempDir private Path folder;

  private String job(String voltage, String frequency, String reading) throws IOException {
    Path file = folder.resolve("job.json");
    return Files.writeString(file, JOB.formatted(voltage, frequency, reading)).toString();
  }

  private static String flat(String text) {
    return text.replaceAll("\\s+", " ");
  }

  /** Arithmetic on IEC 60335-1, 10.1: 2 kW belong to 230 V, so that 24.43 to 29.39 Ohm conform. */
  @Test
  void checkHoldsThePowerAgainstTheMeanAndSaysSo() throws IOException {
    Console console = Console.run("check", job("220-240 V", "50/60 Hz", "26.4 ohm"));
    assertEquals(0, console.code(), console.err());
    String out = flat(console.out());
    assertTrue(out.contains("24.43"), out);
    assertTrue(out.contains("29.39"), out);
    assertTrue(out.contains("power taken as that at 230 V, the mean of 220 V to 240 V"), out);
    assertTrue(out.contains("50 Hz taken as the frequency of the supply"), out);
    assertFalse(out.contains("does not conform"), out);
    assertTrue(console.widest() <= 80, console.out());
  }

  @Test
  void checkOfAnOpenHeaterDoesNotConform() throws IOException {
    Console console = Console.run("check", job("220 \u2013 240 V", "50-60 Hz", "OL"));
    assertEquals(0, console.code(), console.err());
    assertTrue(console.out().contains("does not conform"), console.out());
  }

  @Test
  void diagnoseTakesTheRangeToo() throws IOException {
    Console good =
        Console.run("diagnose", "--format", "json", job("220-240 V", "50/60 Hz", "26.4 ohm"));
    assertEquals(0, good.code(), good.err());
    assertFalse(good.out().contains("NaN"), good.out());
    Console open = Console.run("diagnose", job("200-240 V", "50/60 Hz", "OL"));
    assertEquals(0, open.code(), open.err());
    assertTrue(open.out().contains("heater"), open.out());
  }

  @Test
  void aBadRangeIsToldWhereItStands() throws IOException {
    for (String command : new String[] {"check", "diagnose"}) {
      Console console = Console.run(command, job("208/240 V", "60-50 Hz", "26.4 ohm"));
      assertEquals(1, console.code());
      assertEquals("", console.out());
      String err = flat(console.err());
      assertTrue(err.contains("/appliance/nameplate/voltage"), err);
      assertTrue(err.contains("write the one that it is set to, for instance '240 V'"), err);
      assertTrue(err.contains("/appliance/nameplate/frequency"), err);
      assertTrue(err.contains("the lower limit stands first"), err);
    }
  }
}

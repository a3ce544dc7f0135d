package kelter.cli.program;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Quantities in a job as people type them: what is taken, and what is told of the others. */
class TypedQuantitiesTest {

  private static final String JOB =
      """
      {
        "format": "kelter-job/1",
        "id": "typed-1",
        "date": "2026-03-01",
        "appliance": {
          "kind": "washer",
          "nameplate": { "voltage": "230 V", "frequency": "50 Hz", "protection-class": "I" },
          "components": [
            { "id": "heater", "nameplate": { "power": "2 kW" }, "figures": { "elements": "2" } },
            { "id": "cord", "kind": "supply-cord",
              "figures": { "length": "1.8 m", "section": "1.5 mm2" } },
            {
              "id": "drain-pump",
              "nameplate": { "power": "34 W" },
              "figures": { "static-lift": "0.8 m", "hose-length": "1.9 m", "hose-bore": "20 mm" },
              "curves": { "head": [["0 L/min", "2.0 m"], ["10 L/min", "1.5 m"], ["20 L/min", "0.5 m"]] }
            }
          ]
        },
        "instruments": [
          { "id": "own", "functions": [
            { "measures": "resistance", "accuracy": "1 %", "range": "200 ohm" },
            { "measures": "pressure", "accuracy": "1 %" } ] }
        ],
        "measurements": [
          { "of": "heater", "observable": "resistance", "reading": "26.4 ohm", "instrument": "own" },
          { "of": "cord", "observable": "touch-current", "reading": "0.2 mA" },
          { "of": "drain-pump", "observable": "head", "reading": "1.95 m" },
          { "of": "drain-pump", "observable": "drain-time", "reading": "70 s" }
        ],
        "prices": { "currency": "USD", "call-out": "45 USD", "repair-warranty": "1 a" },
        "use": { "carbon-of-new": "300 kg" }
      }
      """;

  private static Console check(Path directory, String was, String typed) throws IOException {
    assertTrue(JOB.contains(was), was);
    Path job =
        Files.writeString(
            directory.resolve("job.json"),
            JOB.replace("\"" + was + "\"", "\"" + typed.replace("\"", "\\\"") + "\""));
    return Console.run("check", job.toString());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "26.4 ohm | ~26 ohm",
        "70 s | 1:10",
        "70 s | 1 min 10 s",
        "70 s | 1.200 min",
        "1.95 m | 2.7 psi",
        "1.95 m | 19 kPa",
        "1.95 m | 6 ft 5 in",
        "1.95 m | 78 in. w.c.",
        "20 mm | 3/4 in",
        "20 mm | ¾\"",
        "230 V | 120/240 V",
        "34 W | 1/20 hp",
        "45 USD | $45",
        "45 USD | 45 $"
      })
  void isTaken(String was, String typed, @TempDir Path directory) throws IOException {
    Console console = check(directory, was, typed);
    assertEquals(0, console.code(), console.err());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "0.2 mA | 250 MA | did you mean 250 mA?",
        "0.2 mA | 1e300 A | too large",
        "70 s | 7 0 s | write '70 s'",
        "70 s | 70 h | 0 to 1800 s is possible here; did you mean 70",
        "1.95 m | 1.95 km | did you mean 1.95 m?",
        "1.95 m | 1e300 m | too large",
        "230 V | 12 MV | did you mean 12 V?",
        "230 V | 23 0 V | write '230 V'",
        "26.4 ohm | 500 ohm | beyond the range of 'own', which ends at 200 ohm",
        "26.4 ohm | 26.400 ohm | write 26400 or 26.40",
        "2 | -2 | 1 to 24 is possible",
        "2 | 0 | 1 to 24 is possible",
        "2 | 2.5 | whole number",
        "2 | 1e9 | 1 to 24 is possible",
        "1.9 m | -1 m | a length is never negative",
        "1.9 m | 2 psi | a length is expected",
        "1.5 mm2 | 0 mm2 | cannot be",
        "1.5 mm2 | 14 AWG | gauge number",
        "1 % | 0.8 | '0.8 %' of the reading",
        "45 USD | 45 | is not an amount of money",
        "1 a | 1e300 a | too large",
        "1 a | 1e9 a | cannot be",
        "300 kg | 1e300 kg | too large"
      })
  void isRefused(String was, String typed, String told, @TempDir Path directory)
      throws IOException {
    Console console = check(directory, was, typed);
    assertEquals(1, console.code(), console.err());
    assertTrue(unbroken(console.err()).contains(told), console.err());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "wire-gauge gauge=12.5 | whole number",
        "heater-connection resistance=26ohm elements=2.5 voltage=230V | whole number",
        "heater-resistance power=2kW voltage=1e300V | too large",
        "heater-resistance power=2kW voltage=12MV | outside"
      })
  void isRefusedOnTheCommandLine(String line, String told) {
    Console console = Console.run(("compute " + line).split(" "));
    assertEquals(1, console.code(), console.err());
    assertTrue(unbroken(console.err()).contains(told), console.err());
  }

  @Test
  void aHeadThatWasReadInPsiIsToldInPsi(@TempDir Path directory) throws IOException {
    String out = check(directory, "1.95 m", "2.7 psi").out();
    assertTrue(unbroken(out).contains("psi; allowed"), out);
  }

  /**
   * Arithmetic on the definition of Kv: 3 US gallons in a minute at 1 bar, 14.5038 psi, are 3.523
   * at 20 psi, and 3.524 for water of 999.1 kg/m3.
   */
  @Test
  void aFlowRateThatWasGivenInGallonsIsToldInGallons() {
    String[] line = {"compute", "valve-flow", "kv=3 gpm", "pressure-drop=20 psi"};
    assertTrue(unbroken(Console.run(line).out()).contains("flow 3.524 gal (US)/min"));
    String json = Console.run(line[0], line[1], line[2], line[3], "--format", "json").out();
    assertTrue(json.contains("\"unit\" : \"[gal_us]/min\""), json);
  }

  private static String unbroken(String text) {
    return text.replaceAll("\\s+", " ");
  }
}

package kelter.cli.json;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import kelter.cli.wiring.Found;
import kelter.core.file.json.JsonText;
import kelter.core.problem.InputException;
import kelter.core.workshop.Workshop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Held against the reader: what the strict schema refuses below, the reader refuses too. */
class StrictJobSchemaTest {

  private static final Path JOBS = Path.of("..", "demo", "jobs");
  private static final Workshop WORKSHOP = Workshop.of(Found.usual().modules());
  private static final Schema STRICT =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(StrictJobSchema.of(WORKSHOP.vocabulary()), InputFormat.JSON);

  private static String washer() throws IOException {
    return Files.readString(JOBS.resolve("washer-extractor.json"));
  }

  private static List<String> problems(String job) {
    return STRICT.validate(job, InputFormat.JSON).stream().map(Object::toString).toList();
  }

  private static void assertReaderRefuses(String job) {
    assertThrows(
        InputException.class,
        () ->
            WORKSHOP
                .open(
                    WORKSHOP
                        .read(JsonText.read(job.getBytes(StandardCharsets.UTF_8), "job", ""))
                        .job())
                .findings());
  }

  @Test
  void everyJobOfTheDemoPasses() throws IOException {
    try (Stream<Path> jobs = Files.list(JOBS)) {
      for (Path job : jobs.sorted().toList()) {
        assertEquals(List.of(), problems(Files.readString(job)), job.toString());
      }
    }
  }

  /** As people write them. */
  @ParameterizedTest
  @ValueSource(strings = {"7a", "7 y", "7 yr", "7 yrs", "1 year", "18 month", "18 mo"})
  void anAgeIsTaken(String age) throws IOException {
    String job = washer().replace("\"7 years\"", "\"" + age + "\"");
    assertEquals(List.of(), problems(job));
    assertDoesNotThrow(() -> WORKSHOP.read(job));
  }

  /** A change of the washer-extractor of the demo, for each way to be wrong. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "26.6 ohm | 26.6 kg",
        "26.6 ohm | 26.6 V",
        "26.6 ohm | 26.6",
        "26.6 ohm | -26.6 ohm",
        "26.6 ohm | hot",
        "26.6 ohm | 26.6 ohm ohm",
        "\"6.4 L/min\" | \"6.4 L\"",
        "\"6.4 L/min\" | \"-6.4 L/min\"",
        "\"6.4 L/min\" | 6.4",
        "\"27 W\" | \"27 bar\"",
        "\"louder\" | \"very loud\"",
        "\"louder\" | \"yes\"",
        "\"11 V\" | \"11 A\"",
        "> 200 MOhm | > 200 MV",
        "\"1.84 m\" | \"1.84 s\"",
        "\"observable\": \"noise\" | \"observable\": \"noises\"",
        "\"observable\": \"noise\" | \"observable\": \"resistance-to-earth\"",
        "\"of\": \"heater\" | \"of\": \"supply-cord\"",
        "\"observable\": \"dc-link-voltage\" | \"observable\": \"head\"",
        "\"at\": { \"flow\": \"0 L/min\" | \"at\": { \"flwo\": \"0 L/min\"",
        "\"at\": { \"flow\": \"0 L/min\" | \"at\": { \"flow\": \"0 m\"",
        "\"22 Cel\" | \"22 m\"",
        "\"drains-slowly\": \"yes\" | \"drains-slwly\": \"yes\"",
        "\"drains-slowly\": \"yes\" | \"drains-slowly\": \"maybe\"",
        "\"id\": \"drain-pump\" | \"id\": \"drain-pump\", \"kind\": \"pumpe\"",
        "\"static-lift\" | \"static-lfit\"",
        "\"static-lift\": \"0.85 m\" | \"static-lift\": \"0.85 s\"",
        "\"volume\": \"14 L\" | \"static-lift\": \"14 m\"",
        "\"head\": [ | \"heads\": [",
        "[\"8 L/min\", \"1.93 m\"] | [\"8 L/min\", \"1.93 W\"]",
        "[\"8 L/min\", \"1.93 m\"] | [\"8 L/min\"]",
        "\"2.5 mm2\" | \"2.5 mm\"",
        "\"7 years\" | \"7 kg\"",
        "\"7 years\" | \"seven years\"",
        "\"7 years\" | \"-7 years\"",
        "\"use\": { | \"use\": { \"energy-per-cycle\": \"1.1 kW\",",
        "\"use\": { | \"use\": { \"water-per-cycle\": \"62 L/min\",",
        "\"use\": { | \"use\": { \"carbon-of-new\": \"300 l\",",
        "\"market\": \"EU\" | \"market\": \"Europe\"",
        "\"2026-10-19\" | \"19.10.2026\"",
        "\"58 EUR\" | 58",
        "\"tax-rate\": \"21 %\" | \"tax-rate\": \"-21 %\"",
        "\"currency\": \"EUR\" | \"currency\": \"euro\"",
        "\"measures\": \"head\" | \"measures\": \"heads\"",
        "\"maker\" | \"makr\"",
        "\"reading\": \"27 W\", | "
      })
  void aWrongJobIsRefused(String found, String wrong) throws IOException {
    String job = washer();
    assertTrue(job.contains(found), found);
    String changed = job.replace(found, wrong == null ? "" : wrong);
    assertFalse(problems(changed).isEmpty(), "the schema takes " + wrong);
    assertReaderRefuses(changed);
  }

  /**
   * What no schema of this kind can tell, since it holds one place against another or counts days:
   * the reader does.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "\"of\": \"drain-pump\", \"observable\": \"noise\" |"
            + " \"of\": \"drain-pumpe\", \"observable\": \"noise\"",
        "\"instrument\": \"plug-meter\" | \"instrument\": \"plug-metre\"",
        "\"id\": \"bucket-and-watch\" | \"id\": \"standpipe\"",
        "\"2026-10-19\" | \"2026-02-30\"",
        "\"58 EUR\" | \"58 NOK\"",
        "\"27 W\" | \"99999999 W\"",
        "\"id\": \"supply-cord\" | \"id\": \"heater\""
      })
  void whatASchemaCannotTellIsLeftToTheReader(String found, String wrong) throws IOException {
    String job = washer();
    assertTrue(job.contains(found), found);
    String changed = job.replace(found, wrong);
    assertReaderRefuses(changed);
  }
}

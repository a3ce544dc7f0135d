package kelter.core.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonText;
import kelter.core.job.Instrument;
import kelter.core.safety.ProtectionClass;
import kelter.core.source.Standing;
import org.junit.jupiter.api.Test;

/** The published schema and the reader must tell the same story. */
class JobSchemaTest {

  private static final Schema SCHEMA =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(JobFile.schema(), InputFormat.JSON);

  private static final Json.Obj DEFINITIONS =
      (Json.Obj)
          ((Json.Obj)
                  JsonText.read(JobFile.schema().getBytes(StandardCharsets.UTF_8), "schema", ""))
              .members()
              .get("$defs");

  @Test
  void acceptsAJobThatUsesAllOfTheFormat() {
    assertEquals(0, SCHEMA.validate(Samples.FULL, InputFormat.JSON).size());
  }

  @Test
  void acceptsANameplateWithRanges() {
    String ranges =
        Samples.FULL.replace("\"230 V\"", "\"220-240 V\"").replace("\"50 Hz\"", "\"50/60 Hz\"");
    assertEquals(0, SCHEMA.validate(ranges, InputFormat.JSON).size());
  }

  @Test
  void refusesWhatTheReaderRefuses() {
    String unknown = Samples.FULL.replace("\"maker\"", "\"makr\"");
    String noFormat = Samples.FULL.replace("\"format\": \"kelter-job/1\",", "");
    String number = Samples.FULL.replace("\"900 NOK\"", "900");
    String volts = Samples.FULL.replace("\"230 V\"", "230");

    for (String text : new String[] {unknown, noFormat, number, volts}) {
      assertFalse(SCHEMA.validate(text, InputFormat.JSON).isEmpty());
    }
  }

  @Test
  void knowsTheSameFieldsAsTheReader() {
    Map<String, Set<String>> fields =
        Map.ofEntries(
            Map.entry("job", JobReader.JOB),
            Map.entry("appliance", ApplianceReader.APPLIANCE),
            Map.entry("nameplate", NameplateReader.NAMEPLATE),
            Map.entry("component", ApplianceReader.COMPONENT),
            Map.entry("source", ApplianceReader.SOURCE),
            Map.entry("complaint", JobReader.COMPLAINT),
            Map.entry("instrument", InstrumentReader.INSTRUMENT),
            Map.entry("function", InstrumentReader.FUNCTION),
            Map.entry("measurement", MeasurementReader.MEASUREMENT),
            Map.entry("prices", PricesReader.PRICES),
            Map.entry("spread", PricesReader.SPREAD),
            Map.entry("use", UseReader.USE));
    fields.forEach((name, known) -> assertEquals(known, properties(name).members().keySet(), name));
  }

  @Test
  void knowsTheSameWordsAsTheRecords() {
    assertEquals(Instrument.MEASURES.keySet(), words("function", "measures"));
    assertEquals(
        names(Arrays.stream(Standing.values()).map(Standing::words).toArray(String[]::new)),
        words("source", "standing"));
    assertTrue(
        SCHEMA
                .validate(Samples.FULL.replace("\"invented\"", "\"a rumour\""), InputFormat.JSON)
                .size()
            > 0);
  }

  @Test
  void takesTheProtectionClassesThatTheReaderTakes() {
    for (String text : new String[] {"I", "2", "class III", "Class 1", "ii", "IV", "0", "two"}) {
      String job =
          Samples.FULL.replace(
              "\"protection-class\": \"I\"", "\"protection-class\": \"" + text + "\"");
      assertEquals(
          ProtectionClass.of(text).isPresent(),
          SCHEMA.validate(job, InputFormat.JSON).isEmpty(),
          text);
    }
  }

  private static Set<String> names(String... words) {
    return new LinkedHashSet<>(Arrays.asList(words));
  }

  private static Json.Obj properties(String definition) {
    Json.Obj object = (Json.Obj) DEFINITIONS.members().get(definition);
    return (Json.Obj) object.members().get("properties");
  }

  private static Set<String> words(String definition, String property) {
    Json.Obj field = (Json.Obj) properties(definition).members().get(property);
    Set<String> words = new LinkedHashSet<>();
    ((Json.Arr) field.members().get("enum"))
        .items()
        .forEach(item -> words.add(((Json.Str) item).text()));
    return words;
  }
}

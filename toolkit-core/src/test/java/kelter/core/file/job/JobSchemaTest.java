package kelter.core.file.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
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
import kelter.core.file.field.ApplianceReader;
import kelter.core.file.field.InstrumentReader;
import kelter.core.file.field.NameplateReader;
import kelter.core.file.field.SourceField;
import kelter.core.file.field.TermsFields;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonText;
import kelter.core.job.Complaint;
import kelter.core.job.Instrument;
import kelter.core.job.Market;
import kelter.core.job.SymptomReport;
import kelter.core.job.work.Outcome;
import kelter.core.job.work.PartUsed;
import kelter.core.problem.InputException;
import kelter.core.safety.ProtectionClass;
import kelter.core.source.Standing;
import kelter.core.vocabulary.Meaning;
import org.junit.jupiter.api.Test;

/** The published schema and the reader must tell the same story. */
class JobSchemaTest {

  private static final Schema SCHEMA = schema(JobFile.schema());
  private static final Schema SCHEMA_ONE = schema(JobFile.schemaOfVersionOne());

  private static final Json.Obj DEFINITIONS = definitions(JobFile.schema());
  private static final Json.Obj DEFINITIONS_ONE = definitions(JobFile.schemaOfVersionOne());

  private static Schema schema(String text) {
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
        .getSchema(text, InputFormat.JSON);
  }

  private static Json.Obj definitions(String schema) {
    Json.Obj root = (Json.Obj) JsonText.read(schema.getBytes(StandardCharsets.UTF_8), "schema", "");
    return (Json.Obj) root.members().get("$defs");
  }

  @Test
  void acceptsAJobThatUsesAllOfTheFormat() {
    assertEquals(0, SCHEMA.validate(Samples.FULL, InputFormat.JSON).size());
    assertEquals(0, SCHEMA_ONE.validate(Samples.FULL_ONE, InputFormat.JSON).size());
  }

  @Test
  void tellsTheVersionsApart() {
    assertFalse(SCHEMA_ONE.validate(Samples.FULL, InputFormat.JSON).isEmpty());
    assertFalse(SCHEMA.validate(Samples.FULL_ONE, InputFormat.JSON).isEmpty());
    assertFalse(
        SCHEMA_ONE
            .validate(Samples.FULL.replace("kelter-job/2", "kelter-job/1"), InputFormat.JSON)
            .isEmpty());
  }

  @Test
  void refusesReportsThatTheReaderRefuses() {
    for (String[] change :
        new String[][] {
          {"\"loud\": \"sometimes\"", "\"loud\": \"often\""},
          {"\"loud\": \"sometimes\"", "\"loud\": true"},
          {"\"loud\": \"sometimes\"", "\"loud\": null"},
          {"\"loud\": \"sometimes\"", "\"Loud\": \"yes\""},
          {"\"report\": \"sometimes\", ", ""},
          {"\"when\": \"hot\"", "\"when\": \"cold\""},
          {"\"when\": \"hot\"", "\"whn\": \"hot\""},
          {"\"since\": \"3 weeks\"", "\"since\": 3"},
          {"[\"drain\", \"leak\"]", "[\"drain\", \"drain\"]"},
          {"[\"drain\", \"leak\"]", "[\"F1\"]"},
          {"[\"drain\", \"leak\"]", "\"drain\""},
          {"[\"drain\", \"leak\"]", "[{ \"cod\": \"F1\" }]"},
          {"[\"drain\", \"leak\"]", "[{ \"code\": \"\" }]"},
          {"\"market\": \"EU\"", "\"market\": \"eu\""},
          {"\"reason\": \"fault\"", "\"reason\": \"\""},
        }) {
      assertTrue(Samples.FULL.contains(change[0]), change[0]);
      String text = Samples.FULL.replace(change[0], change[1]);
      assertFalse(SCHEMA.validate(text, InputFormat.JSON).isEmpty(), change[1]);
      assertThrows(
          InputException.class, () -> StatedJob.parse(text, Samples.VOCABULARY), change[1]);
    }
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
    String noFormat = Samples.FULL.replace("\"format\": \"kelter-job/2\",", "");
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
            Map.entry("source", SourceField.SOURCE),
            Map.entry("complaint", JobReader.COMPLAINT),
            Map.entry("report", SymptomsReader.REPORT),
            Map.entry("code", SymptomsReader.CODE),
            Map.entry("instrument", InstrumentReader.INSTRUMENT),
            Map.entry("function", InstrumentReader.FUNCTION),
            Map.entry("measurement", MeasurementReader.MEASUREMENT),
            Map.entry("work", ProgressReader.WORK),
            Map.entry("part-used", ProgressReader.PART),
            Map.entry("test", ProgressReader.TEST),
            Map.entry("closed", ProgressReader.CLOSED),
            Map.entry("accepted", ProgressReader.ACCEPTED),
            Map.entry("prices", PricesReader.PRICES),
            Map.entry("spread", TermsFields.SPREAD),
            Map.entry("use", UseReader.USE));
    fields.forEach((name, known) -> assertEquals(known, properties(name).members().keySet(), name));
    Set<String> one = new LinkedHashSet<>(JobReader.JOB);
    one.removeAll(JobReader.SINCE_TWO);
    Json.Obj job = (Json.Obj) DEFINITIONS_ONE.members().get("job");
    assertEquals(one, ((Json.Obj) job.members().get("properties")).members().keySet());
  }

  @Test
  void knowsTheSameWordsAsTheRecords() {
    assertEquals(Instrument.MEASURES.keySet(), words("function", "measures"));
    assertEquals(
        names(Arrays.stream(Standing.values()).map(Standing::words).toArray(String[]::new)),
        words("source", "standing"));
    assertEquals(
        names(Arrays.stream(Market.values()).map(Market::name).toArray(String[]::new)),
        words("job", "market"));
    assertEquals(
        names(
            Arrays.stream(Complaint.Reason.values())
                .map(Complaint.Reason::id)
                .toArray(String[]::new)),
        words("job", "reason"));
    assertEquals(
        names(
            Arrays.stream(SymptomReport.Circumstance.values())
                .map(SymptomReport.Circumstance::id)
                .toArray(String[]::new)),
        words("report", "when"));
    assertEquals(
        names(Arrays.stream(Outcome.values()).map(Outcome::id).toArray(String[]::new)),
        words("closed", "outcome"));
    assertEquals(
        names(
            Arrays.stream(PartUsed.Condition.values())
                .map(PartUsed.Condition::id)
                .toArray(String[]::new)),
        words("part-used", "condition"));
    assertEquals(ProgressReader.RESULTS, words((Json.Obj) DEFINITIONS.members().get("result")));
    assertEquals(SymptomsReader.REPORTS, words((Json.Obj) DEFINITIONS.members().get("answer")));
    assertEquals(
        names(Arrays.stream(Meaning.values()).map(Meaning::id).toArray(String[]::new)),
        words((Json.Obj) DEFINITIONS.members().get("meaning")));
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
    return words((Json.Obj) properties(definition).members().get(property));
  }

  private static Set<String> words(Json.Obj field) {
    Set<String> words = new LinkedHashSet<>();
    ((Json.Arr) field.members().get("enum"))
        .items()
        .forEach(item -> words.add(((Json.Str) item).text()));
    return words;
  }
}

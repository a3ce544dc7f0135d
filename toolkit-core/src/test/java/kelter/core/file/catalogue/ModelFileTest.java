package kelter.core.file.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import kelter.core.catalogue.MachineModel;
import kelter.core.catalogue.Models;
import kelter.core.file.job.JobDocument;
import kelter.core.file.job.JobFile;
import kelter.core.file.job.Samples;
import kelter.core.file.job.StatedJob;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonText;
import kelter.core.job.SymptomReport;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.vocabulary.Meaning;
import org.junit.jupiter.api.Test;

class ModelFileTest {

  private static final String FULL =
      """
      {
        "format": "kelter-model/1",
        "kind": "bilge-unit",
        "maker": "Ostvik",
        "model": "B-2",
        "also": ["Bilge Boy"],
        "nameplate": {
          "voltage": "220-240 V",
          "frequency": "50/60 Hz",
          "power": "0.4 kW",
          "current": "1.8 A",
          "protection-class": "I"
        },
        "components": [
          {
            "id": "pump",
            "kind": "bilge-pump",
            "nameplate": { "power": "60 W" },
            "figures": { "lift": "0.8 m" },
            "curves": { "head": [["0 L/min", "3.0 m"], ["20 L/min", "2.1 m"]] }
          },
          {
            "id": "bilge-pump",
            "figures": { "lift": "0.9 m" },
            "source": { "document": "service sheet 3", "standing": "invented" }
          }
        ],
        "codes": [
          { "code": "F-12", "means": "drain" },
          { "code": "E 3", "means": "leak" }
        ],
        "source": { "document": "measured at the quay", "standing": "measured on a good machine" },
        "note": "by the quay",
        "x-colour": "red"
      }
      """;

  private static final Schema SCHEMA =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(ModelFile.schema(), InputFormat.JSON);

  private static List<Problem> problems(String text) {
    return assertThrows(InputException.class, () -> ModelFile.parse(text, Samples.VOCABULARY), text)
        .problems();
  }

  private static Json.Obj definitions(String schema) {
    Json.Obj root = (Json.Obj) JsonText.read(schema.getBytes(StandardCharsets.UTF_8), "schema", "");
    return (Json.Obj) root.members().get("$defs");
  }

  @Test
  void everyFieldArrives() {
    MachineModel model = ModelFile.parse(FULL, Samples.VOCABULARY);

    assertEquals("Ostvik B-2", model.name());
    assertEquals(List.of("Bilge Boy"), model.also());
    assertEquals("220 V to 240 V", model.nameplate().voltage().orElseThrow().display());
    assertEquals(Map.of("F-12", Meaning.DRAIN, "E 3", Meaning.LEAK), model.codes());
    assertEquals(model.source(), model.components().get(0).source());
    assertEquals("service sheet 3", model.components().get(1).source().document());
    assertEquals(2, model.components().get(0).curve("head").orElseThrow().points().size());
  }

  @Test
  void whatIsWrittenIsReadAsTheSameModel() {
    MachineModel model = ModelFile.parse(FULL, Samples.VOCABULARY);
    String text = ModelFile.text(model);

    assertEquals(model, ModelFile.parse(text, Samples.VOCABULARY));
    assertEquals(0, SCHEMA.validate(text, InputFormat.JSON).size(), text);
  }

  @Test
  void schemaAndReaderTellTheSameStory() {
    assertEquals(0, SCHEMA.validate(FULL, InputFormat.JSON).size());
    Json.Obj own = definitions(ModelFile.schema());
    Map.of("model", ModelReader.MODEL, "code-meaning", ModelReader.CODE)
        .forEach(
            (name, known) -> {
              Json.Obj definition = (Json.Obj) own.members().get(name);
              Json.Obj properties = (Json.Obj) definition.members().get("properties");
              assertEquals(known, properties.members().keySet());
            });
    Json.Obj job = definitions(JobFile.schema());
    for (String shared : Set.of("id", "nameplate", "component", "source", "meaning", "rating")) {
      assertEquals(job.members().get(shared), own.members().get(shared), shared);
    }
    for (String[] change :
        new String[][] {
          {"\"maker\": \"Ostvik\",", ""},
          {"\"maker\": \"Ostvik\"", "\"maker\": \"\""},
          {"\"also\": [\"Bilge Boy\"]", "\"also\": \"Bilge Boy\""},
          {"\"also\"", "\"aslo\""},
          {"\"drain\"", "\"drian\""},
          {"\"means\": \"leak\"", "\"mean\": \"leak\""},
          {"\"F-12\"", "12"},
          {"\"F-12\"", "\"" + "F".repeat(41) + "\""},
          {"kelter-model/1", "kelter-model/2"},
          {"\"measured on a good machine\"", "\"a rumour\""},
          {"\"0.4 kW\"", "0.4"},
        }) {
      String text = FULL.replace(change[0], change[1]);
      assertFalse(text.equals(FULL), change[0]);
      assertFalse(SCHEMA.validate(text, InputFormat.JSON).isEmpty(), change[1]);
      assertFalse(problems(text).isEmpty(), change[1]);
    }
  }

  @Test
  void allMistakesAreToldAtOnceWithNearMisses() {
    String text =
        FULL.replace("\"maker\": \"Ostvik\"", "\"maker\": \" - \"")
            .replace("\"bilge-pump\",\n      \"nameplate\"", "\"bilge-pmup\",\n      \"nameplate\"")
            .replace("\"drain\"", "\"drian\"")
            .replace("\"E 3\"", "\"f12\"")
            .replace("\"note\"", "\"nots\"");
    List<String> told = problems(text).stream().map(Problem::display).toList();

    String all = String.join("\n", told);
    assertTrue(all.contains("did you mean 'bilge-pump'?"), all);
    assertTrue(all.contains("did you mean 'drain'?"), all);
    assertTrue(all.contains("did you mean 'note'?"), all);
    assertTrue(all.contains("the code 'f12' occurs twice"), all);
    assertTrue(problems("{}").size() >= 5);
  }

  @Test
  void aNameOfSignsThatDoNotMatterIsNone() {
    String all = problems(FULL.replace("\"B-2\"", "\"-\"")).get(0).display();
    assertTrue(all.contains("is no name of a model"), all);
  }

  private static String job(String displayed, String model) {
    return Samples.FULL
        .replace("[\"drain\", \"leak\"]", displayed)
        .replace("\"model\": \"B2\"", "\"model\": \"" + model + "\"");
  }

  private static JobDocument read(String text) {
    Json content = JsonText.read(text.getBytes(StandardCharsets.UTF_8), "job", "");
    Models models = new Models(List.of(ModelFile.parse(FULL, Samples.VOCABULARY)));
    return JobFile.document(content, Samples.VOCABULARY, List.of(), models);
  }

  private static List<String> shown(JobDocument document) {
    return document.job().complaint().symptoms().stream()
        .map(SymptomReport::symptom)
        .filter(id -> id.startsWith("shows-"))
        .toList();
  }

  @Test
  void aCodeCountsAsItsMeaningAndAnUnknownOneForNothing() {
    JobDocument document =
        read(job("[\"heat\", { \"code\": \"f 12\" }, { \"code\": \"F-99\" }]", "b2"));

    assertEquals(List.of("shows-heat", "shows-drain"), shown(document));
    String notes = String.join("\n", document.notes());
    assertTrue(notes.contains("The code 'f 12' is taken as 'drain'"), notes);
    assertTrue(notes.contains("The code 'F-99' counts for nothing"), notes);
  }

  @Test
  void withoutAModelNoCodeCounts() {
    JobDocument document = read(job("[{ \"code\": \"F-12\" }]", "B3"));

    assertEquals(List.of(), shown(document));
    assertTrue(document.notes().get(0).contains("counts for nothing"));
  }

  @Test
  void badCodesAreToldWhereTheyStand() {
    for (String displayed :
        List.of(
            "[{}]",
            "[{ \"code\": 12 }]",
            "[{ \"code\": \"-\" }]",
            "[{ \"cod\": \"F-12\" }]",
            "[{ \"code\": \"F-12\" }, { \"code\": \"F12\" }]",
            "[12]")) {
      InputException mistakes =
          assertThrows(InputException.class, () -> read(job(displayed, "B2")), displayed);
      assertTrue(mistakes.problems().get(0).where().startsWith("/displayed/"), displayed);
    }
  }

  @Test
  void readingsMayBeOfWhatOnlyTheModelTellsAndTheContentStays() {
    String text = job("[]", "B2").replace("\"id\": \"pump\",", "\"id\": \"pump\",\n ");
    String onModel = text.replaceFirst("\"of\": \"pump\"", "\"of\": \"bilge-pump\"");
    assertFalse(onModel.equals(text));

    JobDocument document = read(onModel);

    assertEquals(1, document.stated().components().size());
    assertTrue(document.job().appliance().component("bilge-pump").isPresent());
    assertEquals(
        JsonText.read(onModel.getBytes(StandardCharsets.UTF_8), "job", ""), document.content());
    assertThrows(InputException.class, () -> StatedJob.parse(onModel, Samples.VOCABULARY));
  }
}

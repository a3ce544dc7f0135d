package kelter.core.file.shop;

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
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kelter.core.file.field.InstrumentReader;
import kelter.core.file.job.Samples;
import kelter.core.file.job.StatedJob;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonText;
import kelter.core.job.Instrument;
import kelter.core.job.Job;
import kelter.core.job.Market;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.safety.Caution;
import kelter.core.shop.LogColumn;
import kelter.core.shop.Repairer;
import kelter.core.shop.Shop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShopFileTest {

  private static final String FULL =
      """
      {
        "format": "kelter-shop/1",
        "id": "quay-repairs",
        "decision-level": "90 %",
        "competent-for-live-work": true,
        "instruments": [
          {
            "id": "gauge",
            "title": "pressure gauge",
            "functions": [{ "measures": "head", "accuracy": "2 counts", "resolution": "1 cm", "range": "5 m" }],
            "calibrated": "2025-02-28",
            "interval": "1 year"
          },
          { "id": "rule" }
        ],
        "columns": [
          {
            "column": "P [mH2O]",
            "of": "pump",
            "observable": "head",
            "unit": "m",
            "instrument": "gauge"
          },
          { "column": "T", "of": "pump", "observable": "head", "condition": "temperature" }
        ],
        "repairer": {
          "name": "Quay Repairs",
          "address": "1 Quay, Ostvik",
          "telephone": "000",
          "e-mail": "quay@example.org",
          "online": "none",
          "vat-number": "XX 1",
          "register": "Ostvik 7"
        },
        "quote-valid": "45 d",
        "guarantee": "12 mo",
        "market": "UK",
        "note": "by the quay",
        "x-van": { "plate": "K 17", "km": 1.20e5 }
      }
      """;

  private static final Schema SCHEMA =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(ShopFile.schema(), InputFormat.JSON);

  @TempDir private Path folder;

  private static List<Problem> problems(String text) {
    return assertThrows(InputException.class, () -> ShopFile.parse(text)).problems();
  }

  @Test
  void everyFieldArrives() {
    Shop shop = ShopFile.parse(FULL).shop();

    assertEquals(0.9, shop.rule().level(), 1e-12);
    assertTrue(shop.competentForLiveWork());
    assertEquals(
        List.of("gauge", "rule"), shop.jobInstruments().stream().map(i -> i.id()).toList());
    assertEquals(
        0.02 / Math.sqrt(3),
        shop.jobInstruments().get(0).functions().get(0).error().standardUncertainty(3),
        1e-12);
    assertEquals(
        Optional.of(LocalDate.of(2026, 2, 28)), shop.instrument("gauge").orElseThrow().due());
    assertEquals(Optional.empty(), shop.instrument("rule").orElseThrow().due());
    assertEquals("pump.head.temperature", shop.columns().get(1).target());
    assertEquals(
        new Repairer(
            "Quay Repairs",
            "1 Quay, Ostvik",
            "000",
            "quay@example.org",
            "none",
            "XX 1",
            "Ostvik 7"),
        shop.offering().repairer());
    assertEquals(45, shop.offering().validDays());
    assertEquals("12 mo", shop.offering().guarantee().orElseThrow().format());
    assertEquals(Optional.of(Market.UK), shop.offering().market());
  }

  @Test
  void aQuotationStandsThirtyDaysAtLeast() {
    assertEquals(30, ShopFile.parse(FULL.replace("45 d", "30 d")).shop().offering().validDays());
    assertEquals(30, Shop.UNKNOWN.offering().validDays());
    for (String wrong : List.of("29 d", "3 years", "0 d", "45 kg")) {
      List<Problem> told = problems(FULL.replace("45 d", wrong));
      assertEquals(List.of("/quote-valid"), told.stream().map(Problem::where).toList(), wrong);
    }
  }

  @Test
  void aProfileWithNothingInItIsThatOfAnUnknownShop() {
    assertEquals(Shop.UNKNOWN, ShopFile.parse("{\"format\": \"kelter-shop/1\"}").shop());
    assertFalse(Shop.UNKNOWN.competentForLiveWork());
  }

  @Test
  void allMistakesAreToldInTheOrderOfTheFile() {
    List<Problem> problems =
        problems(
            FULL.replace("\"90 %\"", "\"40 %\"")
                .replace("work\": true", "work\": \"yes\"")
                .replace("\"calibrated\": \"2025-02-28\"", "\"calibrated\": \"2025-02-30\"")
                .replace("\"1 year\"", "\"0 year\"")
                .replace("\"id\": \"rule\"", "\"id\": \"gauge\"")
                .replace("\"of\": \"pump\", \"observable\"", "\"of\": \"pump\", \"obsrvable\"")
                .replace("\"measures\": \"head\"", "\"measures\": \"haed\""));

    assertEquals(
        List.of(
            "/decision-level",
            "/competent-for-live-work",
            "/instruments/0/calibrated",
            "/instruments/0/functions/0/measures",
            "/instruments/0",
            "/instruments/1",
            "/columns/1/obsrvable",
            "/columns/1"),
        problems.stream().map(Problem::where).toList());
    assertTrue(problems.get(6).remedy().contains("observable"));
  }

  @Test
  void aMisnamedFileIsToldWhatAProfileIs() throws IOException {
    Path missing = folder.resolve("none.json");
    InputException refused = assertThrows(InputException.class, () -> ShopFile.read(missing));
    assertTrue(refused.getMessage().contains("kelter-shop/1"), refused.getMessage());
    assertTrue(
        problems(Samples.FULL).stream()
            .anyMatch(problem -> problem.display().contains("kelter-shop/1")));
  }

  @Test
  void aColumnIsRememberedAndNothingIsLost() throws IOException {
    ShopDocument document = ShopFile.parse(FULL);
    LogColumn column =
        new LogColumn(
            "T", "pump", "head", Optional.of("flow"), Optional.of("L/min"), Optional.of("gauge"));
    Path file = folder.resolve("shop.json");

    Files.writeString(file, FULL);
    ShopFile.change(file, profile -> profile.with(List.of(column)));

    Shop read = ShopFile.read(file).shop();
    assertEquals(document.shop().columns().get(0), read.columns().get(0));
    assertEquals(column, read.columns().get(1));
    assertEquals(2, read.columns().size());
    assertTrue(Files.readString(file).contains("1.20e5"), "the spelling of numbers is kept");
    assertEquals(0, SCHEMA.validate(Files.readString(file), InputFormat.JSON).size());
  }

  @Test
  void instrumentsOfTheShopAreKnownToAJob() throws IOException {
    Path file = folder.resolve("job.json");
    Files.writeString(
        file, Samples.FULL.replace("\"instrument\": \"standpipe\"", "\"instrument\": \"gauge\""));
    Shop shop = ShopFile.parse(FULL).shop();

    assertThrows(InputException.class, () -> StatedJob.read(file, Samples.VOCABULARY));
    Job job = StatedJob.read(file, Samples.VOCABULARY, shop.jobInstruments()).job();

    assertEquals(
        List.of("standpipe", "gauge"), job.instruments().stream().map(Instrument::id).toList());
  }

  @Test
  void anInstrumentOutOfCalibrationIsToldOnTheDayOfTheJob() throws IOException {
    Shop shop = ShopFile.parse(FULL).shop();

    assertEquals(List.of(), cautions(shop, "2026-02-28"), "the day itself is in time");
    Caution late = cautions(shop, "2026-03-01").get(0);
    assertEquals(Caution.Signal.CAUTION, late.signal());
    assertTrue(late.text().contains("2026-02-28"), late.text());
    assertEquals(Caution.Signal.NOTICE, cautions(shop, "").get(0).signal());
  }

  private List<Caution> cautions(Shop shop, String date) throws IOException {
    Path file = folder.resolve("job.json");
    String dated =
        Samples.FULL
            .replace(
                "\"date\": \"2026-03-01\",", date.isEmpty() ? "" : "\"date\": \"" + date + "\",")
            .replace("\"instrument\": \"standpipe\"", "\"instrument\": \"gauge\"");
    Files.writeString(file, dated);
    return shop.cautions(StatedJob.read(file, Samples.VOCABULARY, shop.jobInstruments()).job());
  }

  @Test
  void theSchemaTellsTheSameStoryAsTheReader() {
    assertEquals(0, SCHEMA.validate(FULL, InputFormat.JSON).size());
    assertFalse(SCHEMA.validate(FULL.replace("\"note\"", "\"nte\""), InputFormat.JSON).isEmpty());
    Map<String, Set<String>> fields =
        Map.of(
            "shop", ShopReader.SHOP,
            "instrument", ShopReader.INSTRUMENT,
            "function", InstrumentReader.FUNCTION,
            "column", ShopReader.COLUMN,
            "repairer", ShopReader.REPAIRER);
    Json.Obj definitions =
        member(
            (Json.Obj)
                JsonText.read(ShopFile.schema().getBytes(StandardCharsets.UTF_8), "schema", ""),
            "$defs");
    fields.forEach(
        (name, known) ->
            assertEquals(
                known, member(member(definitions, name), "properties").members().keySet(), name));
    Json.Obj measures = member(member(member(definitions, "function"), "properties"), "measures");
    Set<String> words = new LinkedHashSet<>();
    ((Json.Arr) measures.members().get("enum"))
        .items()
        .forEach(item -> words.add(((Json.Str) item).text()));
    assertEquals(Instrument.MEASURES.keySet(), words);
  }

  private static Json.Obj member(Json.Obj object, String name) {
    return (Json.Obj) object.members().get(name);
  }
}

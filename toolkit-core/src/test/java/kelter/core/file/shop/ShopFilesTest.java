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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonText;
import kelter.core.owner.TaxRate;
import kelter.core.owner.TaxRounding;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.quantity.Money;
import kelter.core.shop.PriceList;
import kelter.core.shop.Shop;
import kelter.core.shop.StockPart;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Vocabulary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The files of a shop's folder: what arrives, what is refused, and what is made. */
class ShopFilesTest {

  private static final Vocabulary WORDS =
      new Vocabulary(
          List.of(new ComponentKind("thermal-link", "link", List.of(), List.of(), List.of())));

  private static final String PRICES =
      """
      {
        "format": "kelter-prices/1",
        "currency": "EUR",
        "date": "2026-03-01",
        "labour-per-hour": "60 EUR",
        "call-out": "35 EUR",
        "parts": { "thermal-link.renew": "9.50 EUR", "x-own": 3 },
        "tax-rate": "21 %",
        "tax-rate-parts": "9 %",
        "tax-rounding": "per line",
        "prices-with-tax": false,
        "call-out-credited": true,
        "least-work": "30 min",
        "parts-delivery": "4 d",
        "replacement-delivery": "6 d",
        "repair-warranty": "12 mo",
        "new-warranty": "24 mo",
        "spread": { "repair": "10 %" },
        "new-machines": { "boiler": "720 EUR", "x-own": 3 },
        "installation": "60 EUR",
        "note": "net",
        "x-tax": "21 %"
      }
      """;

  private static final String STOCK =
      """
      {
        "format": "kelter-stock/1",
        "parts": [
          { "part": "thermal link 128 °C", "for": "thermal-link.renew", "number": 2 },
          { "part": "cable ties", "number": 0, "note": "buy" }
        ],
        "x-van": 1
      }
      """;

  private static final String MODEL =
      """
      {
        "format": "kelter-model/1",
        "kind": "boiler",
        "maker": "Ostvik",
        "model": "%s",
        "source": { "document": "seen", "standing": "invented" }
      }
      """;

  @TempDir private Path temporary;

  private static Schema schema(String text) {
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
        .getSchema(text, InputFormat.JSON);
  }

  private static List<Problem> ofPrices(String text) {
    return assertThrows(InputException.class, () -> PriceFile.parse(text, WORDS), text).problems();
  }

  private static List<Problem> ofStock(String text) {
    return assertThrows(InputException.class, () -> StockFile.parse(text, WORDS), text).problems();
  }

  private static Set<String> properties(String schema, String definition) {
    Json root = JsonText.read(schema.getBytes(StandardCharsets.UTF_8), "schema", "");
    for (String step : List.of("$defs", definition, "properties")) {
      root = ((Json.Obj) root).members().get(step);
    }
    return ((Json.Obj) root).members().keySet();
  }

  @Test
  void everyFieldArrives() {
    PriceList list = PriceFile.parse(PRICES, WORDS);
    assertEquals("60 EUR", list.labourPerHour().orElseThrow().format());
    assertEquals("35 EUR", list.callOut().orElseThrow().format());
    assertEquals(Optional.of(true), list.policy().terms().callOutCredited());
    assertEquals("30 min", list.policy().terms().leastWork().orElseThrow().format());
    assertEquals("4 d", list.policy().terms().partsDelivery().orElseThrow().format());
    assertEquals("6 d", list.policy().terms().replacementDelivery().orElseThrow().format());
    assertEquals("12 mo", list.policy().terms().repairWarranty().orElseThrow().format());
    assertEquals("24 mo", list.policy().terms().newWarranty().orElseThrow().format());
    assertEquals("10 %", list.policy().spread().repair().orElseThrow().format());
    assertEquals(Map.of("boiler", Money.parse("720 EUR")), list.policy().newMachines());
    assertEquals("60 EUR", list.policy().installation().orElseThrow().format());
    assertEquals("2026-03-01", list.date().orElseThrow().toString());
    assertEquals(Set.of("thermal-link.renew"), list.parts().keySet());
    assertEquals(Optional.of(TaxRate.parse("21 %")), list.tax().rate());
    assertEquals(Optional.of(TaxRate.parse("9 %")), list.tax().onParts());
    assertEquals(TaxRounding.PER_LINE, list.tax().rounded());
    assertEquals(Optional.of(false), list.tax().included());
    assertEquals(
        List.of(
            new StockPart("thermal link 128 °C", "thermal-link.renew", 2),
            new StockPart("cable ties", "", 0)),
        StockFile.parse(STOCK, WORDS));
  }

  @Test
  void schemasAndReadersTellTheSameStory() {
    assertEquals(0, schema(PriceFile.schema()).validate(PRICES, InputFormat.JSON).size());
    assertEquals(0, schema(StockFile.schema()).validate(STOCK, InputFormat.JSON).size());
    assertEquals(PriceFile.PRICES, properties(PriceFile.schema(), "prices-of-shop"));
    assertEquals(StockFile.STOCK, properties(StockFile.schema(), "stock"));
    assertEquals(StockFile.PART, properties(StockFile.schema(), "stock-part"));
    for (String[] change :
        new String[][] {
          {"\"currency\": \"EUR\",", ""},
          {"\"EUR\"", "\"euro\""},
          {"\"call-out\"", "\"callout\""},
          {"\"60 EUR\"", "60"},
          {"thermal-link.renew", "thermal-link"},
          {"thermal-link.renew", "thermal-link.renew.it"},
          {"prices/1", "prices/2"},
        }) {
      String text = PRICES.replace(change[0], change[1]);
      assertFalse(schema(PriceFile.schema()).validate(text, InputFormat.JSON).isEmpty(), text);
      assertFalse(ofPrices(text).isEmpty(), text);
    }
    for (String[] change :
        new String[][] {
          {"\"number\": 2", "\"number\": -2"},
          {"\"number\": 2", "\"number\": 2.5"},
          {"\"number\": 2", "\"number\": 99999999999999999999"},
          {"\"number\": 2", "\"number\": \"2\""},
          {", \"number\": 2", ""},
          {"\"for\"", "\"fro\""},
          {"thermal-link.renew", "../link"},
          {"\"cable ties\"", "\"\""},
          {"stock/1", "stock/2"},
        }) {
      String text = STOCK.replace(change[0], change[1]);
      assertFalse(schema(StockFile.schema()).validate(text, InputFormat.JSON).isEmpty(), text);
      assertFalse(ofStock(text).isEmpty(), text);
    }
  }

  @Test
  void mistakesThatNoSchemaSeesAreToldAllAtOnce() {
    String told =
        ofPrices(
                PRICES
                    .replace("thermal-link.renew", "thermal-lnik.renew")
                    .replace("\"60 EUR\"", "\"-60 EUR\"")
                    .replace("\"35 EUR\"", "\"35 USD\""))
            .toString();
    assertTrue(told.contains("did you mean 'thermal-link'?"), told);
    assertTrue(told.contains("is negative"), told);
    assertTrue(told.contains("another currency"), told);

    String twice =
        ofStock(
                STOCK.replace(
                    "cable ties\"", "thermal link 128 °C\", \"for\": \"thermal-link.renew\""))
            .toString();
    assertTrue(twice.contains("occurs twice"), twice);
  }

  @Test
  void whatIsMadeIsValidAndWhatIsThereIsKept() throws IOException {
    ShopFolder folder = new ShopFolder(temporary.resolve("new/shop"));

    Map<String, Boolean> made = new LinkedHashMap<>(folder.make());
    assertEquals(6, made.size());
    assertFalse(made.containsValue(false));
    Shop shop = ShopFile.read(folder.profile()).shop();
    assertEquals(Shop.UNKNOWN.with(shop.prices(), shop.stock(), shop.models(), List.of()), shop);
    Shop whole = folder.complete(shop, WORDS);
    assertTrue(whole.prices().orElseThrow().parts().isEmpty());
    assertEquals(
        0,
        schema(PriceFile.schema())
            .validate(Files.readString(folder.path().resolve("prices.json")), InputFormat.JSON)
            .size());

    Files.writeString(folder.path().resolve("prices.json"), PRICES);
    Files.delete(folder.path().resolve("stock.json"));
    Map<String, Boolean> again = folder.make();
    assertEquals(List.of("stock.json"), again.keySet().stream().filter(again::get).toList());
    assertEquals(PRICES, Files.readString(folder.path().resolve("prices.json")));
  }

  @Test
  void itsOwnKindsAreRead() throws IOException {
    ShopFolder folder = new ShopFolder(temporary);
    folder.make();
    Path kinds = temporary.resolve("kinds");
    Files.writeString(
        kinds.resolve("mangle.json"),
        """
        {
          "format": "kelter-kind/1", "id": "mangle", "title": "mangle", "typical-age": "9 a",
          "nothing-wrong": { "share": 0.1 }, "something-else": 0.1,
          "parts": [ { "id": "roller", "title": "roller" } ],
          "causes": [ { "fault": "roller.worn", "title": "roller worn", "share": 0.8 } ],
          "source": { "document": "made up", "standing": "invented" }
        }
        """);
    Shop shop = folder.complete(Shop.UNKNOWN, WORDS);
    assertEquals("roller.worn", shop.kinds().get(0).causes().get(0).key());

    Files.writeString(kinds.resolve("bad.json"), "{ \"format\": \"kelter-kind/1\" }");
    InputException mistakes =
        assertThrows(InputException.class, () -> folder.complete(Shop.UNKNOWN, WORDS));
    assertTrue(mistakes.problems().toString().contains("has no 'id'"), mistakes.toString());
  }

  @Test
  void aFileInThePlaceOfAFolderIsTold() throws IOException {
    Path file = Files.writeString(temporary.resolve("taken"), "");
    assertThrows(InputException.class, () -> new ShopFolder(file).make());
    Files.writeString(temporary.resolve("models"), "");
    assertThrows(InputException.class, () -> new ShopFolder(temporary).make());
    assertEquals(Optional.empty(), ShopFolder.at(file));
    assertThrows(
        InputException.class,
        () -> new ShopFolder(Files.createDirectory(temporary.resolve("a"))).profile());
  }

  @Test
  void anIdNamesAJobAndNothingElse() throws IOException {
    ShopFolder folder = new ShopFolder(temporary);
    Path jobs = Files.createDirectory(temporary.resolve("jobs"));
    Files.writeString(jobs.resolve("b-17.json"), "{}");
    Files.writeString(temporary.resolve("secret.json"), "{}");

    assertEquals(Optional.of(jobs.resolve("b-17.json")), folder.job("b-17"));
    for (String word :
        List.of(
            "",
            "..",
            "../secret",
            "./b-17",
            "b-17.json",
            "/b-17",
            "a/b",
            "a\\b",
            "b-17\n",
            "B-17")) {
      assertEquals(Optional.empty(), folder.job(word), word);
    }
    assertEquals(Optional.of("b-17"), folder.jobNear("b-71"));
    assertEquals(Optional.of("b-17"), folder.jobNear("B-17"));
    assertEquals(Optional.empty(), folder.jobNear("../secret"));
    assertEquals(Optional.empty(), new ShopFolder(jobs).jobNear("b-17"));
  }

  @Test
  void modelsOfTheSameMachineAndMistakesOfAllFilesAreToldTogether() throws IOException {
    Path models = Files.createDirectory(temporary.resolve("models"));
    Files.writeString(models.resolve("a.json"), MODEL.formatted("B-2"));
    Files.writeString(models.resolve("b.json"), MODEL.formatted("b 2"));
    Files.writeString(models.resolve("c.json"), MODEL.formatted("B3"));
    Files.writeString(models.resolve("d.json"), "[]");
    Files.writeString(models.resolve(".e.json"), "never read");
    Files.createDirectory(models.resolve("f.json"));
    Files.writeString(models.resolve("read.me"), "never read");
    Files.writeString(temporary.resolve("stock.json"), "{");
    ShopFolder folder = new ShopFolder(temporary);

    List<Problem> problems =
        assertThrows(InputException.class, () -> folder.complete(Shop.UNKNOWN, WORDS)).problems();

    String told = problems.stream().map(Problem::display).toList().toString();
    assertTrue(told.contains("b.json: is of the same machine as"), told);
    assertTrue(told.contains("d.json"), told);
    assertTrue(told.contains("f.json: is no usual file"), told);
    assertTrue(told.contains("stock.json"), told);
    assertFalse(told.contains("c.json"), told);

    for (String bad : List.of("b.json", "d.json", "f.json")) {
      Files.delete(models.resolve(bad));
    }
    Files.delete(temporary.resolve("stock.json"));
    assertEquals(2, folder.complete(Shop.UNKNOWN, WORDS).models().all().size());
  }
}

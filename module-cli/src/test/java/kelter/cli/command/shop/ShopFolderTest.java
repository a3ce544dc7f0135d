package kelter.cli.command.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import kelter.cli.program.Console;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The shop's folder on the command line: made, named, and used for jobs, prices and codes. */
class ShopFolderTest {

  private static final String JOB =
      """
      {
        "format": "kelter-job/2",
        "id": "quay-17",
        "date": "2026-03-01",
        "appliance": {
          "kind": "water-boiler",
          "maker": "Ostvik",
          "model": "B-2",
          "components": [
            { "id": "heater" }
          ]
        },
        "displayed": [{ "code": "F-12" }, { "code": "F-99" }],
        "measurements": [
          { "of": "heater", "observable": "resistance", "reading": "26 ohm" }
        ]
      }
      """;

  private static final String MODEL =
      """
      {
        "format": "kelter-model/1",
        "kind": "water-boiler",
        "maker": "Ostvik",
        "model": "B2",
        "components": [
          { "id": "heater", "figures": { "resistance": "26.2 Ohm" } },
          { "id": "thermal-link" }
        ],
        "codes": [{ "code": "F12", "means": "heat" }],
        "source": { "document": "Ostvik sheet 2", "standing": "invented" }
      }
      """;

  private static final String PRICES =
      """
      {
        "format": "kelter-prices/1",
        "currency": "EUR",
        "labour-per-hour": "60 EUR",
        "parts": { "heater.renew-heater": "44 EUR", "heater.renew-haeter": "44 EUR" }
      }
      """;

  @TempDir private Path temporary;
  private Path shop;

  @BeforeEach
  void make() throws IOException {
    shop = temporary.resolve("shop");
    Console made = Console.run("shop", "init", shop.toString());
    assertEquals(0, made.code(), made.err());
    assertTrue(made.out().contains("Made: shop.json"), made.out());
    assertEquals(3, made.out().lines().filter(line -> line.matches("  [123]\\. .*")).count());
    Files.writeString(shop.resolve("jobs/quay-17.json"), JOB);
  }

  private Console inShop(String... arguments) {
    return Console.inShop(shop.toString(), arguments);
  }

  private static String words(Console console) {
    return (console.out() + console.err()).replaceAll("\\s+", " ");
  }

  @Test
  void whatIsThereIsKeptAndTold() throws IOException {
    Files.writeString(shop.resolve("prices.json"), PRICES);
    Console again = Console.run("shop", "init", shop.toString());

    assertEquals(0, again.code());
    assertTrue(again.out().contains("Kept as it is: prices.json"), again.out());
    assertFalse(again.out().contains("Made:"), again.out());
    assertEquals(PRICES, Files.readString(shop.resolve("prices.json")));
    Path file = Files.writeString(temporary.resolve("file"), "");
    assertEquals(1, Console.run("shop", "init", file.toString()).code());
  }

  @Test
  void aJobIsNamedByItsIdWhereTheShopIsKnown() throws IOException {
    for (String command : List.of("check", "diagnose")) {
      Console byFlag = Console.run(command, "--shop", shop.toString(), "quay-17");
      assertEquals(0, byFlag.code(), byFlag.err());
      assertEquals(byFlag, inShop(command, "quay-17"));
      assertEquals(1, Console.run(command, "quay-17").code());
      assertEquals(1, Console.inShop("", command, "quay-17").code());
    }
    assertEquals(0, inShop("simulate", "quay-17", "-n", "2", "--led", "0").code());
    Console near = inShop("check", "quay-71");
    assertEquals(1, near.code());
    assertTrue(near.err().contains("did you mean 'quay-17'?"), near.err());
    assertTrue(inShop("check", "other").err().contains("there is no such file"));
  }

  @Test
  void noIdLeadsOutOfTheFolder() throws IOException {
    Files.writeString(temporary.resolve("secret.json"), JOB);
    for (String word : List.of("../../secret", "..", "../jobs/quay-17", "quay-17/../quay-17", "")) {
      Console console = inShop("check", word);
      assertEquals(1, console.code(), word);
      assertEquals("", console.out(), word);
    }
  }

  @Test
  void aFileThatIsThereWinsOverAnId() throws IOException {
    Path other = Files.writeString(temporary.resolve("job.json"), JOB.replace("quay-17", "quay-3"));
    assertTrue(inShop("check", other.toString()).out().contains("Job quay-3"));
  }

  @Test
  void theFlagWinsOverTheVariable() {
    Console console =
        Console.inShop("/no/such/place", "check", "--shop", shop.toString(), "quay-17");
    assertEquals(0, console.code(), console.err());
    Console wrong = Console.inShop("/no/such/place", "check", "quay-17");
    assertEquals(1, wrong.code());
    assertTrue(wrong.err().contains("KELTER_SHOP=/no/such/place"), wrong.err());
    assertEquals(0, Console.inShop("/no/such/place", "schema", "job").code());
  }

  @Test
  void aProfileAloneIsNoFolder() {
    String profile = shop.resolve("shop.json").toString();
    assertEquals(1, Console.run("check", "--shop", profile, "quay-17").code());
    String job = shop.resolve("jobs/quay-17.json").toString();
    assertEquals(0, Console.run("check", "--shop", profile, job).code());
  }

  @Test
  void aFolderThatIsNoShopIsTold() {
    Console console = Console.run("check", "--shop", temporary.toString(), "quay-17");
    assertEquals(1, console.code());
    assertTrue(console.err().contains("kelter shop init"), console.err());
  }

  @Test
  void theModelOfTheMachineStandsInAndItsCodesCount() throws IOException {
    assertFalse(words(inShop("check", "quay-17")).contains("against service figure"));
    Files.writeString(shop.resolve("models/b2.json"), MODEL);

    Console check = inShop("check", "quay-17");
    assertTrue(words(check).contains("resistance against service figure"), words(check));
    assertTrue(words(check).contains("stands in: heater, thermal-link"), words(check));
    assertTrue(words(check).contains("The code 'F-12' is taken as 'heat'"), words(check));
    assertTrue(words(check).contains("The code 'F-99' counts for nothing"), words(check));
    assertEquals(JOB, Files.readString(shop.resolve("jobs/quay-17.json")));
    String json = inShop("diagnose", "--format", "json", "quay-17").out();
    assertTrue(json.contains("shows-heat"), json);
    assertTrue(json.contains("F-99"), json);
  }

  @Test
  void twoModelsOfOneMachineAreAMistake() throws IOException {
    Files.writeString(shop.resolve("models/b2.json"), MODEL);
    Files.writeString(shop.resolve("models/b2-again.json"), MODEL.replace("B2", "b 2"));

    Console console = inShop("check", "quay-17");
    assertEquals(1, console.code());
    assertTrue(console.err().contains("is of the same machine as"), console.err());
  }

  @Test
  void pricesOfTheShopStandInAndAreNotToldAsMistakesOfTheJob() throws IOException {
    Files.writeString(shop.resolve("prices.json"), PRICES);

    Console console = inShop("diagnose", "--full", "quay-17");
    assertEquals(0, console.code(), console.err());
    assertTrue(words(console).contains("prices of the shop stand in"), console.err());
    assertTrue(console.out().contains("EUR"), console.out());
    assertFalse(console.err().contains("is not a remedy"), console.err());
  }

  @Test
  void mistakesOfAllFilesAreToldWithTheirLines() throws IOException {
    Files.writeString(shop.resolve("prices.json"), PRICES.replace("heater.", "haeter."));
    Files.writeString(
        shop.resolve("stock.json"), "{ \"format\": \"kelter-stock/1\", \"prats\": [] }");

    Console console = inShop("check", "quay-17");
    assertEquals(1, console.code());
    assertTrue(console.err().contains("did you mean 'heater'?"), console.err());
    assertTrue(console.err().contains("did you mean 'parts'?"), console.err());
    assertTrue(console.err().contains("prices.json"), console.err());
  }

  @Test
  void aWordOfStockOrPricesThatNamesNoRemedyIsTold() throws IOException {
    Files.writeString(shop.resolve("prices.json"), PRICES);
    Files.writeString(
        shop.resolve("stock.json"),
        """
        {
          "format": "kelter-stock/1",
          "parts": [
            { "part": "Element", "for": "heater.renew-heater", "number": 1 },
            { "part": "Link", "for": "thermal-link.renew-termal-link", "number": 2 },
            { "part": "Clip", "number": 5 }
          ]
        }
        """);
    for (String command : List.of("diagnose", "quote", "sheet")) {
      List<String> told =
          inShop(command, "quay-17").err().lines().filter(line -> line.contains("remedy")).toList();

      assertEquals(2, told.size(), told.toString());
      assertTrue(told.get(0).contains("stock.json, line 5,"), told.get(0));
      assertTrue(told.get(0).contains("/parts/1/for"), told.get(0));
      assertTrue(
          told.get(0).contains("did you mean 'thermal-link.renew-thermal-link'?"), told.get(0));
      assertTrue(told.get(1).contains("prices.json, line 5,"), told.get(1));
      assertTrue(told.get(1).contains("did you mean 'heater.renew-heater'?"), told.get(1));
    }
    Files.writeString(shop.resolve("prices.json"), PRICES.replace("renew-haeter", "descale"));
    Files.delete(shop.resolve("stock.json"));
    assertFalse(inShop("diagnose", "quay-17").err().contains("remedy"));
  }

  @Test
  void instrumentsAndLogsGoByTheFolderToo() throws IOException {
    Files.writeString(
        shop.resolve("shop.json"),
        """
        {
          "format": "kelter-shop/1",
          "instruments": [
            { "id": "quay-meter", "functions": [{ "measures": "power", "accuracy": "1 %" }] }
          ]
        }
        """);
    Path log = temporary.resolve("log.csv");
    StringBuilder rows = new StringBuilder("Time [s],P [W]\n");
    for (int second = 0; second < 60; second++) {
      rows.append(second).append(",2000\n");
    }
    Files.writeString(log, rows);

    assertTrue(inShop("instruments").out().contains("quay-meter"));
    assertFalse(Console.run("instruments").out().contains("quay-meter"));
    Console read =
        inShop(
            "readings",
            log.toString(),
            "--map",
            "P=heater.power",
            "--instrument",
            "quay-meter",
            "--into",
            "quay-17");
    assertEquals(0, read.code(), read.err());
    assertTrue(Files.readString(shop.resolve("jobs/quay-17.json")).contains("quay-meter"));
    assertTrue(Files.readString(shop.resolve("shop.json")).contains("\"columns\""));
  }

  @Test
  void aHalfNamedCommandIsToldWhole() {
    for (String[] words :
        new String[][] {{"shop"}, {"shop", "inti"}, {"shop", "--help"}, {"shop", "init"}}) {
      Console console = Console.run(words);
      assertEquals(2, console.code());
      assertTrue(console.err().contains("shop init"), console.err());
    }
  }
}

package kelter.cli.command.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kelter.cli.program.Console;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is recorded as done; prices and machines are made up. */
class DoneCommandTest {

  @TempDir private Path folder;
  private String shop;
  private String job;

  @BeforeEach
  void aKettleInAShopWithPrices() throws IOException {
    shop = folder.resolve("shop").toString();
    Console.run("shop", "init", shop);
    String prices = folder.resolve("shop").resolve("prices.json").toString();
    Files.writeString(
        Path.of(prices),
        """
        {"format":"kelter-prices/1","date":"2026-11-01","currency":"USD",
         "labour-per-hour":"110 USD","call-out":"95 USD","tax-rate":"8 %","parts":{}}
        """);
    job = folder.resolve("kettle.json").toString();
    Console.run("new", "kettle", "-s", "cold", "--market", "NA", "-o", job);
  }

  @ParameterizedTest
  @CsvSource({
    "--part, Element=38 EUR, write it in USD",
    "--time, 10000 h, was it min?",
    "--time, 40m, minutes are min"
  })
  void whatCannotBeOnABillIsRefused(String option, String told, String remedy) throws IOException {
    String before = Files.readString(Path.of(job));
    Console refused = Console.inShop(shop, "done", job, "heater.renew-heater", option, told);

    assertEquals(1, refused.code(), refused.out());
    assertTrue(refused.err().contains(remedy), refused.err());
    assertEquals(before, Files.readString(Path.of(job)));
    assertEquals(
        0, Console.inShop(shop, "done", job, "heater.renew-heater", "--time", "40 min").code());
  }

  @Test
  void workIsToldInTheWordsOfTheMarket() {
    String told = Console.inShop(shop, "done", job, "heater.renew-heater").out();
    assertTrue(told.startsWith("Recorded: Heater: replace the heater"), told);
  }

  @Test
  void aPageThatWasWrittenIsTold() {
    String page = folder.resolve("page.html").toString();
    Console quoted = Console.inShop(shop, "quote", job, "-o", page);
    assertEquals(0, quoted.code(), quoted.err());
    assertTrue(quoted.err().contains("kelter: written: " + page), quoted.err());
  }

  @Test
  void aTestOfTheWayBackIsFoundByItsWord() {
    Console.inShop(shop, "done", job, "heater.renew-heater");
    assertEquals(0, Console.run("prove", job, "--test", "ground=met").code());
    String refused = Console.run("prove", job, "--test", "earth is good").err();
    assertTrue(refused.contains("; steps: look, "), refused);
  }

  /** Two readings of one step of the way back are one test: as many are told as are named. */
  @Test
  void asManyTestsAreToldAsAreNamed() {
    Console.inShop(shop, "done", job, "heater.renew-heater");
    String said = Console.run("prove", job).out().replaceAll("\\s+", " ");
    Matcher tests = Pattern.compile("(\\d+) tests: ((?:[a-z-]+, )*[a-z-]+)").matcher(said);

    assertTrue(tests.find(), said);
    assertEquals(Integer.parseInt(tests.group(1)), tests.group(2).split(", ").length, said);
  }
}

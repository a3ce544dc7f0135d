package kelter.cli.command.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kelter.cli.program.Console;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What an owner is told of repair and replacement, and what happens to jobs that lack something.
 */
class WeighCommandTest {

  private static final Path JOBS = Path.of("..", "demo", "jobs");

  @TempDir private Path folder;

  /** With prices as the owner pays them. */
  private static String dear() throws IOException {
    return beforeTax().replace("\"tax-rate\"", "\"prices-with-tax\": true, \"tax-rate\"");
  }

  private static String beforeTax() throws IOException {
    return Files.readString(JOBS.resolve("dear-heater.json"));
  }

  private Console weigh(String job, String... options) throws IOException {
    Path file = folder.resolve("job.json");
    Files.writeString(file, job);
    String[] words = new String[options.length + 2];
    words[0] = "weigh";
    System.arraycopy(options, 0, words, 1, options.length);
    words[words.length - 1] = file.toString();
    return Console.run(words);
  }

  /** The text on one line, so that it can be searched wherever it was wrapped. */
  private static String flat(String text) {
    return text.replaceAll("\\s+", " ");
  }

  private static double figure(Console console, String before) {
    assertEquals(0, console.code(), console.err());
    Matcher found =
        Pattern.compile(Pattern.quote(before) + " ?(-?[0-9.]+)").matcher(flat(console.out()));
    assertTrue(found.find(), before + " in " + console.out());
    return Double.parseDouble(found.group(1));
  }

  private static Map<String, Json> json(Console console) {
    assertEquals(0, console.code(), console.err());
    byte[] bytes = console.out().getBytes(StandardCharsets.UTF_8);
    return ((Json.Obj) JsonText.read(bytes, "weighing", "")).members();
  }

  @Test
  void theDearAssemblyIsRenewedInAYoungMachineAndNotInAnOldOne() throws IOException {
    Console young = weigh(dear(), "--why");
    Console old = weigh(dear().replace("\"2 years\"", "\"14 years\""), "--why");

    assertTrue(flat(young.out()).contains("Repair (1.) costs least"), young.out());
    assertTrue(flat(old.out()).contains("A new machine (1.) costs least"), old.out());
    double age = figure(young, "Break-even age of the machine:");
    assertTrue(age > 2 && age < 14);
    assertEquals(age, figure(old, "Break-even age of the machine:"), 0.5);
  }

  /**
   * By hand: 45 min of 58 EUR are 43.50 EUR, with the part of 310 EUR 353.50 EUR; with 21 % tax,
   * 74.235 EUR, 427.735 EUR. The new machine is paid as told, 720 + 60 EUR, with the call-out of 39
   * EUR and its tax of 8.19 EUR: 827.19 EUR.
   */
  @Test
  void theRepairIsWeighedWithItsTaxAndTheNewMachineAsTold() throws IOException {
    Map<String, Json> told = json(weigh(beforeTax(), "--format", "json"));
    assertEquals(new Json.Bool(true), told.get("tax-included"));
    assertEquals(427.735, outlay(told, "heater.renew-heater"), 1e-6);
    assertEquals(827.19, outlay(told, "replace"), 1e-6);
    assertEquals("replace", ((Json.Str) told.get("recommended")).text());
    String screen = flat(weigh(beforeTax()).out());
    assertTrue(screen.contains("(amounts in EUR, tax included)"), screen);
    assertTrue(screen.contains("bill now 428"), screen);

    String unknown = beforeTax().replace("\"tax-rate\": \"21 %\",", "");
    assertEquals(
        353.5, outlay(json(weigh(unknown, "--format", "json")), "heater.renew-heater"), 1e-6);
    assertTrue(flat(weigh(unknown).out()).contains("(amounts in EUR, repair before tax)"));
    assertTrue(flat(weigh(unknown, "--full").out()).contains("No tax rate is stated:"));
  }

  private static double outlay(Map<String, Json> weighing, String id) {
    for (Json each : ((Json.Arr) weighing.get("options")).items()) {
      Map<String, Json> option = ((Json.Obj) each).members();
      if (((Json.Str) option.get("id")).text().equals(id)) {
        return amount(option.get("outlay"));
      }
    }
    throw new AssertionError(id + " is no option");
  }

  @Test
  void pricesAgeEnergyAndRateMoveTheAnswerTheRightWay() throws IOException {
    double bill = figure(weigh(dear(), "--why"), "Break-even price of the repair:");

    assertTrue(bill > breakEven("\"2 years\"", "\"9 years\""));
    assertTrue(bill > breakEven("\"720 EUR\"", "\"520 EUR\""));
    assertTrue(bill > breakEven("\"0.72 kW.h\"", "\"1.40 kW.h\""));
    assertTrue(bill < breakEven("\"3 %\"", "\"9 %\""));
    assertTrue(bill > breakEven("\"replacement-delivery\": \"6 d\"", "\"x-none\": \"\""));
  }

  private double breakEven(String stated, String other) throws IOException {
    assertTrue(dear().contains(stated), stated);
    return figure(weigh(dear().replace(stated, other), "--why"), "Break-even price of the repair:");
  }

  /**
   * The comparison itself turns where the break-even says: the part a little cheaper and dearer.
   */
  @Test
  void theAnswerTurnsAtTheBreakEven() throws IOException {
    double bill = amount(json(weigh(dear(), "--format", "json")).get("break-even-repair"));
    double work = 58 * 45 / 60.0;

    assertEquals("heater.renew-heater", recommended(bill - work - 1));
    assertEquals("replace", recommended(bill - work + 1));
  }

  private String recommended(double part) throws IOException {
    String job = dear().replace("310 EUR", String.format(Locale.ROOT, "%.2f EUR", part));
    return ((Json.Str) json(weigh(job, "--format", "json")).get("recommended")).text();
  }

  private static double amount(Json json) {
    Json value = ((Json.Obj) json).members().get("value");
    return Double.parseDouble(((Json.Num) value).spelling());
  }

  /** Six options, of which three are shown: their chances would not add up to 100. */
  @Test
  void theScreenTellsWhatItLeavesOut() throws IOException {
    String coarse = Files.readString(JOBS.resolve("heater-coarse.json"));
    Map<String, Json> told = json(weigh(coarse, "--format", "json"));
    assertEquals(6, ((Json.Arr) told.get("options")).items().size());
    String screen = flat(weigh(coarse).out());
    assertTrue(screen.contains("3 options more (--full): cheapest in 16 of 100."), screen);
    assertFalse(flat(weigh(dear()).out()).contains("more (--full)"));
  }

  @Test
  void amountsTellTheirUnit() throws IOException {
    String text = flat(weigh(dear(), "--carbon").out());
    assertTrue(text.contains(" EUR a year. A new machine: about"), text);
    assertTrue(text.contains(" kg a year"), text);
    String json = weigh(dear(), "--carbon", "--why", "--format", "json").out().replace(" ", "");
    for (String unit : List.of("EUR", "EUR/a", "kg", "kg/a")) {
      assertTrue(json.contains("\"unit\":\"" + unit + "\""), unit);
    }
  }

  @Test
  void aCloseAnswerIsToldAsSuch() throws IOException {
    String close = flat(weigh(dear()).out());
    assertTrue(close.contains("It is close: not replacing costs least in only"), close);
    assertFalse(flat(weigh(dear().replace("310 EUR", "20 EUR")).out()).contains("It is close"));
  }

  /** Where a reading is missing, or none of what is known fits, that comes first. */
  @Test
  void nothingIsAdvisedBeyondWhatTheDiagnosisSays() throws IOException {
    String unread =
        dear().replaceAll("(?s)\"measurements\": \\[.*?\n  \\]", "\"measurements\": []");
    Console empty = weigh(unread);
    assertTrue(flat(empty.out()).contains("Do not choose yet. First measure "), empty.out());
    assertTrue(json(weigh(unread, "--format", "json")).get("recommended") instanceof Json.Null);
    String odd = dear().replace("\"reading\": \"OL\"", "\"reading\": \"120 ohm\"");
    String told = flat(weigh(odd).out());
    assertTrue(told.contains("Do not choose yet. First take again: heater resistance"), told);
    assertFalse(told.contains("(1.) costs least"), told);
  }

  @Test
  void whyTellsAllThatTurnsTheAnswer() throws IOException {
    String told = flat(weigh(dear(), "--why").out());
    for (String word :
        List.of(
            "Where the answer turns",
            "What moves it most",
            "turns the answer",
            "regret",
            "half the price of a new machine",
            "common practice, no source",
            "Paid in all by the end of each year",
            "Assumptions",
            "Sources")) {
      assertTrue(told.contains(word), word);
    }
    assertFalse(flat(weigh(dear()).out()).contains("What moves it most"));
  }

  @ParameterizedTest
  @ValueSource(ints = {40, 52, 80})
  void textKeepsToTheTerminal(int width) {
    for (String name : List.of("dear-heater", "washer-extractor", "tumble-dryer")) {
      Console console =
          Console.narrow(width, "weigh", "--why", JOBS.resolve(name + ".json").toString());
      assertEquals(0, console.code(), console.err());
      assertTrue(console.widest() <= width, name + " at " + width + ": " + console.widest());
    }
  }

  @Test
  void jsonHasTheReasonsWhereTheyAreAskedFor() throws IOException {
    assertFalse(json(weigh(dear(), "--format", "json")).containsKey("reasons"));

    Map<String, Json> told = json(weigh(dear(), "--format", "json", "--why", "--carbon"));
    Map<String, Json> reasons = ((Json.Obj) told.get("reasons")).members();

    assertEquals(
        List.of("break-even-age", "influences", "regret", "rules", "courses"),
        List.copyOf(reasons.keySet()));
    assertTrue(((Json.Arr) reasons.get("influences")).items().size() > 5);
    assertTrue(((Json.Obj) told.get("carbon")).members().containsKey("sources"));
    assertEquals(
        weigh(dear(), "--format", "json", "--why").out(),
        weigh(dear(), "--format", "json", "--why").out());
  }

  @Test
  void theDrawingTellsInWordsWhatItShows() throws IOException {
    Path drawing = folder.resolve("cost.svg");
    Console console = weigh(dear(), "--plot", drawing.toString());
    assertEquals(0, console.code(), console.err());
    String svg = Files.readString(drawing);

    for (String part :
        List.of(
            "role=\"img\"",
            "<title id=\"title\">",
            "<desc id=\"description\">",
            "years from now",
            ">EUR<",
            "9 of 10 cases",
            "stroke-dasharray")) {
      assertTrue(svg.contains(part), part);
    }
    assertTrue(svg.contains("hallowdene-0077") && svg.contains("renew the heater with its seal"));
    assertFalse(svg.contains("NaN") || svg.contains("href") || svg.contains("<script"));
    assertEquals(svg.split("<g>").length, svg.split("</g>").length);
    weigh(dear(), "--plot", drawing.toString());
    assertEquals(svg, Files.readString(drawing));
  }

  @Test
  void onlyADrawingIsEverWrittenOver() throws IOException {
    Path job = folder.resolve("job.json");
    Console console = weigh(dear(), "--plot", job.toString());

    assertEquals(1, console.code());
    assertTrue(console.err().contains(".svg"), console.err());
    assertEquals(dear(), Files.readString(job));
  }

  @Test
  void allThatIsMissingIsToldAtOnce() throws IOException {
    String bare =
        dear()
            .replace("\"age\": \"2 years\",", "")
            .replace("\"labour-per-hour\": \"58 EUR\",", "")
            .replace("\"replacement\": \"720 EUR\",", "")
            .replace("\"heater.renew-heater\": \"310 EUR\"", "");
    Console console = weigh(bare);

    assertEquals(1, console.code());
    for (String where :
        List.of(
            "/appliance/age",
            "/prices/labour-per-hour",
            "/prices/replacement",
            "/prices/parts/heater.renew-heater")) {
      assertTrue(console.err().contains(where + "): is missing"), where + ": " + console.err());
    }
  }

  @Test
  void whatCannotBeIsToldWhereItStands() throws IOException {
    String wrong =
        dear()
            .replace("\"2 years\"", "\"-2 years\"")
            .replace("\"60 EUR\"", "\"60 USD\"")
            .replace("\"310 EUR\"", "\"310 GBP\"")
            .replace("\"720 EUR\"", "\"-720 EUR\"")
            .replace("\"cycles-per-week\": \"4\"", "\"cycles-per-week\": \"0\"")
            .replace("\"12 mo\"", "\"-1 mo\"");
    Console console = weigh(wrong);

    assertEquals(1, console.code());
    assertEquals(6, console.err().lines().count(), console.err());
    assertTrue(console.err().contains("(/prices/installation): '60 USD' is in another currency"));
    assertTrue(console.err().contains("(/appliance/age): '-2 years' is negative"));
  }

  @Test
  void aLifeOfNothingIsRefused() {
    Console console = Console.run("compute", "remaining-life", "mean=0 a", "shape=2", "age=1 a");
    assertEquals(1, console.code());
    assertTrue(console.err().contains("mean"), console.err());
    assertEquals(
        1,
        Console.run("compute", "repair-or-replace", "repair=1", "left=1 a", "price=1", "life=0 a")
            .code());
  }

  @Test
  void aMachineThatCannotBeHadIsNoOption() throws IOException {
    String none =
        dear().replace("\"call-out\":", "\"replacement-available\": false, \"call-out\":");
    Console console = weigh(none, "--why");

    assertEquals(0, console.code(), console.err());
    String told = flat(console.out());
    assertTrue(told.contains("no new machine can be had"), told);
    assertTrue(told.contains("Replacing is no option here."), told);
    assertFalse(told.contains("[replace]"), told);
    assertEquals(0, weigh(none, "--plot", folder.resolve("a.svg").toString()).code());
    assertFalse(json(weigh(none, "--format", "json", "--why")).isEmpty());
  }

  @Test
  void carbonIsToldOnlyWhereItIsAskedForAndNeedsItsFigures() throws IOException {
    assertFalse(weigh(dear()).out().contains("Carbon"));
    assertTrue(flat(weigh(dear(), "--carbon").out()).contains("from memory"));
    Console console =
        weigh(
            dear()
                .replace("\"energy-per-cycle\": \"0.72 kW.h\",", "")
                .replace("\"carbon-per-kwh\": \"0.35 kg\"", "\"x-none\": 0"),
            "--carbon");
    assertEquals(1, console.code());
    assertTrue(console.err().contains("/use/energy-per-cycle): is missing"), console.err());
    assertTrue(console.err().contains("/use/carbon-per-kwh): is missing"), console.err());
  }

  /** Everything that the job leaves open stands in the output. */
  @Test
  void whatIsNotStatedIsListed() throws IOException {
    String sparse =
        dear()
            .replace("\"day-without\": \"3 EUR\",", "")
            .replace("\"repair-warranty\": \"12 mo\",", "")
            .replace("\"date\": \"2026-11-10\",", "")
            .replace("\"discount-rate\": \"3 %\",", "")
            .replace("\"cycles-per-week\": \"4\",", "");
    String told = flat(weigh(sparse, "--full").out());
    for (String words :
        List.of(
            "cost of a day without the machine",
            "warranty on the repair",
            "does not date its prices",
            "no discount rate; 3 %",
            "no cycles a week",
            "no running costs")) {
      assertTrue(told.contains(words), words + ": " + told);
    }
  }
}

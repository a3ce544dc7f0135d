package kelter.core.file.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import kelter.core.job.Job;
import kelter.core.job.Nameplate;
import kelter.core.job.Reading;
import kelter.core.owner.Tax;
import kelter.core.owner.TaxRate;
import kelter.core.owner.TaxRounding;
import kelter.core.owner.Terms;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.vocabulary.Vocabulary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JobFileTest {

  @TempDir private Path folder;

  private static Job parse(String text) {
    return StatedJob.parse(text, Samples.VOCABULARY).job();
  }

  private static List<Problem> problems(String text) {
    return assertThrows(InputException.class, () -> parse(text)).problems();
  }

  private Problem problemOf(byte[] content) throws IOException {
    Path file = folder.resolve("job.json");
    Files.write(file, content);
    return problemOf(file);
  }

  private static Problem problemOf(Path file) {
    InputException refused =
        assertThrows(InputException.class, () -> StatedJob.read(file, Samples.VOCABULARY));
    assertEquals(1, refused.problems().size(), refused::getMessage);
    assertFalse(refused.getMessage().contains("Exception"), refused.getMessage());
    return refused.problems().get(0);
  }

  @Test
  void everyFieldArrives() {
    Job job = parse(Samples.FULL);

    assertEquals("b-17", job.id());
    assertEquals(4.5, job.appliance().age().orElseThrow().value());
    assertEquals(400, job.appliance().nameplate().power().orElseThrow().meanSi());
    assertEquals(0.8, job.appliance().components().get(0).figure("lift").orElseThrow().si());
    assertEquals(2, job.appliance().components().get(0).curves().get("head").points().size());
    assertEquals(2, job.measurements().get(0).readings().size());
    assertEquals(
        297.15, job.measurements().get(0).conditions().si("temperature", Double.NaN), 1e-12);
    assertEquals(new Reading.YesNo(true), job.measurements().get(1).readings().get(0));
    assertEquals(new Reading.Grade("some", 1), job.measurements().get(2).readings().get(0));
    assertEquals(
        new BigDecimal("1200.50"), job.prices().orElseThrow().parts().get("pump.renew").amount());
    assertEquals(
        0.005 / Math.sqrt(3),
        job.instrument("standpipe")
            .orElseThrow()
            .functions()
            .get(0)
            .error()
            .standardUncertainty(1.6),
        1e-15);
  }

  @Test
  void termsAndUseArrive() {
    Job job = parse(Samples.FULL);
    Terms terms = job.prices().orElseThrow().terms();

    assertEquals(LocalDate.of(2026, 2, 27), terms.priceDate().orElseThrow());
    assertTrue(terms.callOutCredited().orElseThrow());
    assertEquals(1800, terms.leastWork().orElseThrow().si(), 1e-9);
    assertFalse(terms.replacementAvailable().orElseThrow());
    assertEquals(3 * 86_400, terms.partsDelivery().orElseThrow().si(), 1e-9);
    assertEquals(14 * 86_400, terms.replacementDelivery().orElseThrow().si(), 1e-9);
    assertEquals(
        5 * terms.repairWarranty().orElseThrow().si(),
        terms.newWarranty().orElseThrow().si(),
        1e-6);
    assertEquals("400 NOK", terms.dayWithout().orElseThrow().format());
    assertEquals(
        new BigDecimal("1.60"),
        job.prices().orElseThrow().supplies().energyPerKilowattHour().orElseThrow().amount());
    assertEquals(0.2, job.prices().orElseThrow().spread().running().orElseThrow().si(), 1e-15);
    assertEquals(
        new Tax(
            Optional.of(TaxRate.parse("25 %")),
            Optional.of(TaxRate.parse("12.5 %")),
            Optional.of(TaxRounding.PER_LINE),
            Optional.of(true)),
        job.prices().orElseThrow().tax());
    assertEquals(14, job.use().cyclesPerWeek().orElseThrow().si());
    assertEquals(4.32e6, job.use().now().energy().orElseThrow().si(), 1e-6);
    assertEquals(0.04, job.use().next().water().orElseThrow().si(), 1e-15);
    assertEquals(0.02, job.use().carbon().perKilowattHour().orElseThrow().si(), 1e-15);
  }

  @Test
  void everyMistakeInPricesAndUseIsToldWhereItStands() {
    String wrong =
        Samples.FULL
            .replace("\"4,5 years\"", "\"-4 years\"")
            .replace("\"500 NOK\"", "\"50 EUR\"")
            .replace("\"1200.50 NOK\"", "\"12 USD\"")
            .replace("\"42 NOK\"", "\"-42 NOK\"")
            .replace("\"3 d\"", "\"-3 d\"")
            .replace("\"2026-02-27\"", "\"27.2.26\"")
            .replace("\"call-out-credited\": true", "\"call-out-credited\": \"yes\"")
            .replace("\"running\": \"20 %\"", "\"running\": \"20 kg\"")
            .replace("\"14\"", "\"0\"");

    assertEquals(
        List.of(
            "/appliance/age",
            "/prices/call-out",
            "/prices/parts/pump.renew",
            "/prices/date",
            "/prices/call-out-credited",
            "/prices/parts-delivery",
            "/prices/water-per-m3",
            "/prices/spread/running",
            "/use/cycles-per-week"),
        problems(wrong).stream().map(Problem::where).toList());
  }

  @Test
  void whatCannotBeIsToldWhereItStands() {
    String wrong =
        Samples.FULL
            .replace("\"flow\": \"0 L/min\"", "\"flow\": \"-3 L/min\"")
            .replace("\"24 °C\"", "\"240 °C\"");

    List<Problem> problems = problems(wrong);
    assertEquals(
        List.of("/measurements/0/at/flow", "/measurements/0/at/temperature"),
        problems.stream().map(Problem::where).toList());
    assertTrue(problems.get(0).display().contains("never negative"), problems.get(0).display());
    assertTrue(problems.get(1).display().contains("-40 to 200"), problems.get(1).display());
  }

  @Test
  void writingBackLosesNothing() throws IOException {
    JobDocument document = StatedJob.parse(Samples.FULL, Samples.VOCABULARY);
    Path file = folder.resolve("job.json");

    JobFile.writeNew(document, file);

    String written = Files.readString(file);
    assertEquals(squeezed(Samples.FULL), squeezed(written));
    assertTrue(written.contains("1.50e2"), "the spelling of numbers is kept");
    assertEquals(document, StatedJob.read(file, Samples.VOCABULARY));
    assertEquals(written, StatedJob.read(file, Samples.VOCABULARY).text());
    try (var left = Files.list(folder)) {
      assertEquals(1, left.count(), "nothing is left beside the file");
    }
  }

  /** IEC 60335-1:2004, 7.3 (second-hand): a hyphen between the limits of a range. */
  @Test
  void aNameplateWithRangesArrivesAndIsWrittenBackAsItWas() {
    String text =
        Samples.FULL
            .replace("\"230 V\"", "\"220 \u2013 240V\"")
            .replace("\"50 Hz\"", "\"50/60 Hz\"")
            .replace("\"0.4 kW\"", "\"370-430 W\"");
    JobDocument document = StatedJob.parse(text, Samples.VOCABULARY);
    Nameplate plate = document.job().appliance().nameplate();

    assertEquals("220 V to 240 V", plate.voltage().orElseThrow().display());
    assertEquals("50 Hz to 60 Hz", plate.frequency().orElseThrow().display());
    assertEquals("370 W to 430 W", plate.power().orElseThrow().display());
    assertEquals(squeezed(text), squeezed(document.text()));
    assertEquals(document, StatedJob.parse(document.text(), Samples.VOCABULARY));
  }

  @Test
  void aBadRangeIsToldWhereItStands() {
    String wrong =
        Samples.FULL
            .replace("\"230 V\"", "\"208/240 V\"")
            .replace("\"50 Hz\"", "\"60-50 Hz\"")
            .replace("{ \"power\": \"60 W\" }", "{ \"power\": \"60 W\", \"voltage\": 230 }");
    List<Problem> problems = problems(wrong);

    assertEquals(
        List.of(
            "/appliance/nameplate/voltage",
            "/appliance/nameplate/frequency",
            "/appliance/components/0/nameplate/voltage"),
        problems.stream().map(Problem::where).toList());
    assertTrue(problems.get(0).what().contains("write the one that it is set to"));
    assertTrue(problems.get(1).what().contains("the lower limit stands first"));
  }

  private static String squeezed(String json) {
    return json.replaceAll("\\s+", "");
  }

  @Test
  void newFileIsNeverWrittenOverAnOldOne() throws IOException {
    Path file = folder.resolve("job.json");
    Files.writeString(file, "mine");
    JobDocument document = StatedJob.parse(Samples.FULL, Samples.VOCABULARY);

    assertThrows(InputException.class, () -> JobFile.writeNew(document, file));
    assertEquals("mine", Files.readString(file));
  }

  @Test
  void aFolderThatIsNotThereIsNamed() {
    Path file = folder.resolve("missing").resolve("job.json");
    JobDocument document = StatedJob.parse(Samples.FULL, Samples.VOCABULARY);

    String told =
        assertThrows(InputException.class, () -> JobFile.writeNew(document, file))
            .problems()
            .get(0)
            .display();

    assertTrue(told.startsWith(file.toString()), told);
    assertTrue(told.contains("there is no folder " + file.getParent()), told);
  }

  @Test
  void allMistakesAreToldInTheOrderOfTheFile() {
    String text =
        Samples.FULL
            .replace("\"id\": \"b-17\"", "\"id\": \"B 17\"")
            .replace("\"2026-03-01\"", "\"1.3.26\"")
            .replace("\"maker\"", "\"makr\"")
            .replace("\"230 V\"", "\"230 W\"")
            .replace("[\"20 L/min\", \"2.1 m\"]", "[\"20 L/min\"]")
            .replace("\"measures\": \"head\"", "\"measures\": \"haed\"")
            .replace("\"24 °C\"", "\"24 Celsus\"")
            .replace("\"reading\": \"some\"", "\"reading\": \"sme\"")
            .replace("\"900 NOK\"", "900")
            .replace("\"700 NOK\"", "\"700 EUR\"");

    List<Problem> problems = problems(text);

    assertEquals(
        List.of(
            "/id",
            "/date",
            "/appliance/makr",
            "/appliance/nameplate/voltage",
            "/appliance/components/0/curves/head/1",
            "/instruments/0/functions/0/measures",
            "/measurements/0/at/temperature",
            "/measurements/2/reading",
            "/prices/labour-per-hour",
            "/prices/installation"),
        problems.stream().map(Problem::where).toList());
    assertTrue(problems.get(2).remedy().contains("maker"), "a suggestion for a misspelt name");
    assertTrue(problems.get(5).remedy().contains("head"), "a suggestion for a misspelt word");
    assertTrue(problems.get(6).what().contains("Cel"), "a suggestion for a misspelt unit");
    assertTrue(problems.get(7).what().contains("some"), "a suggestion for a misspelt grade");
  }

  @Test
  void everyMistakeOfAFileIsToldWithItsLine() throws IOException {
    Path file = folder.resolve("job.json");
    Files.writeString(
        file,
        Samples.FULL
            .replace("\"1.60 m\"", "\"1.60 V\"")
            .replace("\"of\": \"pump\", \"observable\": \"hums\", ", "\"of\": \"pump\", "));

    List<Problem> problems =
        assertThrows(InputException.class, () -> StatedJob.read(file, Samples.VOCABULARY))
            .problems();

    // Lines and columns counted in the text of the sample.
    assertEquals("/measurements/0/reading/1", problems.get(0).where());
    assertTrue(
        problems.get(0).display().startsWith(file + ", line 58, column 29 (/measurements/0/"),
        problems.get(0).display());
    assertEquals("/measurements/1", problems.get(1).where());
    assertTrue(
        problems.get(1).display().startsWith(file + ", line 63, column 5 (/measurements/1)"),
        problems.get(1).display());
  }

  @Test
  void anObjectWithoutAnythingIsToldWithTheFile() throws IOException {
    Path file = folder.resolve("job.json");
    Files.writeString(file, "{}");

    for (Problem problem :
        assertThrows(InputException.class, () -> StatedJob.read(file, Samples.VOCABULARY))
            .problems()) {
      assertTrue(problem.display().startsWith(file + ", line 1, column 1: "), problem.display());
    }
  }

  @Test
  void aCommaTooManyOrTooFewIsToldInPlainWords() throws IOException {
    for (String bracket : new String[] {"]", "}"}) {
      String text = bracket.equals("]") ? "{\"x-a\": [1,\n ]}" : "{\"x-a\": 1,\n }";
      Problem problem = problemOf(text.getBytes(StandardCharsets.UTF_8));
      assertTrue(problem.what().contains("a comma stands before " + bracket), problem.what());
      assertEquals(2, problem.place().line(), problem.display());
    }
    Problem few = problemOf("{\"x-a\": 1\n \"x-b\": 2}".getBytes(StandardCharsets.UTF_8));
    assertTrue(few.what().contains("a comma is missing"), few.what());
    Problem end = problemOf("{\"x-a\": [1".getBytes(StandardCharsets.UTF_8));
    assertTrue(end.what().contains("ends too early"), end.what());
  }

  @Test
  void anInstrumentThatMeasuresSomethingElseIsAMistake() {
    String wrong = Samples.FULL.replace("\"measures\": \"head\"", "\"measures\": \"frequency\"");

    List<Problem> problems =
        problems(wrong.replace("\"accuracy\": \"5 mm\"", "\"accuracy\": \"1 %\""));

    assertEquals("/measurements/0/instrument", problems.get(0).where());
    assertTrue(
        problems.get(0).what().contains("measures frequency, temperature"), problems.get(0).what());
    assertTrue(problems.get(0).what().contains("head"), problems.get(0).what());
    List<Problem> library =
        problems(
            Samples.FULL.replace("\"instrument\": \"standpipe\"", "\"instrument\": \"scales\""));
    assertTrue(library.get(0).what().contains("'scales' measures mass"), library.get(0).what());
  }

  @Test
  void anInstrumentOfWhichNothingIsStatedMayMeasureAnything() {
    String without = Samples.FULL.replaceAll("(?s)\"functions\": \\[.*?\\]", "\"functions\": []");

    assertEquals(1, parse(without).instruments().size());
  }

  @Test
  void anAgeBeyondAllMachinesIsAMistake() {
    Problem problem = problems(Samples.FULL.replace("4,5 years", "300 years")).get(0);

    assertEquals("/appliance/age", problem.where());
    assertTrue(problem.what().contains("300 years"), problem.what());
  }

  @Test
  void anIdThatStartsWithAKindHasTheKindWrittenBesideIt() {
    String wrong =
        Samples.FULL
            .replace("\"id\": \"pump\",", "\"id\": \"bilge-pump-2\",")
            .replace("\"kind\": \"bilge-pump\",", "");

    Problem problem = problems(wrong).get(0);

    assertEquals("/appliance/components/0/id", problem.where());
    assertTrue(problem.remedy().contains("\"kind\": \"bilge-pump\""), problem.remedy());
  }

  @Test
  void duplicateKeysAreToldWithTheirPlace() {
    List<Problem> problems = problems("{\"format\": \"kelter-job/1\", \"x-a\": 1, \"x-a\": 2}");

    assertEquals("/x-a", problems.get(0).where());
    assertTrue(problems.get(0).what().contains("twice"));
  }

  @Test
  void emptyFile() throws IOException {
    assertTrue(problemOf(new byte[0]).what().contains("empty"));
    assertTrue(problemOf(" \n".getBytes(StandardCharsets.UTF_8)).what().contains("nothing"));
  }

  @Test
  void folder() {
    assertTrue(problemOf(folder).what().contains("directory"));
  }

  @Test
  void missingFile() {
    assertTrue(problemOf(folder.resolve("none.json")).what().contains("no such file"));
  }

  @Test
  void hugeFile() throws IOException {
    Path file = folder.resolve("huge.json");
    try (var channel =
        Files.newByteChannel(
            file,
            java.nio.file.StandardOpenOption.CREATE_NEW,
            java.nio.file.StandardOpenOption.WRITE)) {
      channel.position(200L * 1024 * 1024);
      channel.write(java.nio.ByteBuffer.wrap(new byte[] {'}'}));
    }
    assertTrue(problemOf(file).what().contains("larger than 4 MB"));
  }

  @Test
  void deeplyNested() throws IOException {
    String text = "{\"x-a\":" + "[".repeat(100_000) + "]".repeat(100_000) + "}";
    assertTrue(problemOf(text.getBytes(StandardCharsets.UTF_8)).what().contains("deeper than"));
  }

  @Test
  void notANumber() throws IOException {
    Problem problem = problemOf("{\n  \"x-a\": NaN }".getBytes(StandardCharsets.UTF_8));
    assertTrue(problem.what().contains("NaN"), problem.what());
    assertEquals(2, problem.place().line(), problem.display());
  }

  @Test
  void wrongEncodings() throws IOException {
    byte[] text = Samples.FULL.getBytes(StandardCharsets.UTF_8);
    byte[] marked = new byte[text.length + 3];
    marked[0] = (byte) 0xEF;
    marked[1] = (byte) 0xBB;
    marked[2] = (byte) 0xBF;
    System.arraycopy(text, 0, marked, 3, text.length);

    assertTrue(problemOf(marked).what().contains("byte order mark"));
    for (var utf16 :
        List.of(StandardCharsets.UTF_16, StandardCharsets.UTF_16BE, StandardCharsets.UTF_16LE)) {
      assertTrue(problemOf(Samples.FULL.getBytes(utf16)).what().contains("UTF-16"));
    }
    assertTrue(
        problemOf("{\"x-a\": \"é\"}".getBytes(StandardCharsets.ISO_8859_1))
            .what()
            .contains("UTF-8"));
  }

  @Test
  void brokenJsonHasLineAndColumn() throws IOException {
    Problem problem = problemOf("{\n  \"id\": \"a\",\n}".getBytes(StandardCharsets.UTF_8));
    assertEquals(3, problem.place().line(), problem.display());
    assertFalse(problem.display().contains("JsonReadFeature"), problem.display());
  }

  @Test
  void textBehindTheObject() throws IOException {
    assertTrue(problemOf("{} {}".getBytes(StandardCharsets.UTF_8)).what().contains("follows"));
  }

  @Test
  void controlCharactersInAMessageAreShownAsEscapes() {
    Problem problem = problems("{\"format\": \"\\u001b[31m\"}").get(0);
    assertFalse(problem.display().contains("\u001b"), "no escape reaches the terminal");
  }

  /** A count of a thermometer is a difference, whether written in K or in Cel. */
  @Test
  void theResolutionOfAThermometerIsADifference() {
    for (String resolution : List.of("0.1 K", "0.1 Cel")) {
      JobDocument document =
          StatedJob.parse(
              Samples.FULL.replace("\"0.1 K\"", '"' + resolution + '"'), Samples.VOCABULARY);
      var thermometer = document.job().instruments().get(0).functions().get(1);
      assertEquals(0.1, thermometer.resolution(), 1e-12);
      // 0.5 % of 60 Cel and 2 counts of 0.1 K, over the square root of 3
      assertEquals(0.5 / Math.sqrt(3), thermometer.error().standardUncertainty(273.15 + 60), 1e-9);
    }
  }

  @Test
  void anInstrumentOfTheLibraryNeedsNoDescription() {
    String text =
        Samples.FULL.replace("\"instrument\": \"standpipe\"", "\"instrument\": \"tape-measure\"");
    Job job = StatedJob.parse(text, Samples.VOCABULARY).job();
    assertTrue(job.instrument("tape-measure").orElseThrow().typical().isPresent());
    assertTrue(job.instrument("standpipe").orElseThrow().typical().isEmpty(), "the job's own");
  }

  @Test
  void anInstrumentThatNobodyKnowsIsRefusedWithTheNearest() {
    String text =
        Samples.FULL.replace("\"instrument\": \"standpipe\"", "\"instrument\": \"tape-mesure\"");
    InputException refused =
        assertThrows(InputException.class, () -> StatedJob.parse(text, Samples.VOCABULARY));
    assertEquals(1, refused.problems().size());
    assertTrue(refused.problems().get(0).display().contains("tape-measure"));
  }

  /** What RFC 8259 does not allow, each mistake of its grammar, with a word that must be told. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{\"a\":[1}           | '}' stands where ']' is expected, for the bracket of line 1, column 6",
        "{\"a\":1]            | ']' stands where '}' is expected",
        "{\"a\":1}}           | a closing bracket too many",
        "{\"a\" 1}            | a colon is missing",
        "{\"a\"}              | a colon is missing",
        "{\"a\":1 \"b\":2}    | a comma is missing",
        "{\"a\":1,}           | a comma stands before }",
        "{\"a\":1,,\"b\":2}   | a name in \"quotation marks\" is expected, not ','",
        "{a:1}                | a name in \"quotation marks\" is expected, not 'a'",
        "{'a':1}              | the quotation mark ' is not one of JSON",
        "{\"a\":\u201cx\u201d} | the quotation mark '\u201c' is not one of JSON",
        "{\"a\":tru}          | 'tru' is no value",
        "True                 | 'True' is no value",
        "{\"a\":,}            | a value is expected here, not ','",
        "<job/>               | a value is expected here, not '<'",
        "{\"a\":01}           | a number does not begin with 0",
        "{\"a\":+1}           | a number has no +",
        "{\"a\":1.}           | the number is not complete",
        "{\"a\":1e+}          | the number is not complete",
        "{\"a\":-}            | the number is not complete",
        "{\"a\":NaN}          | NaN and Infinity are not numbers",
        "{\"a\":\"x\\q\"}      | write \\\\ for a backslash",
        "{\"a\":\"\\u12G4\"}   | four digits",
        "{\"a\":\"l\tb\"}      | a line break or another control character",
        "{\"a\":\001}         | a control character stands here",
        "/* c */ {}           | comments are not allowed",
        "{} # c               | comments are not allowed",
        "{\"a\":\"open        | ends too early",
        "{\"a\":              | ends too early",
      })
  void aTextThatIsNoJsonIsToldInPlainWords(String text, String words) {
    String told = problems(text).get(0).display();

    assertTrue(told.startsWith("job, line 1, column "), told);
    assertTrue(told.contains(words), told);
    assertFalse(told.matches(".*(Source|marker|token|Array|Object|code |Feature|STRING).*"), told);
  }

  @Test
  void aNumberOrANameThatIsTooLongIsToldWithItsLine() {
    String digits = "{\n\"a\": " + "1".repeat(200) + "}";
    String name = "{\n\"" + "n".repeat(300) + "\": 1}";

    assertTrue(problems(digits).get(0).display().startsWith("job, line 2, column "));
    assertTrue(problems(name).get(0).display().contains("a name has more than 200 characters"));
  }

  /** The schema allows null nowhere but in members of somebody's own. */
  @ParameterizedTest
  @CsvSource({
    "complaint, /complaint",
    "date, /date",
    "market, /market",
    "reason, /reason",
    "displayed, /complaint/displayed",
    "when, /symptoms/leaks/when",
    "format, /format",
    "measurements, /measurements",
    "said, /complaint/said",
    "age, /appliance/age",
    "power, /appliance/nameplate/power",
    "instrument, /measurements/0/instrument",
    "call-out, /prices/call-out",
    "parts, /prices/parts",
    "use, /use",
  })
  void nullIsTold(String member, String pointer) {
    String wrong =
        Samples.FULL.replaceFirst(
            "\"" + member + "\": (\\{[^{}]*}|\\[(?s:.*?)\\n  ]|\"[^\"]*\")",
            "\"" + member + "\": null");

    List<Problem> problems = problems(wrong);

    assertEquals(pointer, problems.get(0).where());
    assertEquals("is null", problems.get(0).what());
    assertEquals(1, problems.size(), problems.toString());
  }

  /** ISO 4217:2015, list one: codes whose minor unit is "N.A.", and unions that have a currency. */
  @Test
  void pricesAreInACurrencyThatOneCanPayIn() {
    for (String code :
        List.of("XXX", "XTS", "XAU", "XAG", "XPT", "XPD", "XBA", "XDR", "XSU", "XUA")) {
      List<Problem> problems = problems(Samples.FULL.replace("NOK", code));
      assertEquals("/prices/currency", problems.get(0).where());
      assertTrue(problems.get(0).what().contains("'" + code + "' is no money to pay with"));
      assertEquals(1, problems.size(), problems.toString());
    }
    for (String code : List.of("EUR", "JPY", "KWD", "XAF", "XOF", "XCD", "XPF")) {
      String text = Samples.FULL.replace("NOK", code);
      assertEquals(code, parse(text).prices().orElseThrow().currency().getCurrencyCode());
    }
  }

  /** Three megabytes of one name made an answer of seventy. */
  @Test
  void readingStopsWhereOneNameComesTimeAndAgain() {
    String text = "{" + "\"id\": 1, ".repeat(50_000) + "\"id\": 1}";
    InputException refused =
        assertThrows(InputException.class, () -> StatedJob.parse(text, new Vocabulary(List.of())));
    assertEquals(1001, refused.problems().size());
    assertEquals("there may be more; reading stopped here", refused.problems().get(1000).what());
  }

  @Test
  void readingStopsWhereNobodyWouldCorrectMore() {
    String text =
        "{\"format\": \"kelter-job/1\", \"id\": \"a\", \"appliance\": {\"kind\": \"x\"},"
            + " \"measurements\": ["
            + "1,".repeat(50_000)
            + "1]}";

    InputException refused =
        assertThrows(InputException.class, () -> StatedJob.parse(text, new Vocabulary(List.of())));

    assertEquals(1001, refused.problems().size());
    assertEquals("there may be more; reading stopped here", refused.problems().get(1000).what());
  }
}

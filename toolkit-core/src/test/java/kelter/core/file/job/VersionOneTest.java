package kelter.core.file.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kelter.core.job.Complaint;
import kelter.core.job.Job;
import kelter.core.job.Prices;
import kelter.core.job.SymptomReport;
import kelter.core.job.SymptomReport.Answer;
import kelter.core.owner.TaxRate;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Vocabulary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What version 1 told on components and is a symptom of the machine now. */
class VersionOneTest {

  private static final List<String> KINDS =
      List.of(
          "heater",
          "air-heater",
          "motor",
          "door-switch",
          "supply-cord",
          "drain-pump",
          "inlet-valve",
          "wash-pump",
          "level-sensor");

  private static final Vocabulary WITHOUT = vocabulary("scale");
  private static final Vocabulary WITH = vocabulary("scale", "washes-cold", "trips-rcd");

  private static Vocabulary vocabulary(String... observables) {
    List<Observable> all =
        Stream.of(observables)
            .map(word -> Observable.named(word, word).by(Procedure.look(1)))
            .toList();
    List<ComponentKind> kinds = new ArrayList<>();
    for (String kind : KINDS) {
      kinds.add(new ComponentKind(kind, kind, all, List.of(), List.of()));
    }
    Observable hums = Observable.named("hums", "hums").by(Procedure.look(1));
    kinds.add(new ComponentKind("bilge-pump", "bilge pump", List.of(hums), List.of(), List.of()));
    return new Vocabulary(kinds);
  }

  static List<Vocabulary> vocabularies() {
    return List.of(WITH, WITHOUT);
  }

  private static String file(int version, String kind, String... measurements) {
    return """
    {
      "format": "kelter-job/%s",
      "id": "v-1",
      "appliance": {
        "kind": "washer",
        "components": [ { "id": "a", "kind": "%s" }, { "id": "b", "kind": "%2$s" } ]
      },
      "measurements": [%s]
    }
    """
        .formatted(version, kind, String.join(", ", measurements));
  }

  private static String read(String component, String observable, String reading) {
    return "{ \"of\": \"%s\", \"observable\": \"%s\", \"reading\": %s }"
        .formatted(component, observable, reading);
  }

  private static List<Problem> problems(String text, Vocabulary vocabulary) {
    return assertThrows(InputException.class, () -> StatedJob.parse(text, vocabulary)).problems();
  }

  @ParameterizedTest
  @CsvSource({
    "heater, washes-cold, stays-cold",
    "air-heater, dries-cold, stays-cold",
    "heater, heats-slowly, heats-slowly",
    "air-heater, dries-slowly, does-not-dry",
    "heater, trips-rcd, trips-rcd",
    "air-heater, trips-rcd, trips-rcd",
    "motor, trips-rcd, trips-rcd",
    "heater, trips-breaker, trips-breaker",
    "air-heater, overheats, too-hot",
    "motor, hums, hums-only",
    "motor, silent, does-not-turn",
    "door-switch, does-not-start, does-not-start",
    "supply-cord, tingle, shock-felt",
    "drain-pump, drains-slowly, drains-slowly",
    "drain-pump, water-outside, leaks",
    "inlet-valve, fills-slowly, fills-slowly",
    "wash-pump, weak-jets, poor-result",
    "level-sensor, overfills, fills-without-end",
  })
  void everyObservableThatMovedBecomesItsSymptom(String kind, String observable, String symptom) {
    for (String answer : List.of("yes", "no")) {
      String reading = '"' + answer + '"';
      JobDocument document =
          StatedJob.parse(file(1, kind, read("a", observable, reading)), WITHOUT);

      List<SymptomReport> reports = document.job().complaint().symptoms();
      assertEquals(1, reports.size());
      assertEquals(symptom, reports.get(0).symptom());
      assertEquals(answer, reports.get(0).answer().id());
      assertEquals(List.of(), document.job().measurements());
      assertEquals(
          List.of(
              "'a.%s' of a file of version 1: taken as the symptom '%s', %s"
                  .formatted(observable, symptom, answer)),
          document.notes());
      assertTrue(WITHOUT.symptom(symptom).isPresent(), symptom);
    }
    List<Problem> told = problems(file(2, kind, read("a", observable, "\"yes\"")), WITHOUT);
    assertEquals(1, told.size(), told.toString());
    assertEquals("/measurements/0/observable", told.get(0).where());
    assertTrue(told.get(0).what().startsWith("'" + observable + "' of a"), told.get(0).what());
    assertTrue(
        told.get(0).what().endsWith(kind + " is a symptom of the whole machine"),
        told.get(0).what());
    assertEquals(
        "write '" + symptom + "' under 'symptoms' instead of this measurement",
        told.get(0).remedy());
  }

  @ParameterizedTest
  @MethodSource("vocabularies")
  void theModulesMayStillKnowTheObservableOrNot(Vocabulary vocabulary) {
    String cold = read("a", "washes-cold", "true");
    Job job =
        StatedJob.parse(file(1, "heater", cold, read("b", "scale", "false")), vocabulary).job();

    assertEquals(List.of(new SymptomReport("stays-cold", Answer.YES)), job.complaint().symptoms());
    assertEquals(1, job.measurements().size());
    assertEquals("scale", job.measurements().get(0).observable());
    assertEquals(
        "/measurements/0/observable", problems(file(2, "heater", cold), vocabulary).get(0).where());
  }

  @Test
  void ofYesAndNoTheYesCountsAndThatIsTold() {
    JobDocument document =
        StatedJob.parse(
            file(
                1,
                "heater",
                read("a", "washes-cold", "\"no\""),
                read("a", "trips-rcd", "[\"no\", \"no\"]"),
                read("b", "washes-cold", "\"yes\""),
                read("b", "trips-rcd", "\"no\"")),
            WITHOUT);

    assertEquals(
        List.of(
            new SymptomReport("stays-cold", Answer.YES), new SymptomReport("trips-rcd", Answer.NO)),
        document.job().complaint().symptoms());
    assertEquals(
        List.of(
            "'a.washes-cold', 'b.washes-cold' of a file of version 1: taken as the symptom"
                + " 'stays-cold', yes; of yes and no, the yes counts",
            "'a.trips-rcd', 'b.trips-rcd' of a file of version 1: taken as the symptom"
                + " 'trips-rcd', no"),
        document.notes());
  }

  @Test
  void severalReadingsOfOneMeasurementCountLikewise() {
    JobDocument document =
        StatedJob.parse(file(1, "heater", read("a", "washes-cold", "[\"no\", \"yes\"]")), WITHOUT);

    assertEquals(Answer.YES, document.job().complaint().symptoms().get(0).answer());
    assertTrue(document.notes().get(0).endsWith("; of yes and no, the yes counts"));
  }

  @Test
  void aNoteNamesThreeReadingsAtMost() {
    JobDocument document =
        StatedJob.parse(
            file(
                1,
                "heater",
                read("a", "washes-cold", "true"),
                read("a", "dries-cold", "true"),
                read("b", "washes-cold", "true"),
                read("b", "dries-cold", "true"),
                read("b", "dries-cold", "true")),
            WITHOUT);

    assertEquals(
        List.of(
            "'a.washes-cold', 'a.dries-cold', 'b.washes-cold' and 1 more of a file of version 1:"
                + " taken as the symptom 'stays-cold', yes"),
        document.notes());
  }

  @ParameterizedTest
  @MethodSource("vocabularies")
  void whatIsNeitherYesNorNoIsRefusedAsEver(Vocabulary vocabulary) {
    List<Problem> problems =
        problems(
            file(
                1,
                "heater",
                read("a", "washes-cold", "\"often\""),
                read("a", "trips-rcd", "3"),
                read("b", "trips-rcd", "[]")),
            vocabulary);

    assertEquals("'often' is neither yes nor no", problems.get(0).what());
    assertEquals("/measurements/0/reading", problems.get(0).where());
    assertEquals("is a number", problems.get(1).what());
    assertEquals("is empty", problems.get(2).what());
    assertEquals(3, problems.size(), problems.toString());
  }

  @Test
  void aWordThatAnotherModuleUsesForItsOwnPartStaysAReading() {
    for (int version : new int[] {1, 2}) {
      JobDocument document =
          StatedJob.parse(file(version, "bilge-pump", read("a", "hums", "true")), WITHOUT);

      assertEquals(1, document.job().measurements().size());
      assertEquals(List.of(), document.job().complaint().symptoms());
      assertEquals(List.of(), document.notes());
    }
  }

  @Test
  void versionOneHasNoneOfTheNewMembers() {
    String text =
        file(1, "heater")
            .replace(
                "\"id\": \"v-1\",",
                """
                "id": "v-1", "market": "EU", "reason": "fault",
                "symptoms": { "nothing-known": 3 }, "displayed": [],
                """);

    List<Problem> problems = problems(text, WITHOUT);

    assertEquals(
        List.of("/symptoms", "/displayed", "/market", "/reason"),
        problems.stream().map(Problem::where).toList());
    for (Problem problem : problems) {
      assertEquals("is not in files of version 1", problem.what());
      assertEquals("write \"format\": \"kelter-job/2\" above", problem.remedy());
    }
  }

  /** The schema of version 1 knows no tax; the reader agrees with it. */
  @Test
  void whatTellsOfTaxIsOfVersionTwo() {
    String prices =
        """
        "prices": { "currency": "EUR", "tax-rate": "21 %", "tax-rate-parts": "9 %",
          "tax-rounding": "per line", "prices-with-tax": true },
        "id": "v-1",""";
    String one = file(1, "heater").replace("\"id\": \"v-1\",", prices);

    assertEquals(
        List.of(
            "/prices/tax-rate",
            "/prices/tax-rate-parts",
            "/prices/tax-rounding",
            "/prices/prices-with-tax"),
        problems(one, WITHOUT).stream().map(Problem::where).toList());
    assertEquals(
        Optional.of("21 %"),
        StatedJob.parse(file(2, "heater").replace("\"id\": \"v-1\",", prices), WITHOUT)
            .job()
            .prices()
            .orElseThrow()
            .tax()
            .rate()
            .map(TaxRate::format));
  }

  @Test
  void versionOneIsReadAsBeforeAndComesBackAsItWas() {
    JobDocument document = StatedJob.parse(Samples.FULL_ONE, Samples.VOCABULARY);
    Job two = StatedJob.parse(Samples.FULL, Samples.VOCABULARY).job();

    assertEquals(new Complaint("it floods", "F1"), document.job().complaint());
    assertEquals(two.measurements(), document.job().measurements());
    Prices prices = document.job().prices().orElseThrow();
    assertEquals(two.prices().orElseThrow().parts(), prices.parts());
    assertEquals(two.prices().orElseThrow().terms(), prices.terms());
    assertEquals(two.prices().orElseThrow().supplies(), prices.supplies());
    assertEquals(two.prices().orElseThrow().labourPerHour(), prices.labourPerHour());
    assertEquals(List.of(), document.notes());
    assertEquals(
        document.content(), StatedJob.parse(document.text(), Samples.VOCABULARY).content());
    assertTrue(document.text().contains("\"kelter-job/1\""));
  }

  /** Where nobody wrote a complaint, somebody was called all the same. */
  @Test
  void anEmptyJobOfVersionOneIsNotARoutineCheck() {
    assertEquals(
        Complaint.Reason.FAULT,
        StatedJob.parse(file(1, "heater"), WITHOUT).job().complaint().reason());
  }
}

package kelter.core.book.learning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SplittableRandom;
import kelter.core.book.BookEntry;
import kelter.core.book.BookedMachine;
import kelter.core.book.ConfirmedCause;
import kelter.core.book.Outcome;
import kelter.core.book.ReadingTaken;
import kelter.core.book.WorkDone;
import kelter.core.book.learned.KindTable;
import kelter.core.book.learned.Learned;
import kelter.core.book.learned.LearnedKind;
import kelter.core.catalogue.Kind;
import kelter.core.catalogue.KindCause;
import kelter.core.catalogue.KindPart;
import kelter.core.catalogue.MainsConnection;
import kelter.core.job.SymptomReport.Answer;
import kelter.core.source.Source;
import org.junit.jupiter.api.Test;

/** What entries teach, and what they do not. */
class BookLearningTest {

  private static final Source INVENTED = Source.fromMemory("an invented kind");
  private static final LocalDate TODAY = LocalDate.of(2026, 6, 1);
  private static final LearningRule ALL = new LearningRule(TODAY, 1);

  /** An invented kind: a pump that blocks in half of its calls, a heater, a belt. */
  private static final Kind KIND =
      new Kind(
          "spinner",
          "spinner",
          List.of(),
          List.of(),
          "",
          8,
          MainsConnection.PLUG,
          List.of(part("pump", "drain-pump"), part("heater", "heater"), part("belt", "belt")),
          List.of(),
          new Kind.NothingWrong(0.1, Map.of()),
          0.1,
          List.of(
              cause("pump", "blocked", 0.5, Map.of("leaks", 0.2, "loud", 0.3)),
              cause("heater", "open", 0.2, Map.of("stays-cold", 0.9, "loud", 0.1)),
              cause("belt", "worn", 0.1, Map.of("loud", 0.6))),
          List.of(),
          List.of("loud"),
          List.of(),
          List.of(),
          INVENTED,
          INVENTED);

  private final List<BookEntry> entries = new ArrayList<>();

  private static KindPart part(String id, String kind) {
    return new KindPart(id, kind, id, Set.of(), Map.of(), Optional.empty(), Optional.empty());
  }

  private static KindCause cause(
      String part, String fault, double share, Map<String, Double> symptoms) {
    return new KindCause(
        part,
        fault,
        part + " " + fault,
        share,
        false,
        KindCause.Mend.RENEW,
        Optional.empty(),
        OptionalDouble.empty(),
        symptoms);
  }

  private static BookEntry entry(String job, LocalDate closed, Outcome outcome, String... causes) {
    List<ConfirmedCause> confirmed = new ArrayList<>();
    for (String cause : causes) {
      String[] words = cause.split("\\.");
      confirmed.add(new ConfirmedCause(words[0], words[0], words[1]));
    }
    return new BookEntry(
        job,
        Optional.empty(),
        closed,
        machine("", OptionalDouble.of(8)),
        Optional.empty(),
        "",
        "",
        Map.of(),
        List.of(),
        outcome,
        confirmed,
        List.of(),
        List.of(),
        Map.of(),
        Optional.empty(),
        Optional.empty());
  }

  private static BookedMachine machine(String model, OptionalDouble age) {
    return new BookedMachine(
        "spinner", "Ostvik", model, "", age, OptionalDouble.empty(), OptionalDouble.empty());
  }

  private static BookEntry with(
      BookEntry entry,
      BookedMachine machine,
      Map<String, Answer> symptoms,
      List<WorkDone> work,
      List<ReadingTaken> readings,
      Map<String, Double> predictions,
      Optional<String> callBackOf) {
    return new BookEntry(
        entry.job(),
        entry.called(),
        entry.closed(),
        machine,
        entry.market(),
        entry.complaint(),
        entry.notes(),
        symptoms,
        entry.displayed(),
        entry.outcome(),
        entry.causes(),
        work,
        readings,
        predictions,
        entry.charged(),
        callBackOf);
  }

  private static BookEntry callBack(BookEntry entry, String of) {
    return with(
        entry,
        entry.machine(),
        entry.symptoms(),
        entry.work(),
        entry.readings(),
        entry.predictions(),
        Optional.of(of));
  }

  private void found(int times, String... causes) {
    for (int i = 0; i < times; i++) {
      entries.add(entry("job-" + entries.size(), TODAY, Outcome.CURED, causes));
    }
  }

  private Learned learned() {
    return BookLearning.of(entries, id -> id.equals("spinner") ? kind() : Optional.empty(), ALL);
  }

  private static Optional<Kind> kind() {
    return Optional.of(KIND);
  }

  private LearnedKind spinner() {
    return learned().kinds().get("spinner");
  }

  private double share(String key) {
    return spinner().shares().get(key).share();
  }

  /**
   * Gelman et al., Bayesian Data Analysis, 3.4: (n + s p) / (N + s), all machines of one age. The
   * mean of such predictions over many s is one of them.
   */
  @Test
  void sharesAreThoseOfTheDirichletPrediction() {
    found(5, "pump.blocked");
    found(20, "heater.open");
    found(5, "belt.worn");
    Learned learned = learned();
    double s = learned.strength();

    assertEquals((5 + s * 0.5) / (30 + s), share("pump.blocked"), 1e-12);
    assertEquals((20 + s * 0.2) / (30 + s), share("heater.open"), 1e-12);
    assertEquals((5 + s * 0.1) / (30 + s), share("belt.worn"), 1e-12);
    assertEquals(s * 0.1 / (30 + s), share(KindTable.NOTHING_WRONG), 1e-12);
    assertEquals(30 / (30 + s), spinner().weight(), 1e-12);
    assertEquals(30, spinner().jobs());
  }

  @Test
  void threeJobsDoNotOverturnATable() {
    found(3, "belt.worn");

    assertTrue(share("belt.worn") > 0.1, "belt " + share("belt.worn"));
    assertTrue(share("belt.worn") < 0.3, "belt " + share("belt.worn"));
    assertTrue(share("pump.blocked") > 0.38, "pump " + share("pump.blocked"));
  }

  /** Of a table that nine of ten times is right, three jobs move a share by less than a point. */
  @Test
  void threeJobsHardlyMoveATable() {
    found(1, "belt.worn");
    found(1, "heater.open");
    found(1, "pump.blocked");

    assertEquals(0.1, share("belt.worn"), 0.01);
    assertEquals(0.5, share("pump.blocked"), 0.01);
    assertTrue(spinner().weight() > 0 && spinner().weight() < 0.01, "" + spinner().weight());
  }

  @Test
  void aCallBackOfTheSameDefectDoesNotCountTwice() {
    entries.add(entry("first", TODAY.minusDays(9), Outcome.CURED, "belt.worn"));
    entries.add(callBack(entry("again", TODAY.minusDays(5), Outcome.CURED, "belt.worn"), "first"));
    entries.add(callBack(entry("third", TODAY, Outcome.CURED, "belt.worn"), "again"));

    assertEquals(1, spinner().jobs());
    assertEquals(1, spinner().shares().get("belt.worn").jobs());
  }

  @Test
  void aCallBackForAnotherCauseCounts() {
    entries.add(entry("first", TODAY.minusDays(9), Outcome.CURED, "belt.worn"));
    entries.add(callBack(entry("again", TODAY, Outcome.CURED, "pump.blocked"), "first"));

    assertEquals(2, spinner().jobs());
    assertEquals(1, spinner().shares().get("pump.blocked").jobs());
  }

  @Test
  void whatACallBackFindsTakesThePlaceOfNotFound() {
    entries.add(entry("first", TODAY.minusDays(9), Outcome.NOT_CURED));
    assertEquals(1, spinner().shares().get(KindTable.SOMETHING_ELSE).jobs());
    entries.add(callBack(entry("again", TODAY, Outcome.CURED, "belt.worn"), "first"));

    assertEquals(1, spinner().jobs());
    assertEquals(0, spinner().shares().get(KindTable.SOMETHING_ELSE).jobs());
    assertEquals(1, spinner().shares().get("belt.worn").jobs());
  }

  @Test
  void aJobThatWasBrokenOffTeachesNoShare() {
    entries.add(entry("one", TODAY, Outcome.STOPPED));
    entries.add(entry("two", TODAY, Outcome.NOT_REPAIRED));
    assertFalse(learned().kinds().containsKey("spinner"));
    entries.add(entry("three", TODAY, Outcome.NOTHING_WRONG));

    assertEquals(1, spinner().shares().get(KindTable.NOTHING_WRONG).jobs());
  }

  @Test
  void twoCausesOfOneJobCountHalfEach() {
    found(4, "pump.blocked", "belt.worn");

    assertEquals(2, spinner().shares().get("pump.blocked").jobs());
    assertEquals(2, spinner().shares().get("belt.worn").jobs());
  }

  @Test
  void aCauseThatTheKindDoesNotNameIsSomethingElseAndTold() {
    found(2, "lid.bent");

    assertEquals(2, spinner().shares().get(KindTable.SOMETHING_ELSE).jobs());
    assertEquals(Map.of("lid.bent", 2), spinner().unnamed());
  }

  /** Two years at .9: a job counts .81, by hand. */
  @Test
  void oldJobsCountForLessAndLaterOnesAreLeftOut() {
    entries.add(entry("old", TODAY.minusDays(730), Outcome.CURED, "belt.worn"));
    entries.add(entry("later", TODAY.plusDays(1), Outcome.CURED, "belt.worn"));
    Learned learned = BookLearning.of(entries, id -> kind(), new LearningRule(TODAY, 0.9));

    assertEquals(1, learned.jobs());
    assertEquals(0.81, learned.kinds().get("spinner").shares().get("belt.worn").jobs(), 2e-4);
  }

  @Test
  void aModelIsToldApartOnceThereAreEnoughJobs() {
    found(60, "pump.blocked");
    assertTrue(spinner().models().isEmpty());
    for (int i = 0; i < 40; i++) {
      BookEntry belt = entry("belt-" + i, TODAY, Outcome.CURED, "belt.worn");
      entries.add(
          with(
              belt,
              machine("B 2", OptionalDouble.of(8)),
              Map.of(),
              List.of(),
              List.of(),
              Map.of(),
              Optional.empty()));
    }
    Kind usual = spinner().in(KIND, "", OptionalDouble.empty());
    Kind ofModel = spinner().in(KIND, "ostvik b2", OptionalDouble.empty());

    assertEquals(Set.of("ostvik b2"), spinner().models().keySet());
    assertTrue(
        ofModel.causes().get(2).share() > 1.5 * usual.causes().get(2).share(),
        ofModel.causes() + " against " + usual.causes());
  }

  @Test
  void aKindKeepsTheSumOfItsSharesAndTellsItsBook() {
    found(25, "heater.open");
    Kind learned = spinner().in(KIND, "", OptionalDouble.of(3));
    double sum = learned.nothingWrong().share() + learned.somethingElse();
    for (KindCause each : learned.causes()) {
      sum += each.share();
    }

    assertEquals(1, sum, 1e-12);
    assertTrue(
        learned.sharesFrom().document().contains("25 jobs"), learned.sharesFrom().document());
  }

  /** Heaters are loud three times to one, belts 1.5 to one; the table has 1/9 and 1.5 to one. */
  @Test
  void chancesAreLearnedWhereACauseStandsOut() {
    answers("heater.open", "loud", 150, 50);
    answers("belt.worn", "loud", 120, 80);
    answers("pump.blocked", "loud", 60, 140);
    double heater = spinner().chances().get("heater.open").get("loud").chance();
    double belt = spinner().chances().get("belt.worn").get("loud").chance();
    double ratio = heater / (1 - heater) / (belt / (1 - belt));

    assertTrue(heater > 0.3, "heater " + heater);
    assertTrue(ratio > 1 && ratio < 2, "heater to belt " + ratio);
  }

  /** Owners tell mostly what is there: three times the odds for every cause alike. */
  @Test
  void whatIsToldTooOftenOfAllCausesIsNotTakenForTheirs() {
    answers("heater.open", "loud", 100, 300);
    answers("belt.worn", "loud", 360, 80);
    answers("pump.blocked", "loud", 225, 175);

    assertEquals(0.1, spinner().chances().get("heater.open").get("loud").chance(), 0.02);
    assertEquals(0.6, spinner().chances().get("belt.worn").get("loud").chance(), 0.04);
    assertEquals(0.3, spinner().chances().get("pump.blocked").get("loud").chance(), 0.03);
  }

  private void answers(String cause, String symptom, int yes, int no) {
    for (int i = 0; i < yes + no; i++) {
      BookEntry plain = entry("job-" + entries.size(), TODAY, Outcome.CURED, cause);
      entries.add(
          with(
              plain,
              plain.machine(),
              Map.of(symptom, i < yes ? Answer.YES : Answer.NO),
              List.of(),
              List.of(),
              Map.of(),
              Optional.empty()));
    }
  }

  /** Lives are drawn with shape 3 and scale 12; machines of other causes are as old as they are. */
  @Test
  void aLifeIsRecoveredWithinItsInterval() {
    SplittableRandom random = new SplittableRandom(8);
    for (int i = 0; i < 600; i++) {
      double life = 12 * Math.pow(-Math.log(random.nextDouble()), 1.0 / 3);
      double seen = 3 + 14 * random.nextDouble();
      BookEntry plain =
          entry("job-" + i, TODAY, Outcome.CURED, life <= seen ? "belt.worn" : "pump.blocked");
      entries.add(
          with(
              plain,
              machine("", OptionalDouble.of(Math.min(life, seen))),
              Map.of(),
              List.of(),
              List.of(),
              Map.of(),
              Optional.empty()));
    }
    var fitted = learned().lives().get("spinner.belt").weibull().orElseThrow();

    assertTrue(fitted.shapeLow() < 3 && fitted.shapeHigh() > 3, fitted.toString());
    assertTrue(fitted.scaleLow() < 12 && fitted.scaleHigh() > 12, fitted.toString());
    assertTrue(fitted.shape().isPresent());
  }

  @Test
  void fourFailuresTellAnIntervalAlone() {
    for (int i = 0; i < 20; i++) {
      BookEntry plain =
          entry("job-" + i, TODAY, Outcome.CURED, i % 5 == 0 ? "belt.worn" : "pump.blocked");
      entries.add(
          with(
              plain,
              machine("", OptionalDouble.of(2 + i * 0.4)),
              Map.of(),
              List.of(),
              List.of(),
              Map.of(),
              Optional.empty()));
    }
    var life = learned().lives().get("spinner.belt");

    assertEquals(4, life.failures());
    assertEquals(16, life.lasted());
    assertTrue(life.weibull().orElseThrow().shape().isEmpty());
    assertTrue(life.weibull().orElseThrow().scaleHigh() > life.weibull().get().scaleLow());
  }

  /** A belt that was renewed two years (731 days) ago is two years old, in a machine of nine. */
  @Test
  void aPartThatWasRenewedIsAsOldAsThatWork() {
    BookedMachine seven =
        new BookedMachine(
            "spinner",
            "Ostvik",
            "B",
            "S-1",
            OptionalDouble.of(7),
            OptionalDouble.empty(),
            OptionalDouble.empty());
    BookedMachine nine =
        new BookedMachine(
            "spinner",
            "Ostvik",
            "B",
            "S-1",
            OptionalDouble.of(9),
            OptionalDouble.empty(),
            OptionalDouble.empty());
    List<WorkDone> renewed =
        List.of(
            new WorkDone(
                "belt", "renew", OptionalDouble.empty(), Optional.empty(), Optional.of(true)));
    BookEntry first = entry("first", TODAY.minusDays(731), Outcome.CURED, "belt.worn");
    BookEntry second = entry("second", TODAY, Outcome.CURED, "belt.worn");
    entries.add(with(first, seven, Map.of(), renewed, List.of(), Map.of(), Optional.empty()));
    entries.add(with(second, nine, Map.of(), List.of(), List.of(), Map.of(), Optional.empty()));
    var life = learned().lives().get("spinner.belt");

    assertEquals(2, life.failures());
    assertEquals(0, life.lasted());
    assertEquals(2, life.median().orElseThrow());
  }

  /** The belt of one machine is seen at five, seven and nine years: one life, which lasts. */
  @Test
  void aPartThatGoesOnCountsOnce() {
    for (int age = 5; age <= 9; age += 2) {
      BookedMachine machine =
          new BookedMachine(
              "spinner",
              "Ostvik",
              "B",
              "S-1",
              OptionalDouble.of(age),
              OptionalDouble.empty(),
              OptionalDouble.empty());
      BookEntry plain =
          entry("job-" + age, TODAY.minusDays(9 - age), Outcome.CURED, "pump.blocked");
      entries.add(with(plain, machine, Map.of(), List.of(), List.of(), Map.of(), Optional.empty()));
    }
    found(1, "belt.worn");
    var belt = learned().lives().get("spinner.belt");
    var pump = learned().lives().get("spinner.pump");

    assertEquals(1, belt.failures());
    assertEquals(1, belt.lasted());
    assertEquals(3, pump.failures());
    assertEquals(1, pump.lasted());
  }

  @Test
  void ratesTimesBlundersAndCalibrationAreLearned() {
    for (int i = 0; i < 200; i++) {
      BookEntry plain = entry("job-" + i, TODAY.minusDays(400), Outcome.CURED, "belt.worn");
      entries.add(
          with(
              plain,
              plain.machine(),
              Map.of(),
              List.of(
                  new WorkDone(
                      "belt",
                      "renew",
                      OptionalDouble.of(20),
                      Optional.empty(),
                      Optional.of(i % 10 != 0))),
              List.of(new ReadingTaken("belt", "wear", "gauge", OptionalDouble.of(4), i % 20 == 0)),
              Map.of("belt.worn", 0.8, "pump.blocked", 0.2),
              Optional.empty()));
    }
    entries.add(
        callBack(entry("again", TODAY.minusDays(380), Outcome.CURED, "belt.worn"), "job-7"));
    Learned learned = learned();

    assertEquals(0.9, learned.cures().get("belt.renew").rate(), 0.01);
    assertEquals(20, learned.work().get("belt.renew").median(), 0.01);
    assertEquals(4, learned.readings().get("belt.wear").median(), 0.01);
    assertTrue(learned.blunders().get("gauge").low() < 0.05);
    assertTrue(learned.blunders().get("gauge").high() > 0.045);
    assertTrue(learned.callBacks().get("spinner").rate() < 0.02);
    assertTrue(learned.callBacks().get("spinner").rate() > 0);
    var calibration = learned.calibration().orElseThrow();
    assertEquals(200, calibration.jobs());
    assertEquals(-Math.log(0.8), calibration.logLoss(), 1e-12);
    assertEquals(0.04, calibration.brier(), 1e-12);
    assertEquals(0.2, calibration.expectedError(), 1e-12);
  }
}

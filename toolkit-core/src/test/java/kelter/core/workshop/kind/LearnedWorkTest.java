package kelter.core.workshop.kind;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.book.learned.Learned;
import kelter.core.book.learned.LearnedRate;
import kelter.core.book.learned.LearnedTime;
import kelter.core.contract.SampleModule;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Knowledge;
import kelter.core.diagnosis.Remedy;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Nameplate;
import kelter.core.source.Source;
import org.junit.jupiter.api.Test;

/** Times and cures of a book in the place of those of a module, by hand. */
class LearnedWorkTest {

  /** A bell whose component has another id than its kind. */
  private static final Appliance BELL =
      new Appliance(
          "doorbell",
          "",
          "",
          "",
          Optional.empty(),
          Nameplate.UNREADABLE,
          List.of(
              new Component(
                  "buzzer",
                  "chime",
                  Nameplate.UNREADABLE,
                  Map.of(),
                  Map.of(),
                  Source.commonPractice("a test"))));

  private static final Knowledge KNOWN =
      Knowledge.of(new SampleModule().parts().all().get(0).faultModels(BELL));

  private static Learned learned(
      Map<String, LearnedTime> work,
      Map<String, LearnedTime> readings,
      Map<String, LearnedRate> cures,
      Map<String, LearnedRate> callBacks) {
    return new Learned(
        LocalDate.of(2026, 1, 1),
        80,
        0.9,
        300,
        30,
        Map.of(),
        work,
        readings,
        cures,
        callBacks,
        Map.of(),
        Map.of(),
        Optional.empty());
  }

  private static Remedy remedy(Knowledge knowledge) {
    return knowledge.models().get(0).faults().get(0).remedies().get(0);
  }

  /**
   * The module tells 10 min and 0.9 of the renewal. With 40 min that count half, it takes sqrt(10 *
   * 40) = 20; with 0.8 that count half and of which a tenth comes back, it cures 0.45 + 0.5 * 0.72
   * = 0.81.
   */
  @Test
  void timesAreJoinedByTheirLogarithmsAndCuresAsTheyAre() {
    LearnedWork work =
        new LearnedWork(
            learned(
                Map.of("chime.renew", new LearnedTime(12, 0.5, 35, 40, 80)),
                Map.of(),
                Map.of("chime.renew", new LearnedRate(10, 0.5, 0.8, 0.6, 0.9)),
                Map.of("doorbell", new LearnedRate(50, 0.8, 0.1, 0.05, 0.2))),
            BELL);

    Remedy now = remedy(work.in(KNOWN));

    assertEquals(10, remedy(KNOWN).minutes());
    assertEquals(20, now.minutes(), 1e-12);
    assertEquals(0.81, now.probabilityOfCure(), 1e-12);
    LearnedWork.Moved moved = work.moved().get(0);
    assertEquals("buzzer.renew", moved.what());
    assertEquals(12, moved.times());
    assertEquals(10, moved.cases());
  }

  /** Of 10 and 35 min, half each, the root is 18.7 min; a quotation has no hundredths of them. */
  @Test
  void workIsToldInWholeMinutes() {
    LearnedWork work =
        new LearnedWork(
            learned(
                Map.of("chime.renew", new LearnedTime(12, 0.5, 30, 35, 80)),
                Map.of(),
                Map.of(),
                Map.of()),
            BELL);

    assertEquals(19, remedy(work.in(KNOWN)).minutes());
  }

  /** A minute by the module, 16 by the book, that count a quarter: 16 to the power of 1/4 is 2. */
  @Test
  void aReadingTakesTheTimeThatItTook() {
    LearnedWork work =
        new LearnedWork(
            learned(
                Map.of(),
                Map.of("chime.resistance", new LearnedTime(3, 0.25, 14, 16, 30)),
                Map.of(),
                Map.of()),
            BELL);

    FaultModel now = work.in(KNOWN).models().get(0);

    assertEquals(2, now.questions().get(0).observable().procedure().minutes(), 1e-12);
    assertEquals(KNOWN.models().get(0).questions().get(0).key(), now.questions().get(0).key());
    assertEquals(0.9, remedy(work.in(KNOWN)).probabilityOfCure());
  }

  @Test
  void whatTheBookDoesNotKnowStays() {
    LearnedWork work = new LearnedWork(learned(Map.of(), Map.of(), Map.of(), Map.of()), BELL);

    assertEquals(remedy(KNOWN), remedy(work.in(KNOWN)));
    assertEquals(List.of(), work.moved());
  }
}

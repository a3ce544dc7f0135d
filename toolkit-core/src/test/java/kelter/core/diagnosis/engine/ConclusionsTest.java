package kelter.core.diagnosis.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import kelter.core.diagnosis.Conclusion.Reason;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.FaultHistory;
import kelter.core.diagnosis.likelihood.LinearModel;
import kelter.core.job.Conditions;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.vocabulary.Observable;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

/** When a case is decided, and what is said when it is not. */
class ConclusionsTest {

  private static final List<Observable> OBSERVABLES = observables(3);

  private static List<Observable> observables(int count) {
    List<Observable> observables = new ArrayList<>();
    for (int k = 0; k < count; k++) {
      observables.add(
          Observable.named("reading-" + k, "reading")
              .quantity(QuantityKind.RESISTANCE, 0, 100)
              .by(LinearModel.PROCEDURE));
    }
    return observables;
  }

  /** Both faults move the first reading alike; only the second tells them apart. */
  private static final LinearModel ALIKE =
      new LinearModel(
          OBSERVABLES,
          new double[] {50, 50, 50},
          new double[][] {{30, 0, 0}, {30, 20, 0}},
          new double[] {1, 0.5, 1},
          List.of(LinearModel.fault("one", 0.1), LinearModel.fault("two", 0.1)));

  private static Diagnosis diagnose(LinearModel model, double u, double... y) {
    double[] error = new double[y.length];
    java.util.Arrays.fill(error, u);
    Job job = LinearModel.job("it is cold", OBSERVABLES.subList(0, y.length), y, error);
    return new DiagnosisEngine(EngineSettings.USUAL).diagnose(job, List.of(model));
  }

  private static Reason reason(Diagnosis diagnosis) {
    return diagnosis.basis().conclusion().reason();
  }

  @Test
  void causesThatShowAlikeAreNotSeparable() {
    Diagnosis diagnosis = diagnose(ALIKE, 0.3, 68);

    assertEquals(Reason.NOT_SEPARABLE, reason(diagnosis));
    assertEquals(
        List.of("part.one", "part.two"),
        diagnosis.basis().conclusion().about().stream().sorted().toList());
    assertTrue(diagnosis.basis().conclusion().action().contains("part reading 1"));
    assertEquals(Reason.DECIDED, reason(diagnose(ALIKE, 0.3, 68, 62)));
  }

  @Test
  void readingsThatNothingExplainsAreToBeTakenAgain() {
    Diagnosis diagnosis = diagnose(ALIKE, 0.1, 68, 5, 95);

    assertEquals(Reason.NO_CAUSE_FITS, reason(diagnosis));
    assertTrue(diagnosis.basis().conclusion().action().contains("take again"));
    assertTrue(diagnosis.ranking().get(0).unexplained());
  }

  /** The second reading would tell (12 apart, spread 0.5) but its instrument is off by 12. */
  @Test
  void anInstrumentThatIsTooCoarseIsNamed() {
    Job job =
        LinearModel.job(
            "it is cold", OBSERVABLES.subList(0, 2), new double[] {68, 56}, new double[] {0.3, 12});
    Diagnosis diagnosis = new DiagnosisEngine(EngineSettings.USUAL).diagnose(job, List.of(ALIKE));

    assertEquals(Reason.INSTRUMENT_TOO_COARSE, reason(diagnosis));
    assertEquals(List.of("part.reading-1"), diagnosis.basis().conclusion().about());
  }

  @Test
  void whatWasNotMeasuredIsSaid() {
    Diagnosis diagnosis = diagnose(ALIKE, 0.3);

    assertEquals(Reason.NOT_MEASURED, reason(diagnosis));
    assertTrue(diagnosis.basis().conclusion().about().contains("part.reading-0"));
  }

  /** A machine that nobody complains of is likely sound; unread, that is no finding. */
  @Test
  void whatNobodyMeasuredIsNeverDecided() {
    Diagnosis diagnosis =
        new DiagnosisEngine(EngineSettings.USUAL)
            .diagnose(LinearModel.job("", List.of()), List.of(ALIKE));

    assertTrue(diagnosis.healthy() > 0.8);
    assertEquals(Reason.NOT_MEASURED, reason(diagnosis));
    assertFalse(diagnosis.basis().enough());
  }

  @Test
  void aBlunderAmongGoodReadingsIsNamed() {
    LinearModel many =
        new LinearModel(
            observables(6),
            new double[] {50, 50, 50, 50, 50, 50},
            new double[][] {{30, 25, -20, 30, 20, 25}},
            new double[] {1, 1, 1, 1, 1, 1},
            List.of(LinearModel.fault("one", 0.1)));
    double s = 0.6;
    double[] y = {68, 65, 38, 20, 62, 65};
    Job job = LinearModel.job("it is cold", many.observables(), y, new double[] {1, 1, 1, 1, 1, 1});
    Diagnosis diagnosis = new DiagnosisEngine(EngineSettings.USUAL).diagnose(job, List.of(many));

    assertEquals("one", diagnosis.ranking().get(0).faults().get(0).fault().id());
    assertEquals(s, diagnosis.faults().get(0).severity().mean(), 0.05);
    assertEquals(1, diagnosis.basis().suspects().size());
    assertEquals("reading-3", diagnosis.basis().suspects().get(0).observable());
  }

  /** Whatever is read, there is no figure that is none, and no confident fault that fits badly. */
  @RepeatedTest(200)
  void absurdReadingsNeverMakeItSure(RepetitionInfo number) {
    Random random = new Random(number.getCurrentRepetition());
    List<Measurement> measurements = new ArrayList<>();
    for (int k = 0; k < 3; k++) {
      if (random.nextInt(4) > 0) {
        measurements.add(
            new Measurement(
                "part",
                "reading-" + k,
                List.of(absurd(random)),
                Conditions.NONE,
                Optional.empty(),
                ""));
      }
    }

    Diagnosis diagnosis =
        new DiagnosisEngine(EngineSettings.USUAL)
            .diagnose(LinearModel.job("it is cold", measurements), List.of(ALIKE));

    double sum = 0;
    for (Diagnosis.RankedState state : diagnosis.ranking()) {
      assertTrue(state.probability() >= 0 && state.probability() <= 1);
      sum += state.probability();
    }
    assertTrue(sum <= 1 + 1e-9 && sum > 0.999, "" + sum);
    assertTrue(diagnosis.healthy() >= 0 && diagnosis.healthy() <= 1);
    for (Diagnosis.FaultProbability fault : diagnosis.faults()) {
      assertTrue(fault.severity().mean() >= 0 && fault.severity().mean() <= 1);
      assertFalse(
          fault.probability() > 0.9
              && diagnosis.unexplained().misfit() < 1e-9
              && diagnosis.basis().suspects().isEmpty(),
          diagnosis.toString());
    }
    for (Diagnosis.NextMeasurement next : diagnosis.next()) {
      assertTrue(next.bits() >= 0 && next.minutes() > 0);
      assertTrue(Double.isNaN(next.worth()) || next.worth() >= 0);
    }
  }

  private static Reading absurd(Random random) {
    return switch (random.nextInt(5)) {
      case 0 -> new Reading.OverRange();
      case 1 -> new Reading.Value(ohm(1e9 * random.nextDouble()), 0.1);
      case 2 -> new Reading.Value(ohm(-1e3 * random.nextDouble()), 0.1);
      case 3 -> new Reading.Value(ohm(0), 0);
      default -> new Reading.Value(ohm(100 * random.nextDouble()), 0.01);
    };
  }

  private static Quantity ohm(double value) {
    return Quantity.of(value, "Ohm", QuantityKind.RESISTANCE);
  }

  /** The result does not depend on whether, and on how many cores, models are weighed at once. */
  @Test
  void severalThreadsGiveTheSameResult() {
    Job job =
        LinearModel.job(
            "it is cold", OBSERVABLES, new double[] {66, 60, 50}, new double[] {1, 1, 1});
    DiagnosisEngine alone = new DiagnosisEngine(EngineSettings.USUAL);
    DiagnosisEngine together = new DiagnosisEngine(EngineSettings.USUAL, FaultHistory.NONE, true);

    String expected = alone.diagnose(job, List.of(ALIKE)).toString();
    List<String> all =
        IntStream.range(0, 8)
            .parallel()
            .mapToObj(i -> together.diagnose(job, List.of(ALIKE)).toString())
            .distinct()
            .toList();

    assertEquals(List.of(expected), all);
  }

  /** What a reading is worth is never negative, and its best use is less than what is at stake. */
  @Test
  void enoughIsSaidWhenNothingWouldChange() {
    Diagnosis open = diagnose(ALIKE, 0.3, 68);
    Diagnosis settled = diagnose(ALIKE, 0.3, 68, 62, 50);

    assertTrue(settled.basis().enough());
    assertTrue(open.next().get(0).worth() >= 0);
  }
}

package kelter.core.diagnosis.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Hand-made trials; what is expected is counted by hand. */
class TallyTest {

  private static Trial trial(
      String truth, String said, int place, double confidence, boolean single, int faultPlace) {
    return new Trial(
        truth,
        truth.equals(StateName.SOUND) ? 0 : 1,
        single,
        said,
        place,
        confidence,
        place != 1,
        faultPlace,
        new double[] {confidence},
        new boolean[] {place == 1});
  }

  private static final List<Trial> TRIALS =
      List.of(
          trial("a", "a", 1, 0.95, true, 1),
          trial("a", "b", 2, 0.60, true, 2),
          trial("a", "b", 4, 0.95, false, 4),
          trial(StateName.SOUND, StateName.SOUND, 1, 0.50, false, 0));

  private static final SimulationReport REPORT =
      Tally.report(List.of("a"), 3, TRIALS.subList(0, 1), TRIALS, List.of());

  @Test
  void rightAnswersAreCounted() {
    assertEquals(4, REPORT.measured().all().jobs());
    assertEquals(0.5, REPORT.measured().all().first());
    assertEquals(0.75, REPORT.measured().all().amongThree());
    assertEquals(1.0 / 3, REPORT.measured().all().faultFirst());
    assertEquals(2.0 / 3, REPORT.measured().all().faultAmongThree());
    assertEquals(2, REPORT.measured().clearSingles().jobs());
    assertEquals(0.5, REPORT.measured().clearSingles().first());
    assertEquals(1, REPORT.measured().clearSingles().amongThree());
    // (0.05^2 + 0.6^2 + 0.95^2 + 0.5^2) / 4
    assertEquals(0.37875, REPORT.measured().all().brier(), 1e-15);
  }

  @Test
  void whatWasSaidBeforeAnyReadingIsCountedApart() {
    assertEquals(List.of("a"), REPORT.asked());
    assertEquals(1, REPORT.unmeasured().all().jobs());
    assertEquals(1, REPORT.unmeasured().all().first());
    // 0.05^2
    assertEquals(0.0025, REPORT.unmeasured().all().brier(), 1e-15);
    assertEquals(4, REPORT.measured().states().cases());
  }

  @Test
  void sureAndWrongIsCounted() {
    assertEquals(2, REPORT.measured().sureness().sure());
    assertEquals(1, REPORT.measured().sureness().wrong());
    assertEquals(1, REPORT.measured().sureness().absentFault());
    assertEquals(0.1, REPORT.measured().sureness().wrongExpected(), 1e-15);
  }

  @Test
  void confusedStatesAreListed() {
    assertEquals(List.of(new SimulationReport.Confusion("a", "b", 2, 3)), REPORT.confusions());
  }

  @Test
  void nothingCountedIsNotANumber() {
    SimulationReport none = Tally.report(List.of(), 3, TRIALS, TRIALS.subList(3, 4), List.of());

    assertEquals(0, none.measured().clearSingles().jobs());
    assertTrue(Double.isNaN(none.measured().clearSingles().first()));
    assertTrue(Double.isNaN(none.measured().all().faultFirst()));
  }

  @Test
  void walksAreHeldAgainstEachOtherWhereAllArrived() {
    Walk quick = new Walk(true, true, 1, 5);
    Walk slow = new Walk(true, false, 3, 15);
    Walk never = new Walk(false, false, 4, 20);
    List<SimulationReport.Walks> walks =
        Tally.report(
                List.of(),
                4,
                TRIALS,
                TRIALS,
                List.of(List.of(quick, slow, slow), List.of(quick, never, never)))
            .walks();

    assertEquals(
        new SimulationReport.Walks(MeasuringOrder.LED, 2, 2, 2, 1, 5, 1, 1, 5), walks.get(0));
    assertEquals(
        new SimulationReport.Walks(MeasuringOrder.FIXED, 2, 1, 0, 3.5, 17.5, 1, 3, 15),
        walks.get(1));
  }
}

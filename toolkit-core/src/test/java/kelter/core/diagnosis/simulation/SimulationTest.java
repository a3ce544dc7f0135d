package kelter.core.diagnosis.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.calibration.CalibrationTable;
import kelter.core.diagnosis.simulation.wrong.ScaledForecasts;
import org.junit.jupiter.api.Test;

/**
 * Machines that are drawn by what the engine takes for granted must come out as it says. The
 * tolerance of a bin is four standard deviations of a binomial share.
 */
class SimulationTest {

  private static final int JOBS = 3000;
  private static final FaultModel MODEL = new ThreeFaults();
  private static final World AS_TOLD = World.of(ThreeFaults.SETTINGS);

  private static World world(double blunder) {
    return new World(
        ThreeFaults.SETTINGS.nothingFound(), ThreeFaults.SETTINGS.unexplained(), blunder, 2);
  }

  private static SimulationReport run(FaultModel truth, SimulationPlan plan) {
    return Simulation.run(
        ThreeFaults.appliance(),
        List.of(MODEL),
        List.of(truth),
        ThreeFaults.SETTINGS,
        plan,
        done -> {});
  }

  private static double worst(CalibrationTable table) {
    return table.bins().stream()
        .filter(bin -> bin.cases() > 0)
        .mapToDouble(bin -> bin.gap() / Math.sqrt(bin.said() * (1 - bin.said()) / bin.cases()))
        .max()
        .orElseThrow();
  }

  @Test
  void theSameBytesWhateverTheNumberOfThreads() {
    SimulationReport one = run(MODEL, new SimulationPlan(200, 20, 7, 1, AS_TOLD));
    SimulationReport two = run(MODEL, new SimulationPlan(200, 20, 7, 2, AS_TOLD));
    SimulationReport other = run(MODEL, new SimulationPlan(200, 20, 8, 2, AS_TOLD));

    assertEquals(one.toString(), two.toString());
    assertNotEquals(one.toString(), other.toString());
  }

  @Test
  void aPerfectModelIsRightAsOftenAsItSays() {
    SimulationReport report = run(MODEL, new SimulationPlan(JOBS, 0, 1, 2, AS_TOLD));

    assertEquals(JOBS, report.states().cases());
    assertEquals(JOBS * ThreeFaults.PRIORS.length, report.faults().cases());
    assertTrue(worst(report.states()) < 4, report.states().toString());
    assertTrue(worst(report.faults()) < 4, report.faults().toString());
    assertTrue(report.all().first() > 0.6 && report.all().amongThree() > report.all().first());
    assertTrue(report.clearSingles().first() > report.all().first());
  }

  @Test
  void readingsThatAreOftenWrongShowAsOverconfidence() {
    SimulationReport report = run(MODEL, new SimulationPlan(JOBS, 0, 1, 2, world(0.3)));

    assertTrue(report.states().expectedError() > 0.1, report.states().toString());
    assertTrue(report.sureness().wrong() > 2 * report.sureness().wrongExpected());
  }

  @Test
  void aModelThatIsFarOffShowsAsOverconfidence() {
    SimulationReport right = run(MODEL, new SimulationPlan(JOBS, 0, 1, 2, AS_TOLD));
    SimulationReport off =
        run(new ScaledForecasts(MODEL, 1.5), new SimulationPlan(JOBS, 0, 1, 2, AS_TOLD));

    assertTrue(off.all().first() < right.all().first() - 0.1);
    assertTrue(off.sureness().absentFault() > 3 * right.sureness().absentFault());
  }

  @Test
  void leadingIsSoonerThanAFixedOrder() {
    SimulationReport report = run(MODEL, new SimulationPlan(300, 300, 1, 2, AS_TOLD));

    assertEquals(
        List.of(MeasuringOrder.values()),
        report.walks().stream().map(SimulationReport.Walks::order).toList());
    SimulationReport.Walks led = report.walks().get(0);
    SimulationReport.Walks fixed = report.walks().get(1);
    assertEquals(300, led.jobs());
    assertEquals(led.reachedByAll(), fixed.reachedByAll());
    assertTrue(led.minutesIfReached() < fixed.minutesIfReached(), report.walks().toString());
    assertTrue(led.right() <= led.reached() && led.reached() <= led.jobs());
    // All four take 3 + 2 + 4 + 5 min.
    assertTrue(fixed.minutes() > 3 && fixed.minutes() <= 14);
  }

  @Test
  void progressIsToldForEveryJob() {
    AtomicInteger calls = new AtomicInteger();
    Simulation.run(
        ThreeFaults.appliance(),
        List.of(MODEL),
        List.of(MODEL),
        ThreeFaults.SETTINGS,
        new SimulationPlan(20, 0, 1, 2, AS_TOLD),
        done -> calls.incrementAndGet());

    assertEquals(20, calls.get());
  }

  @Test
  void whatCannotBeTriedIsRefusedWithWhatIsAllowed() {
    String jobs =
        assertThrows(IllegalArgumentException.class, () -> new SimulationPlan(0, 0, 1, 1, AS_TOLD))
            .getMessage();
    assertEquals("0 jobs; 1 to 1000000 are allowed", jobs);
    assertThrows(IllegalArgumentException.class, () -> new SimulationPlan(10, 11, 1, 1, AS_TOLD));
    assertThrows(IllegalArgumentException.class, () -> new SimulationPlan(10, 0, 1, 0, AS_TOLD));
    assertThrows(IllegalArgumentException.class, () -> new World(0.1, 0.1, Double.NaN, 1));
    assertThrows(IllegalArgumentException.class, () -> new World(0.1, 0.1, 0.1, 0));
    assertThrows(
        IllegalArgumentException.class,
        () ->
            Simulation.run(
                ThreeFaults.appliance(),
                List.of(MODEL),
                List.of(),
                ThreeFaults.SETTINGS,
                new SimulationPlan(1, 0, 1, 1, AS_TOLD),
                done -> {}));
    assertThrows(
        IllegalArgumentException.class,
        () ->
            Simulation.run(
                ThreeFaults.appliance(),
                List.of(),
                List.of(),
                ThreeFaults.SETTINGS,
                new SimulationPlan(1, 0, 1, 1, AS_TOLD),
                done -> {}));
  }
}

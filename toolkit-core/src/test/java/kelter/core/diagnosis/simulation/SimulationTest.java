package kelter.core.diagnosis.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Knowledge;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Machines that are drawn by what the engine takes for granted must come out as it says. The
 * tolerance of a bin is four standard deviations of a binomial share.
 */
class SimulationTest {

  private static final int JOBS = 2000;
  private static final int FEWER = 500;
  private static final FaultModel MODEL = new ThreeFaults();
  private static final World AS_TOLD = World.of(ThreeFaults.SETTINGS);

  private static World world(double blunder) {
    return new World(
        ThreeFaults.SETTINGS.nothingFound(),
        ThreeFaults.SETTINGS.unexplained(),
        ThreeFaults.SETTINGS.coincidence(),
        blunder,
        2);
  }

  private static SimulationReport perfect;

  /** Not while the class is made ready: its threads would wait for that. */
  @BeforeAll
  static void runOnce() {
    perfect = run(MODEL, new SimulationPlan(JOBS, 0, 0, 1, 2, AS_TOLD));
  }

  private static SimulationReport run(FaultModel truth, SimulationPlan plan) {
    return Simulation.run(
        ThreeFaults.appliance(),
        Knowledge.of(List.of(MODEL)),
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
    SimulationReport one = run(MODEL, new SimulationPlan(100, 10, 0, 7, 1, AS_TOLD));
    SimulationReport two = run(MODEL, new SimulationPlan(100, 10, 0, 7, 2, AS_TOLD));
    SimulationReport other = run(MODEL, new SimulationPlan(100, 10, 0, 8, 2, AS_TOLD));

    assertEquals(one.toString(), two.toString());
    assertNotEquals(one.toString(), other.toString());
  }

  @Test
  void aPerfectModelIsRightAsOftenAsItSays() {
    assertEquals(JOBS, perfect.measured().states().cases());
    assertEquals(JOBS * ThreeFaults.PRIORS.length, perfect.measured().faults().cases());
    assertTrue(worst(perfect.measured().states()) < 4, perfect.measured().states().toString());
    assertTrue(worst(perfect.measured().faults()) < 4, perfect.measured().faults().toString());
    assertTrue(
        perfect.measured().all().first() > 0.6
            && perfect.measured().all().amongThree() > perfect.measured().all().first());
    assertTrue(perfect.measured().clearSingles().first() > perfect.measured().all().first());
  }

  @Test
  void readingsThatAreOftenWrongShowAsOverconfidence() {
    SimulationReport report = run(MODEL, new SimulationPlan(FEWER, 0, 0, 1, 2, world(0.3)));

    assertTrue(
        report.measured().states().expectedError() > 0.1, report.measured().states().toString());
    assertTrue(
        report.measured().sureness().wrong() > 2 * report.measured().sureness().wrongExpected());
  }

  @Test
  void aModelThatIsFarOffShowsAsOverconfidence() {
    SimulationReport off =
        run(new ScaledForecasts(MODEL, 1.5), new SimulationPlan(FEWER, 0, 0, 1, 2, AS_TOLD));

    assertTrue(off.measured().all().first() < perfect.measured().all().first() - 0.1);
    assertTrue(
        off.measured().sureness().absentFault() / (double) FEWER
            > 3 * perfect.measured().sureness().absentFault() / (double) JOBS);
  }

  @Test
  void leadingIsSoonerThanAFixedOrder() {
    SimulationReport report = run(MODEL, new SimulationPlan(100, 100, 0, 1, 2, AS_TOLD));

    assertEquals(
        List.of(MeasuringOrder.values()),
        report.walks().stream().map(SimulationReport.Walks::order).toList());
    SimulationReport.Walks led = report.walks().get(0);
    SimulationReport.Walks fixed = report.walks().get(1);
    assertEquals(100, led.jobs());
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
        Knowledge.of(List.of(MODEL)),
        List.of(MODEL),
        ThreeFaults.SETTINGS,
        new SimulationPlan(20, 0, 0, 1, 2, AS_TOLD),
        done -> calls.incrementAndGet());

    assertEquals(20, calls.get());
  }

  @Test
  void whatCannotBeTriedIsRefusedWithWhatIsAllowed() {
    String jobs =
        assertThrows(
                IllegalArgumentException.class, () -> new SimulationPlan(0, 0, 0, 1, 1, AS_TOLD))
            .getMessage();
    assertEquals("0 jobs; 1 to 1000000 are allowed", jobs);
    assertThrows(
        IllegalArgumentException.class, () -> new SimulationPlan(10, 11, 0, 1, 1, AS_TOLD));
    assertThrows(IllegalArgumentException.class, () -> new SimulationPlan(10, 0, 0, 1, 0, AS_TOLD));
    assertThrows(IllegalArgumentException.class, () -> new World(0.1, 0.1, 1, Double.NaN, 1));
    assertThrows(IllegalArgumentException.class, () -> new World(0.1, 0.1, 1, 0.1, 0));
    assertThrows(
        IllegalArgumentException.class,
        () ->
            Simulation.run(
                ThreeFaults.appliance(),
                Knowledge.of(List.of(MODEL)),
                List.of(),
                ThreeFaults.SETTINGS,
                new SimulationPlan(1, 0, 0, 1, 1, AS_TOLD),
                done -> {}));
    assertThrows(
        IllegalArgumentException.class,
        () ->
            Simulation.run(
                ThreeFaults.appliance(),
                Knowledge.of(List.of()),
                List.of(),
                ThreeFaults.SETTINGS,
                new SimulationPlan(1, 0, 0, 1, 1, AS_TOLD),
                done -> {}));
  }
}

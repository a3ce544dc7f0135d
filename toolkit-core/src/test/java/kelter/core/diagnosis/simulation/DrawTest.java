package kelter.core.diagnosis.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import kelter.core.diagnosis.FaultHistory;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.likelihood.Priors;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.core.source64.XoShiRo256PlusPlus;
import org.junit.jupiter.api.Test;

/**
 * What is drawn has the chances that it should have. Expected shares are arithmetic on the priors,
 * means and deviations those of the normal and the rectangular distribution (JCGM 100:2008, 4.3.7);
 * tolerances are four standard deviations of a share or a mean over so many draws.
 */
class DrawTest {

  private static final int DRAWS = 20_000;
  private static final List<FaultModel> MODELS = List.of(new ThreeFaults());

  private static final Priors PRIORS = new Priors(ThreeFaults.appliance(), FaultHistory.NONE);

  private final UniformRandomProvider random = new XoShiRo256PlusPlus(new long[] {11, 22, 33, 44});

  private static void assertShare(double expected, long count, int draws) {
    double tolerance = 4 * Math.sqrt(expected * (1 - expected) / draws);
    assertEquals(expected, count / (double) draws, tolerance);
  }

  private List<Machine> machines(World world) {
    MachineDraw draw = new MachineDraw(MODELS, PRIORS, world);
    List<Machine> machines = new ArrayList<>();
    for (int i = 0; i < DRAWS; i++) {
      machines.add(draw.draw(random));
    }
    return machines;
  }

  private static long with(List<Machine> machines, boolean... faults) {
    return machines.stream()
        .filter(
            machine -> {
              double[] severity = machine.severity().get(0);
              for (int i = 0; i < faults.length; i++) {
                if (severity[i] > 0 != faults[i]) {
                  return false;
                }
              }
              return !machine.isUnexplained();
            })
        .count();
  }

  @Test
  void pairsHaveTheProductOfTheirPriors() {
    List<Machine> machines = machines(new World(0.1, 0, 1, 0, 2));
    // Not all three together: 0.3 * 0.2 * 0.1; nothing: 0.7 * 0.8 * 0.9; the rest are 0.49.
    double faulty = (1 - 0.006 - 0.504) / 0.9;

    assertShare(0.1, with(machines, false, false, false), DRAWS);
    assertShare(0.3 * 0.8 * 0.9 / faulty, with(machines, true, false, false), DRAWS);
    assertShare(0.7 * 0.2 * 0.9 / faulty, with(machines, false, true, false), DRAWS);
    assertShare(0.3 * 0.2 * 0.9 / faulty, with(machines, true, true, false), DRAWS);
    assertEquals(0, with(machines, true, true, true));
  }

  @Test
  void anySetOfFaultsCanBeDrawn() {
    List<Machine> machines = machines(new World(0, 0, 1, 0, 3));

    assertShare(0.006 / (1 - 0.504), with(machines, true, true, true), DRAWS);
  }

  @Test
  void oneFaultAtATimeKeepsItsOdds() {
    List<Machine> machines = machines(new World(0, 0, 1, 0, 1));

    double sum = 0.3 / 0.7 + 0.2 / 0.8 + 0.1 / 0.9;
    assertShare(0.3 / 0.7 / sum, with(machines, true, false, false), DRAWS);
    assertShare(0.1 / 0.9 / sum, with(machines, false, false, true), DRAWS);
  }

  @Test
  void unexplainedMachinesComeAsOftenAsTheWorldSays() {
    List<Machine> machines = machines(new World(0, 0.2, 1, 0, 3));

    long strange = machines.stream().filter(Machine::isUnexplained).count();
    assertShare(0.2 / (0.2 + 0.8 * (1 - 0.504)), strange, DRAWS);
  }

  @Test
  void severitiesAreUniform() {
    double[] severities =
        machines(new World(0, 0, 1, 0, 1)).stream().mapToDouble(Machine::leastSeverity).toArray();
    double sum = 0;
    double squares = 0;
    for (double s : severities) {
      assertTrue(s > 0 && s <= 1);
      sum += s;
      squares += s * s;
    }

    assertEquals(0.5, sum / DRAWS, 4 * Math.sqrt(1.0 / 12 / DRAWS));
    assertEquals(1.0 / 3, squares / DRAWS, 4 * Math.sqrt(4.0 / 45 / DRAWS));
  }

  @Test
  void aMachineThatIsHardlyEverFaultyIsRefused() {
    MachineDraw draw = new MachineDraw(List.of(), PRIORS, new World(0, 0, 1, 0, 2));

    assertThrows(IllegalArgumentException.class, () -> draw.draw(random));
  }

  private List<List<Reading>> readings(double blunder, boolean unexplained) {
    List<Question> questions = MODELS.get(0).questions();
    ReadingDraw draw = new ReadingDraw(questions, MODELS.get(0).forecaster(questions), blunder);
    List<List<Reading>> byQuestion = new ArrayList<>();
    questions.forEach(question -> byQuestion.add(new ArrayList<>()));
    for (int i = 0; i < DRAWS; i++) {
      List<Measurement> all = new ArrayList<>();
      draw.draw(new double[3], unexplained, random, all);
      for (int k = 0; k < all.size(); k++) {
        byQuestion.get(k).add(all.get(k).readings().get(0));
      }
    }
    return byQuestion;
  }

  private static double si(Reading reading) {
    return ((Reading.Value) reading).quantity().si();
  }

  private static boolean isAboveMedian(Reading leak) {
    return leak instanceof Reading.OverRange || si(leak) > 1e5;
  }

  private static long yes(List<Reading> readings) {
    return readings.stream().filter(r -> ((Reading.YesNo) r).yes()).count();
  }

  private static long grade(List<Reading> readings, int rank) {
    return readings.stream().filter(r -> ((Reading.Grade) r).rank() == rank).count();
  }

  private static long overRange(List<Reading> readings) {
    return readings.stream().filter(Reading.OverRange.class::isInstance).count();
  }

  @Test
  void readingsScatterByMachineAndInstrument() {
    List<List<Reading>> all = readings(0, false);
    double sum = 0;
    double squares = 0;
    for (Reading reading : all.get(2)) {
      sum += si(reading) - 10;
      squares += (si(reading) - 10) * (si(reading) - 10);
    }
    // Spread 0.3 A, and an instrument of 2 % of 10 A, which is 0.2 A / sqrt 3.
    double variance = 0.09 + 0.04 / 3;

    assertEquals(0, sum / DRAWS, 4 * Math.sqrt(variance / DRAWS));
    assertEquals(variance, squares / DRAWS, 4 * variance * Math.sqrt(2.0 / DRAWS));
    assertShare(0.1, yes(all.get(1)), DRAWS);
    // The word changes at a third of the scale: (1/3 - 0.15)/0.13 = 1.41026 deviations; the normal
    // table has 0.9207 below 1.41 (Abramowitz and Stegun, table 26.1, from memory).
    assertShare(0.9208, grade(all.get(0), 0), DRAWS);
    long higher = all.get(3).stream().filter(DrawTest::isAboveMedian).count();
    assertShare(0.5, higher, DRAWS);
  }

  @Test
  void aBlunderAndAnUnexplainedMachineReadAnything() {
    for (List<List<Reading>> all : List.of(readings(1, false), readings(0, true))) {
      assertShare(1.0 / 3, grade(all.get(0), 2), DRAWS);
      assertShare(0.5, yes(all.get(1)), DRAWS);
      assertShare(0.25, all.get(2).stream().filter(reading -> si(reading) < 10).count(), DRAWS);
      // Six decades, alike over each; the upper half of the last is beyond the instrument.
      assertShare(Math.log10(2) / 6, overRange(all.get(3)), DRAWS);
    }
  }

  @Test
  void aTenthOfBlundersShowsInTheShares() {
    assertShare(0.9 * 0.1 + 0.1 * 0.5, yes(readings(0.1, false).get(1)), DRAWS);
  }
}

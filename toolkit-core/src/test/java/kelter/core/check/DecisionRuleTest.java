package kelter.core.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import kelter.core.uncertainty.Estimate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Probability of conformity and verdicts against the worked examples of JCGM 106:2012. Inputs and
 * printed results of the examples are from memory; the results were recomputed outside the project.
 */
class DecisionRuleTest {

  private static double probability(double value, double u, Limits limits) {
    return DecisionRule.probabilityOfConformity(new Estimate(value, u), limits);
  }

  /** JCGM 106:2012, clause 7, breakdown voltage of a Zener diode: 0.919, printed as 92 %. */
  @Test
  void breakdownVoltage() {
    assertEquals(0.919, probability(-5.47, 0.05, Limits.atMost(-5.40)), 5e-4);
  }

  /** JCGM 106:2012, clause 7, bursting pressure, at least 490 kPa: 0.989, printed as 99 %. */
  @Test
  void burstingPressure() {
    assertEquals(0.989, probability(509.7, 8.6, Limits.atLeast(490)), 5e-4);
  }

  /** JCGM 106:2012, clause 7, viscosity of oil, 12.5 to 16.3 mm2/s: 0.93 - 0.27 = 0.66. */
  @Test
  void viscosityOfOil() {
    assertEquals(0.66, probability(13.6, 1.8, new Limits(12.5, 16.3)), 5e-3);
  }

  /**
   * JCGM 106:2012, table 1: z standard uncertainties inside one limit, to the printed hundredth.
   */
  @ParameterizedTest
  @CsvSource({"0.80, 0.84", "0.90, 1.28", "0.95, 1.64", "0.99, 2.33", "0.999, 3.09"})
  void distanceFromALimit(double probability, double z) {
    assertTrue(probability(10 - 0.5 * (z - 0.005), 0.5, Limits.atMost(10)) <= probability);
    assertTrue(probability(10 - 0.5 * (z + 0.005), 0.5, Limits.atMost(10)) >= probability);
  }

  /**
   * JCGM 106:2012, clause 8, and ILAC-G8:09/2019, table 1: a guard band of U (k = 2) leaves a risk
   * of at most 2.3 % (0.9772); one of 1.645 u leaves 5 %.
   */
  @Test
  void guardBands() {
    assertEquals(0.9772, probability(10 - 2 * 0.5, 0.5, Limits.atMost(10)), 5e-5);
    assertEquals(0.950, probability(10 - 1.645 * 0.5, 0.5, Limits.atMost(10)), 5e-4);
    assertEquals(
        Verdict.CONFORMS,
        DecisionRule.USUAL.verdict(probability(10 - 1.645 * 0.5, 0.5, Limits.atMost(10))));
  }

  /**
   * JCGM 106:2012, 8.3.3, guarded rejection: a limit of 100 km/h and u of 2 % of the reading;
   * beyond doubt of 99.9 % from 106.6 km/h, rounded up to 107.
   */
  @Test
  void speedLimit() {
    DecisionRule rule = new DecisionRule(0.999);
    assertEquals(
        Verdict.DOES_NOT_CONFORM, rule.verdict(probability(107, 2.14, Limits.atMost(100))));
    assertEquals(Verdict.UNDECIDED, rule.verdict(probability(106, 2.12, Limits.atMost(100))));
  }

  @Test
  void withoutUncertaintyTheEndsCountAsInside() {
    Limits limits = new Limits(1, 2);
    assertEquals(1, probability(1, 0, limits), 0);
    assertEquals(1, probability(2, 0, limits), 0);
    assertEquals(0, probability(Math.nextUp(2.0), 0, limits), 0);
  }

  @ParameterizedTest
  @CsvSource({"NaN, 1", "Infinity, 1", "-Infinity, 1", "1.5, Infinity", "NaN, 0", "Infinity, 0"})
  void whatIsNotFiniteNeverConforms(double value, double u) {
    for (Limits limits :
        new Limits[] {new Limits(1, 2), Limits.atLeast(1), Limits.atMost(2), WITHOUT_LIMIT}) {
      double probability = probability(value, u, limits);
      assertTrue(Double.isNaN(probability));
      assertEquals(Verdict.NOT_MEASURED, DecisionRule.USUAL.verdict(probability));
      Judgement judgement = Judgement.of(new Estimate(value, u), limits, DecisionRule.USUAL, false);
      assertNotEquals(Verdict.CONFORMS, judgement.verdict());
    }
  }

  private static final Limits WITHOUT_LIMIT =
      new Limits(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

  @ParameterizedTest
  @CsvSource({
    "1, CONFORMS",
    "0.95, CONFORMS",
    "0.949, UNDECIDED",
    "0.5, UNDECIDED",
    "0.051, UNDECIDED",
    "0.05, DOES_NOT_CONFORM",
    "0, DOES_NOT_CONFORM"
  })
  void verdictsAtTheUsualLevel(double probability, Verdict verdict) {
    assertEquals(verdict, DecisionRule.USUAL.verdict(probability));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.5, 1, 0, -1, 2, Double.NaN})
  void levelsThatDecideNothingAreRefused(double level) {
    assertThrows(IllegalArgumentException.class, () -> new DecisionRule(level));
  }

  @Test
  void aProbabilityIsOneAndSplitsAtAnyLimit() {
    Random random = new Random(20261125L);
    for (int i = 0; i < 1000; i++) {
      double value = random.nextGaussian() * 10;
      double u = Math.exp(random.nextGaussian() * 5);
      double limit = random.nextGaussian() * 10;
      double below = probability(value, u, Limits.atMost(limit));
      double above = probability(value, u, Limits.atLeast(limit));
      assertTrue(below >= 0 && below <= 1 && above >= 0 && above <= 1);
      assertEquals(1, below + above, 1e-12);
    }
  }

  @ParameterizedTest
  @CsvSource({"2, 1", "NaN, 1", "1, NaN"})
  void limitsOutOfOrderAreRefused(double low, double high) {
    assertThrows(IllegalArgumentException.class, () -> new Limits(low, high));
  }

  @Test
  void limitsDoNotContainWhatIsNotANumber() {
    assertTrue(!WITHOUT_LIMIT.contain(Double.NaN));
  }

  /** Of a reading worth far less than the band is wide nothing can be said, wherever it lies. */
  @ParameterizedTest
  @CsvSource({
    "26, 100, UNDECIDED",
    "29, 100, UNDECIDED",
    "400, 100, DOES_NOT_CONFORM",
    "-400, 100, DOES_NOT_CONFORM",
    "26, 0.1, CONFORMS",
    "30, 0.1, DOES_NOT_CONFORM",
    "28, 0.1, UNDECIDED",
    "NaN, 0.1, NOT_MEASURED",
    "28, 0, CONFORMS",
    "28.001, 0, DOES_NOT_CONFORM"
  })
  void verdictsOnEstimates(double value, double u, Verdict verdict) {
    assertEquals(verdict, DecisionRule.USUAL.verdict(new Estimate(value, u), new Limits(24, 28)));
  }

  /** JCGM 106:2012, table 1: 1 inside a limit is 1.64 standard uncertainties at 95 %: u = 0.61. */
  @Test
  void uncertaintyThatWouldSettle() {
    assertEquals(1 / 1.64, DecisionRule.USUAL.settlingUncertainty(9, Limits.atMost(10)), 5e-3);
    assertEquals(1 / 1.64, DecisionRule.USUAL.settlingUncertainty(11, Limits.atMost(10)), 5e-3);
    assertEquals(0, DecisionRule.USUAL.settlingUncertainty(10, Limits.atMost(10)), 0);
    assertEquals(
        Double.POSITIVE_INFINITY, DecisionRule.USUAL.settlingUncertainty(10, WITHOUT_LIMIT), 0);
  }

  @Test
  void theUncertaintyThatWouldSettleIsTheGreatest() {
    Random random = new Random(20261125L);
    Limits limits = new Limits(24, 28);
    for (int i = 0; i < 300; i++) {
      double value = 20 + 12 * random.nextDouble();
      double u = DecisionRule.USUAL.settlingUncertainty(value, limits);
      Estimate enough = new Estimate(value, u * 0.999);
      Estimate tooMuch = new Estimate(value, u * 1.001);
      assertNotEquals(Verdict.UNDECIDED, DecisionRule.USUAL.verdict(enough, limits), "" + value);
      assertEquals(Verdict.UNDECIDED, DecisionRule.USUAL.verdict(tooMuch, limits), "" + value);
    }
  }
}

package kelter.core.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.core.uncertainty.Estimate;
import org.junit.jupiter.api.Test;

/** The risks of a wrong verdict, by JCGM 106:2012, 9.3 and 9.5. */
class RiskOfFindingTest {

  private static Optional<RiskOfFinding> risk(double value, double u, Limits limits) {
    return RiskOfFinding.of(
        new Finding(
            "id",
            "part",
            "observable",
            "title",
            "",
            QuantityKind.RESISTANCE,
            QuantityKind.RESISTANCE.unit(),
            Judgement.of(new Estimate(value, u), limits, DecisionRule.USUAL, false),
            limits,
            Source.commonPractice("a test"),
            List.of(),
            ""));
  }

  /** Tables of the normal distribution: 95 % lie below 1.6449 standard deviations. */
  @Test
  void whoPassesItRisksWhatLiesBeyondTheLimit() {
    RiskOfFinding risk = risk(100 - 1.6449 * 2, 2, Limits.atMost(100)).orElseThrow();
    assertEquals(0.05, risk.ifPassed(), 1e-4);
    assertEquals(0.95, risk.ifRejected(), 1e-4);
    assertEquals(2, risk.uncertainty(), 1e-12);
    assertTrue(risk.overMany().isEmpty());
  }

  /**
   * Of the parts 9 in 10 lie within the limits, so that 1.6449 standard deviations reach from the
   * middle to either; the risks over many are those of the law for that spread.
   */
  @Test
  void overManyPartsNineOfTenConform() {
    Limits limits = new Limits(90, 110);
    ConformityRisk expected =
        ConformityRisk.of(new Estimate(100, 10 / 1.6448536), 2, limits, limits);
    ConformityRisk told = risk(95, 2, limits).orElseThrow().overMany().orElseThrow();
    assertEquals(expected.consumer(), told.consumer(), 1e-7);
    assertEquals(expected.producer(), told.producer(), 1e-7);
    assertTrue(told.consumer() > 0 && told.consumer() < 0.1);
  }

  @Test
  void withoutAnUncertaintyOrALimitThereIsNone() {
    assertTrue(risk(95, 0, new Limits(90, 110)).isEmpty());
    assertTrue(
        risk(95, 2, new Limits(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY)).isEmpty());
    assertTrue(risk(Double.NaN, 2, new Limits(90, 110)).isEmpty());
    assertTrue(risk(95, 2, Limits.atLeast(90)).isPresent());
  }
}

package kelter.costing.life;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class CompetingRisksTest {

  /** Exponential risks race in proportion to their rates: textbook result, 1/5 against 1/20. */
  @Test
  void exponentialRisks() {
    CompetingRisks risks =
        new CompetingRisks(List.of(new Weibull(5, 1), new Weibull(20, 1)), List.of(3.0, 11.0));
    assertEquals(0.8, risks.probabilityFirst(0), 1e-5);
    assertEquals(0.2, risks.probabilityFirst(1), 1e-5);
    assertEquals(4, risks.meanResidual(), 4e-5);
    assertEquals(Math.exp(-0.5), risks.survival(2), 1e-12);
  }

  /**
   * The least of n equal Weibull lives is a Weibull life of the same shape and a scale smaller by
   * n^(1/shape) (weakest link): textbook result.
   */
  @Test
  void theWeakestLinkOfEqualParts() {
    Weibull part = new Weibull(12, 2.2);
    CompetingRisks chain = new CompetingRisks(List.of(part, part, part), List.of(0.0, 0.0, 0.0));
    Weibull least = new Weibull(12 / Math.pow(3, 1 / 2.2), 2.2);
    assertEquals(least.mean(), chain.meanResidual(), 1e-5 * least.mean());
    assertEquals(1.0 / 3, chain.probabilityFirst(1), 1e-5);
    assertEquals(least.survival(6), chain.survival(6), 1e-12);
  }

  @Test
  void someRiskIsAlwaysTheFirst() {
    CompetingRisks risks =
        new CompetingRisks(
            List.of(new Weibull(9, 0.7), new Weibull(14, 1.5), new Weibull(20, 4)),
            List.of(0.0, 6.0, 12.0));
    double sum = risks.probabilityFirst(0) + risks.probabilityFirst(1) + risks.probabilityFirst(2);
    assertEquals(1, sum, 1e-3);
  }

  /** A new part lengthens the life of an old machine, but less than its own life. */
  @Test
  void renewingOnePartLeavesTheOthersOld() {
    CompetingRisks old =
        new CompetingRisks(
            List.of(new Weibull(12, 2.5), new Weibull(15, 2.5)), List.of(10.0, 10.0));
    double before = old.meanResidual();
    double after = old.renewed(0).meanResidual();
    assertTrue(after > before);
    assertTrue(after < new Weibull(12, 2.5).mean());
    assertTrue(after < new Weibull(15, 2.5).meanResidual(10));
  }

  @Test
  void oneRiskIsJustItsOwnLife() {
    CompetingRisks one = new CompetingRisks(List.of(new Weibull(14, 1.6)), List.of(5.0));
    assertEquals(new Weibull(14, 1.6).meanResidual(5), one.meanResidual(), 1e-4);
  }

  @Test
  void eachRiskNeedsAnAge() {
    Weibull part = new Weibull(12, 2);
    assertThrows(
        IllegalArgumentException.class, () -> new CompetingRisks(List.of(part), List.of()));
    assertThrows(IllegalArgumentException.class, () -> new CompetingRisks(List.of(), List.of()));
    assertThrows(
        IllegalArgumentException.class, () -> new CompetingRisks(List.of(part), List.of(-1.0)));
  }
}

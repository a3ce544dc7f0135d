package kelter.core.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kelter.core.job.Evaluation;
import kelter.core.uncertainty.ErrorTerm;
import kelter.core.uncertainty.InputQuantity;
import org.junit.jupiter.api.Test;

/** The difference of two readings, against equations of JCGM 100:2008. */
class DifferenceTest {

  private static Evaluation read(double value, double error, double rounding, double scatter) {
    return new Evaluation(
        new InputQuantity(value, List.of(ErrorTerm.normal(error))),
        false,
        error,
        rounding,
        scatter,
        1);
  }

  /**
   * Two resistors of 1000 ohm compared with one standard of standard uncertainty 100 mohm: fully
   * correlated (5.2.2, EXAMPLE), so that by equation (16) the difference has no uncertainty, {@code
   * |1 x 0.1 - 1 x 0.1| = 0}, and the sum would have 0.2 ohm.
   */
  @Test
  void theErrorOfASharedStandardCancels() {
    Difference difference = Difference.of(read(1000, 0.1, 0, 0), read(1000, 0.1, 0, 0), true);

    assertEquals(0, difference.estimate().standardUncertainty());
  }

  /** Equation (16) with an error of 1 % of the reading: 1 % of the difference is left. */
  @Test
  void whatGrowsWithTheReadingIsLeft() {
    Difference difference = Difference.of(read(6, 0.06, 0, 0), read(16, 0.16, 0, 0), true);

    assertEquals(10, difference.estimate().value());
    assertEquals(0.1, difference.estimate().standardUncertainty(), 1e-12);
  }

  /** Equation (10): 3 and 4 are 5, whatever instrument rounding and scatter come from. */
  @Test
  void independentErrorsAddInSquares() {
    assertEquals(
        5,
        Difference.of(read(0, 3, 0, 0), read(100, 4, 0, 0), false).estimate().standardUncertainty(),
        1e-12);
    assertEquals(
        5,
        Difference.of(read(0, 7, 3, 0), read(100, 7, 0, 4), true).estimate().standardUncertainty(),
        1e-12);
  }

  @Test
  void aDifferenceWithinTwiceItsUncertaintyIsNone() {
    assertFalse(Difference.of(read(10, 1, 0, 0), read(12.8, 1, 0, 0), false).isReal());
    assertTrue(Difference.of(read(10, 1, 0, 0), read(12.9, 1, 0, 0), false).isReal());
  }
}

package kelter.core.diagnosis.likelihood;

import static org.junit.jupiter.api.Assertions.assertEquals;

import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import org.junit.jupiter.api.Test;

/** How likely a word of an ordered scale is: each takes an equal part of the scale from 0 to 1. */
class GradeTest {

  private static final Observable LINT =
      Observable.named("lint", "lint")
          .graded("none", "thin", "thick", "choked")
          .how("Look at it.")
          .by(Procedure.inside(1));

  private static double likelihood(int rank, double value, double spread) {
    return Likelihood.grade(LINT, rank, 0).sound(value, spread);
  }

  /** Tables of the normal distribution: two standard deviations hold 95.45 %, one side 97.72 %. */
  @Test
  void aWordTakesAQuarterAndTheOuterOnesAllBeyond() {
    assertEquals(0.9545, likelihood(1, 0.375, 0.0625), 5e-5);
    assertEquals(0.9545, likelihood(2, 0.625, 0.0625), 5e-5);
    assertEquals(0.9772, likelihood(0, 0.125, 0.0625), 5e-5);
    assertEquals(0.9772, likelihood(3, 0.875, 0.0625), 5e-5);
    assertEquals(0.0228, likelihood(3, 0.625, 0.0625), 5e-5);
  }

  @Test
  void allWordsTogetherAreCertain() {
    for (double value : new double[] {0, 0.3, 0.5, 0.81, 1}) {
      double sum = 0;
      for (int rank = 0; rank < 4; rank++) {
        sum += likelihood(rank, value, 0.2);
      }
      assertEquals(1, sum, 1e-12);
    }
  }
}

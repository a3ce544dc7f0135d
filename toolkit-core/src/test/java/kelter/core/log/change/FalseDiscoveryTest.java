package kelter.core.log.change;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** The worked example of the paper. */
class FalseDiscoveryTest {

  /**
   * Benjamini and Hochberg (1995), section 3.3, 15 hypotheses on thrombolysis after infarction: at
   * 5 % the four with the lowest values are rejected, up to 0.0095 (from memory).
   */
  private static final double[] INFARCTION = {
    0.0001, 0.0004, 0.0019, 0.0095, 0.0201, 0.0278, 0.0298, 0.0344, 0.0459, 0.3240, 0.4262, 0.5719,
    0.6528, 0.7590, 1.0
  };

  private static long counted(double limit) {
    return Arrays.stream(INFARCTION).filter(chance -> chance <= limit).count();
  }

  @Test
  void theFourOfThePaperAreRejected() {
    double limit = FalseDiscovery.limit(INFARCTION, INFARCTION.length, 0.05);

    assertEquals(4 * 0.05 / 15, limit, 1e-15);
    assertEquals(4, counted(limit));
  }

  @Test
  void nothingCountsWhereNothingIsSure() {
    assertEquals(0.025, FalseDiscovery.limit(new double[] {0.2, 0.04}, 2, 0.05), 1e-15);
    assertEquals(0.05, FalseDiscovery.limit(new double[0], 0, 0.05), 1e-15);
    assertEquals(0.005, FalseDiscovery.limit(new double[] {0.01}, 10, 0.05), 1e-15, "of ten");
  }
}

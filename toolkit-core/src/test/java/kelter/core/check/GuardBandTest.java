package kelter.core.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import kelter.core.uncertainty.ErrorTerm;
import kelter.core.uncertainty.Estimate;
import kelter.core.uncertainty.InputQuantity;
import kelter.core.uncertainty.Shape;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GuardBandTest {

  /** JCGM 106:2012, table 1: quantiles for a level. */
  @ParameterizedTest
  @CsvSource({"0.5, 0", "0.80, 0.84", "0.90, 1.28", "0.95, 1.64", "0.99, 2.33", "0.999, 3.09"})
  void quantiles(double level, double width) {
    assertEquals(width, GuardBand.at(level, normal(1)).width(), 5.1e-3);
  }

  /** ILAC-G8:09/2019 (from memory): with w = U the risk at the edge is below 2.5 %. */
  @Test
  void asWideAsTheExpandedUncertainty() {
    Limits tolerance = new Limits(0, 100);
    Limits accepted = GuardBand.expanded(2).acceptance(tolerance);
    assertEquals(new Limits(4, 96), accepted);
    double conforms =
        DecisionRule.probabilityOfConformity(new Estimate(accepted.high(), 2), tolerance);
    assertEquals(0.9772, conforms, 5e-5);
  }

  /**
   * JCGM 106:2012, 8.3.3.2, example (from memory): a limit of 100 km/h, readings good to 2 %, a
   * driver is stopped when it is 99.9 % sure: above 107 km/h, where u is 2 % of 106.6 km/h.
   */
  @Test
  void speedIsRejectedBeyondAGuardBand() {
    Limits limit = Limits.atMost(100);
    assertEquals(106.6, GuardBand.at(0.999, normal(0.02 * 106.6)).rejection(limit).high(), 0.05);
  }

  /** Of a rectangular error of 0.3 the upper 5 % begin at 0.9 of it. */
  @Test
  void theBandOfARectangularErrorIsNarrower() {
    InputQuantity read = new InputQuantity(25.5, List.of(ErrorTerm.within(Shape.RECTANGULAR, 0.3)));
    assertEquals(0.27, GuardBand.at(0.95, read).width(), 1e-8);
  }

  private static InputQuantity normal(double standardUncertainty) {
    return InputQuantity.normal(new Estimate(0, standardUncertainty));
  }

  @Test
  void bandsThatAreNoneAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> new GuardBand(-1));
    assertThrows(IllegalArgumentException.class, () -> new GuardBand(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> GuardBand.at(0.4, normal(1)));
    assertThrows(IllegalArgumentException.class, () -> GuardBand.at(1, normal(1)));
    assertThrows(
        IllegalArgumentException.class, () -> new GuardBand(51).acceptance(new Limits(0, 100)));
  }
}

package kelter.core.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class LeastSquaresLineTest {

  /**
   * JCGM 100:2008, H.3, table H.6, calibration of a thermometer: corrections against t - 20 Cel:
   * intercept -0.1712 Cel, slope 0.00218 with a standard uncertainty of 0.00067.
   */
  @Test
  void thermometer() {
    double[] t = {
      21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511
    };
    double[] b = {-.171, -.169, -.166, -.159, -.164, -.165, -.156, -.157, -.159, -.161, -.160};
    for (int i = 0; i < t.length; i++) {
      t[i] -= 20;
    }
    LeastSquaresLine line = LeastSquaresLine.through(t, b);
    assertEquals(-0.1712, line.intercept(), 5e-5);
    assertEquals(0.00218, line.slope(), 5e-6);
    assertEquals(0.00067, line.slopeUncertainty(), 5e-6);
    assertEquals(9, line.degreesOfFreedom());
  }

  @Test
  void pointsThatGiveNoLineAreRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> LeastSquaresLine.through(new double[] {1, 2}, new double[] {1, 2}));
    assertThrows(
        IllegalArgumentException.class,
        () -> LeastSquaresLine.through(new double[] {1, 1, 1}, new double[] {1, 2, 3}));
  }
}

package kelter.core.log;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** The step of a converter is made out behind the digits of the file. */
class QuantisationTest {

  private static double resolution(double digit, DoubleUnaryOperator value) {
    Series series = new Series();
    for (int i = 0; i < 500; i++) {
      double written = digit * Math.rint(value.applyAsDouble(i) / digit);
      series.add(i + 1, i, written);
    }
    return series.resolution(digit);
  }

  private static DoubleUnaryOperator noisy(double level, double noise, double step) {
    Random random = new Random(5);
    return i -> step * Math.rint((level + noise * random.nextGaussian()) / step);
  }

  @Test
  void theStepOfAConverterIsFoundBehindSixDecimals() {
    assertEquals(0.327927, resolution(1e-6, noisy(0.11, 0.7, 0.327927)), 2e-6);
    assertEquals(0.5, resolution(0.01, noisy(60, 2, 0.5)), 1e-9);
    assertEquals(2, resolution(1, noisy(40, 3, 2)), 1e-9);
  }

  @Test
  void samplesWithoutStepsKeepTheirLastDigit() {
    assertEquals(1e-4, resolution(1e-4, noisy(60, 2, 1e-9)));
    assertEquals(0.1, resolution(0.1, noisy(60, 2, 0.1)));
  }

  @Test
  void aDisplayThatFlickersByTwoIsToldFromSomethingThatIsSwitched() {
    assertEquals(2, resolution(1, i -> i % 7 < 3 ? 9 : 11), 1e-9);
    assertEquals(1, resolution(1, i -> i % 7 < 3 ? 0 : 2980));
  }

  /**
   * The mean of a value that lies at random within a step of 1, blurred by noise of s: its error is
   * {@code sin(2 pi x) exp(-2 pi^2 s^2) / pi} to first order (Widrow and Kollar), whose root mean
   * square is less than what is told, and not by more than the difference of 1/sqrt(12) and 1/(pi
   * sqrt(2)).
   */
  @Test
  void noiseBlursTheSteps() {
    for (double noise : new double[] {0.3, 0.4, 0.5}) {
      double exact = Math.exp(-2 * Math.PI * Math.PI * noise * noise) / (Math.PI * Math.sqrt(2));
      double told = Quantisation.uncertaintyOfMean(1, Math.sqrt(noise * noise + 1 / 12.0), 3);
      assertEquals(exact * Math.PI * Math.sqrt(2) / Math.sqrt(12), told, 1e-12);
    }
    assertEquals(1 / Math.sqrt(12), Quantisation.uncertaintyOfMean(1, 0.5, 1), 1e-12);
    assertEquals(0, Quantisation.uncertaintyOfMean(0, 0.5, 1));
  }
}

package kelter.core.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import kelter.core.quantity.QuantityFormatException;
import kelter.core.quantity.QuantityKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Makers' statements of accuracy, read and applied. */
class AccuracyTest {

  /**
   * Worked examples of dealers' notes on meter accuracy (babataher-shop.com, gvda-instrument.com,
   * victorruoshui.com). The limits are printed to two digits; the tolerance is half of the last
   * one.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1.755 | 0.5 % + 1 | 0.001 | 0.0098 | 5e-5",
        "100.0 | 1 % + 2 | 0.1 | 1.2 | 5e-2",
        "2.000 | 0.08 % + 2 | 0.001 | 0.0036 | 5e-5",
        "2.000 | 0.5 % + 3 | 0.001 | 0.013 | 5e-4"
      })
  void workedExamplesOfMeters(
      double reading, String accuracy, double resolution, double limit, double tolerance) {
    Accuracy read = Accuracy.parse(accuracy, QuantityKind.VOLTAGE, resolution);
    assertEquals(limit, read.limitOfError(reading), tolerance);
    assertEquals(limit, read.limitOfError(-reading), tolerance);
  }

  /**
   * JCGM 100:2008, 4.3.7: a rectangular distribution of half-width a has u = a/√3; 1.2 V: 0.693 V.
   */
  @Test
  void limitsOfErrorAreRectangular() {
    Accuracy accuracy = Accuracy.parse("1 % + 2", QuantityKind.VOLTAGE, 0.1);
    assertEquals(0.693, accuracy.standardUncertainty(100.0), 5e-4);
  }

  @ParameterizedTest
  @ValueSource(strings = {"0.8", "3", "0.5 % + 0.8", "5 mV + 3"})
  void aNumberWithoutAUnitIsNoAccuracy(String text) {
    var refused =
        assertThrows(
            QuantityFormatException.class, () -> Accuracy.parse(text, QuantityKind.VOLTAGE, 0.001));
    assertTrue(refused.getMessage().contains("has no unit"), refused.getMessage());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "0.5 % + 1", "±0.5% + 1 count", "± (0.5 % + 1 digit)", "+/- 0.5 % of reading + 1 d",
        "0,5 % rdg. + 1 dgt", "(0.5 % of the reading + 1 LSD)", "0.5 % + 1 mV", "1 mV + 0.5 %",
        "0.5 % + 0.001 V"
      })
  void manyWaysToWriteTheSame(String text) {
    Accuracy accuracy = Accuracy.parse(text, QuantityKind.VOLTAGE, 0.001);
    assertEquals(0.005, accuracy.ofReading(), 1e-15);
    assertEquals(0.001, accuracy.fixed(), 1e-15);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'' | not an accuracy",
        "good | not an accuracy",
        "0.5 % + | not an accuracy",
        "-0.5 % | not an accuracy",
        "0.5 % of range | per cent of the reading",
        "0.5 % FS | per cent of the reading",
        "0.5 % of full scale | per cent of the reading",
        "1 A | voltage is expected",
        "0.5 foo | not known"
      })
  void refusedWithWhatWouldBeRight(String text, String part) {
    var refused =
        assertThrows(
            QuantityFormatException.class, () -> Accuracy.parse(text, QuantityKind.VOLTAGE, 0.001));
    assertTrue(refused.getMessage().contains(part), refused.getMessage());
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, 0, -0.1})
  void countsNeedAResolution(double resolution) {
    assertThrows(
        QuantityFormatException.class,
        () -> Accuracy.parse("0.5 % + 3", QuantityKind.VOLTAGE, resolution));
  }

  /** 1 % of a display of 60 °C is 0.6 K, of 140 °F is 1.4 °F: arithmetic on the statement. */
  @Test
  void perCentOfATemperatureAreCountedFromTheZeroThatIsDisplayed() {
    Accuracy celsius = Accuracy.parse("1 % + 0.5 °C", QuantityKind.TEMPERATURE, Double.NaN);
    assertEquals(0.6 + 0.5, celsius.limitOfError(273.15 + 60), 1e-9);
    assertEquals(0.6 + 0.5, celsius.limitOfError(273.15 - 60), 1e-9);
    Accuracy fahrenheit = Accuracy.parse("1 % + 0.9 °F", QuantityKind.TEMPERATURE, Double.NaN);
    assertEquals((1.4 + 0.9) * 5 / 9, fahrenheit.limitOfError(273.15 + 60), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"-1, 0", "0, -1", "NaN, 0", "0, NaN", "Infinity, 0"})
  void impossibleFiguresAreRefused(double ofReading, double fixed) {
    assertThrows(IllegalArgumentException.class, () -> new Accuracy(ofReading, fixed));
  }

  @Test
  void theUncertaintyIsNeverNegativeAndScalesWithTheReading() {
    Random random = new Random(20261125L);
    for (int i = 0; i < 1000; i++) {
      Accuracy accuracy = new Accuracy(random.nextDouble() / 10, 0);
      double reading = random.nextGaussian() * 100;
      double u = accuracy.standardUncertainty(reading);
      assertTrue(u >= 0);
      assertEquals(7 * u, accuracy.standardUncertainty(7 * reading), 1e-12 * u);
      assertEquals(u, accuracy.standardUncertainty(-reading), 0);
    }
  }
}

package kelter.core.module;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kelter.core.quantity.QuantityFormatException;
import kelter.core.quantity.QuantityKind;
import kelter.core.uncertainty.ErrorTerm;
import kelter.core.uncertainty.Estimate;
import kelter.core.uncertainty.InputQuantity;
import kelter.core.uncertainty.Shape;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class InputTextTest {

  /** The half-width over the divisor of the shape, JCGM 100:2008, 4.3: plain arithmetic. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "26.4 ohm ± 0.3 | RECTANGULAR | 0.173205",
        "26.4 ± 0.3 ohm | RECTANGULAR | 0.173205",
        "26,4 Ω +/- 300 mohm | RECTANGULAR | 0.173205",
        "26.4 ohm ± 1 % | RECTANGULAR | 0.152420",
        "26.4 ohm ± 0.3 (triangular) | TRIANGULAR | 0.122474",
        "26.4 ohm ± 0.3 (U-shaped) | U_SHAPED | 0.212132",
        "26.4 ohm ± 0.3 (k=2) | NORMAL | 0.15",
        "26.4 ohm ± 0.3 (normal, k = 2) | NORMAL | 0.15",
        "26.4 ohm ± 0.3 (k=2,5, dof=9) | STUDENT_T | 0.12",
        "26.4 ohm ± 0.3 (t, dof=9, k=2.5) | STUDENT_T | 0.12"
      })
  void oneUncertainty(String text, Shape shape, double u) {
    InputQuantity input = InputText.parse(text, QuantityKind.RESISTANCE);
    assertEquals(26.4, input.value(), 1e-12);
    assertEquals(1, input.terms().size());
    assertEquals(shape, input.terms().get(0).shape());
    assertEquals(u, input.terms().get(0).standardUncertainty(), 1e-6);
  }

  @Test
  void withoutUncertaintyItIsExact() {
    assertTrue(InputText.parse("26.4 ohm", QuantityKind.RESISTANCE).terms().isEmpty());
  }

  @Test
  void severalUncertaintiesAndReadings() {
    InputQuantity input =
        InputText.parse(
            "20 Cel; 22 Cel; 24 Cel ± 0.5 (k=2) ± 1 K (U-shaped)", QuantityKind.TEMPERATURE);
    assertEquals(273.15 + 22, input.value(), 1e-9);
    assertEquals(3, input.terms().size());
    assertTrue(input.terms().get(0).scatter());
    assertEquals(2, input.terms().get(0).degreesOfFreedom(), 0);
    assertEquals(2 / Math.sqrt(3), input.terms().get(0).standardUncertainty(), 1e-9);
    assertEquals(0.25, input.terms().get(1).standardUncertainty(), 1e-12);
    assertEquals(Math.sqrt(0.5), input.terms().get(2).standardUncertainty(), 1e-12);
  }

  @Test
  void aDoubtfulHalfWidthKeepsItsShape() {
    ErrorTerm term =
        InputText.parse("5 V ± 0.3 (rectangular, dof=8)", QuantityKind.VOLTAGE).terms().get(0);
    assertEquals(Shape.RECTANGULAR, term.shape());
    assertEquals(8, term.degreesOfFreedom(), 0);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "1 V ± 1e308 %",
        "1 V ± 1e308 kV",
        "1 V ± 1e14 kV (k=1e-300)",
        "5 V ± 0.3 (normal)",
        "5 V ± 0.3 (t, k=2)",
        "5 V ± 0.3 (triangular, k=2)",
        "5 V ± 0.3 (dof=9)",
        "5 V ± 0.3 (k)",
        "5 V ± 0.3 (k=0)",
        "5 V ± 0.3 (k=2, dof=0)",
        "5 V ± 0.3 (bell)",
        "5 V ±",
        "5 V ± 0.3 A",
        "5 V;",
        "; 5 V",
        "5 V; 5 A",
        "5"
      })
  void whatCannotBeReadIsRefused(String text) {
    QuantityFormatException refused =
        assertThrows(
            QuantityFormatException.class, () -> InputText.parse(text, QuantityKind.VOLTAGE));
    assertTrue(refused.getMessage().length() > 10, refused.getMessage());
  }

  @Test
  void aMultipleHasMultipleErrors() {
    InputQuantity thrice = InputQuantity.normal(new Estimate(10, 0.5)).times(3);
    assertEquals(30, thrice.value(), 1e-12);
    assertEquals(1.5, thrice.estimate().standardUncertainty(), 1e-12);
  }
}

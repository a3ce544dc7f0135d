package kelter.core.module;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Currency;
import java.util.Optional;
import kelter.core.quantity.QuantityFormatException;
import kelter.core.quantity.QuantityKind;
import org.junit.jupiter.api.Test;

class ParameterTest {

  private static final Parameter BORE =
      Parameter.required("bore", "inner diameter", QuantityKind.LENGTH, 0.002, 0.302);

  /** 95 % is 0.95 by the decimal system; times 0.01 it is a last place more. */
  @Test
  void aLimitAsItIsPrintedIsTaken() {
    Parameter margin = Parameter.required("margin", "margin", QuantityKind.PERCENT, 0, 0.95);
    assertEquals(0.95, margin.atLimit(margin.read("95 %")).value());
    assertEquals(0.96, margin.atLimit(margin.read("96 %")).value(), 1e-12);
    Parameter third = Parameter.required("third", "third", QuantityKind.LENGTH, 1e-3 / 3, 1);
    assertEquals(1e-3 / 3, third.atLimit(third.read("0.3333 mm")).value());
  }

  @Test
  void moneyIsAPlainNumberOrHasItsCurrency() {
    double year = 365.25 * 86_400;
    Parameter cost = Parameter.required("cost", "cost", QuantityKind.MONEY_PER_YEAR, 0, 1);
    assertEquals(80 / year, cost.read("80").value(), 1e-15);
    assertEquals(
        5 / Math.sqrt(3) / year, cost.read("80 ± 5").estimate().standardUncertainty(), 1e-15);
    Parameter euros = cost.in(Currency.getInstance("EUR"));
    assertEquals(80 / year, euros.read("80 EUR/a").value(), 1e-15);
    assertEquals(80 / year, euros.read("80").value(), 1e-15);
    assertThrows(QuantityFormatException.class, () -> euros.read("80 EUR"));
  }

  @Test
  void aLawTakesATenthBeyondTheRange() {
    assertEquals(0.33, BORE.check(0.33));
    IllegalArgumentException wide =
        assertThrows(IllegalArgumentException.class, () -> BORE.check(0.333));
    assertEquals("bore: 333 mm is outside 2 mm to 302 mm", wide.getMessage());
  }

  @Test
  void nothingThatIsAboveZeroChangesItsSign() {
    assertEquals(0.0011, BORE.check(0.0011));
    assertThrows(IllegalArgumentException.class, () -> BORE.check(0.0009));
    assertThrows(IllegalArgumentException.class, () -> BORE.check(-0.001));
  }

  @Test
  void whatIsNoNumberIsRefused() {
    IllegalArgumentException none =
        assertThrows(IllegalArgumentException.class, () -> BORE.check(Double.NaN));
    assertEquals("bore: NaN (not a possible value) is outside 2 mm to 302 mm", none.getMessage());
  }

  @Test
  void theSameFigureMayBeLeftOut() {
    Parameter optional = BORE.optional("10 mm");
    assertEquals(Optional.of("10 mm"), optional.usual());
    assertEquals(BORE.high(), optional.high());
  }
}

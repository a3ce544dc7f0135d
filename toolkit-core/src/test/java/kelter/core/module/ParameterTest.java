package kelter.core.module;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Optional;
import kelter.core.quantity.QuantityKind;
import org.junit.jupiter.api.Test;

class ParameterTest {

  private static final Parameter BORE =
      Parameter.required("bore", "inner diameter", QuantityKind.LENGTH, 0.002, 0.302);

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

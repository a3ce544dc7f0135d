package kelter.core.job;

import static org.junit.jupiter.api.Assertions.assertEquals;

import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import org.junit.jupiter.api.Test;

/** Between which values a reading lies of which only a bound is known. */
class ReadingTest {

  private static final Quantity BOUND = Quantity.of(20, "MOhm", QuantityKind.INSULATION_RESISTANCE);

  @Test
  void aboveABoundLiesAnythingUpToInfinity() {
    Reading above = new Reading.Above(BOUND);
    assertEquals(20e6, above.least(), 1e-6);
    assertEquals(Double.POSITIVE_INFINITY, above.most());
  }

  /** What instruments show as below a bound, such as a resistance, is not below zero. */
  @Test
  void belowABoundLiesNothingGreater() {
    Reading below = new Reading.Below(BOUND);
    assertEquals(20e6, below.most(), 1e-6);
    assertEquals(0, below.least(), 0);
  }
}

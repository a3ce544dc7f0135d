package kelter.costing.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Map;
import kelter.core.module.Computation;
import org.junit.jupiter.api.Test;

class PriceFloorTest {

  /**
   * By hand: an hour at 40, coming for 20, a part for 30 cost 90. One visit in ten is followed by
   * another: 1/10 + 1/100 + ... = 1/9 of 60 is 6.67. A quarter of the price as margin makes 128.89.
   */
  @Test
  void aJobByHand() {
    Computation job =
        Computation.of(
            PriceFloor.calculation(),
            Map.of(
                "work", "1 h",
                "hour", "40",
                "travel", "20",
                "part", "30",
                "callback", "10 %",
                "margin", "25 %"));
    double[] printed = {90, 6.67, 96.67, 128.89};
    for (int i = 0; i < printed.length; i++) {
      assertEquals(printed[i], job.results().get(i).quantity().value(), 0.005);
    }
  }

  @Test
  void aCertainCallBackHasNoPrice() {
    assertThrows(IllegalArgumentException.class, () -> PriceFloor.reserve(60, 1));
    assertThrows(IllegalArgumentException.class, () -> PriceFloor.price(60, 1));
    assertThrows(IllegalArgumentException.class, () -> PriceFloor.price(60, Double.NaN));
  }
}

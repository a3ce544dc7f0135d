package kelter.costing.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Map;
import kelter.core.module.Computation;
import kelter.testkit.ledger.OutsideCheck;
import kelter.testkit.ledger.Worth;
import org.apache.commons.statistics.distribution.GeometricDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

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

  /**
   * The number of call-backs before a visit that lasts has a geometric distribution, whose mean
   * Commons Statistics knows.
   */
  @OutsideCheck(
      of = "price-floor",
      against = "Commons Statistics, mean of a geometric distribution")
  @ParameterizedTest
  @ValueSource(doubles = {0.01, 0.1, 0.5, 0.95})
  void theReserveIsTheMeanOfAGeometricDistribution(double callBack) {
    double mean = GeometricDistribution.of(1 - callBack).getMean();
    assertEquals(60 * mean, PriceFloor.reserve(60, callBack), 1e-10);
  }

  /** Margin of the price and mark-up on the cost as tables of the trade pair them (from memory). */
  @OutsideCheck(
      of = "price-floor",
      against = "margin and mark-up as tables of the trade pair them",
      worth = Worth.FROM_MEMORY)
  @ParameterizedTest
  @CsvSource({"0.20, 25.0", "0.25, 33.3", "0.40, 66.7", "0.50, 100.0"})
  void aMarginIsAMarkUp(double margin, double markUp) {
    assertEquals(markUp, PriceFloor.price(100, margin) - 100, 0.05);
  }

  @Test
  void aCertainCallBackHasNoPrice() {
    assertThrows(IllegalArgumentException.class, () -> PriceFloor.reserve(60, 1));
    assertThrows(IllegalArgumentException.class, () -> PriceFloor.price(60, 1));
    assertThrows(IllegalArgumentException.class, () -> PriceFloor.price(60, Double.NaN));
  }
}

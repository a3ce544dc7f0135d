package kelter.costing.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kelter.testkit.ledger.OutsideCheck;
import kelter.testkit.ledger.Worth;
import org.apache.commons.statistics.distribution.PoissonDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SparesStockTest {

  /**
   * Tables of the cumulative Poisson distribution, four decimals, as in any text on statistics
   * (from memory): P(X at most x) at a mean.
   */
  @OutsideCheck(
      of = "spares-stock",
      against = "tables of the cumulative Poisson distribution",
      worth = Worth.FROM_MEMORY)
  @ParameterizedTest
  @CsvSource({"1, 2, 0.9197", "2, 4, 0.9473", "5, 8, 0.9319", "0.5, 1, 0.9098", "10, 15, 0.9513"})
  void cumulativePoissonTables(double mean, int atMost, double printed) {
    assertEquals(printed, SparesStock.ready(atMost + 1, mean), 0.5e-4);
  }

  @ParameterizedTest
  @CsvSource({"0.23, 0.95", "2, 0.5", "7.5, 0.99", "400, 0.9", "9000, 0.999"})
  void theStockIsTheLeastThatIsEnough(double mean, double service) {
    int stock = SparesStock.least(mean, service);
    PoissonDistribution demand = PoissonDistribution.of(mean);
    assertTrue(demand.cumulativeProbability(stock - 1) >= service);
    assertTrue(stock == 1 || demand.cumulativeProbability(stock - 2) < service);
  }

  /** Nobody asks for it: one is enough. */
  @Test
  void withoutDemandOneIsEnough() {
    assertEquals(1, SparesStock.least(0, 0.99));
    assertEquals(1, SparesStock.ready(1, 0));
    assertEquals(0, SparesStock.ready(0, 2));
  }

  /** A stock whose chance is just the service level is enough, by the meaning of the level. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 8, 11, 16})
  void aServiceLevelThatIsJustReachedIsReached(int stock) {
    assertEquals(stock, SparesStock.least(3, SparesStock.ready(stock, 3)));
  }

  /** The greatest mean is taken: half of all draws lie below the mean, nearly. */
  @Test
  void theGreatestMeanIsTaken() {
    double expected = PoissonDistribution.of(10_000).cumulativeProbability(9_999);
    assertEquals(expected, SparesStock.ready(10_000, 10_000), 1e-9);
  }

  @Test
  void whatIsOutsideItsRangeIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> SparesStock.least(1, 1));
    assertThrows(IllegalArgumentException.class, () -> SparesStock.least(1, 0));
    assertThrows(IllegalArgumentException.class, () -> SparesStock.ready(1, 10_001));
    assertThrows(IllegalArgumentException.class, () -> SparesStock.least(1, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> SparesStock.ready(1, -1));
    assertThrows(IllegalArgumentException.class, () -> SparesStock.ready(-1, 1));
    assertThrows(IllegalArgumentException.class, () -> SparesStock.ready(1, Double.NaN));
  }
}

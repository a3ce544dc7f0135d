package kelter.core.option;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Currency;
import java.util.List;
import java.util.Optional;
import kelter.core.diagnosis.Conclusion;
import kelter.core.diagnosis.Conclusion.Reason;
import org.junit.jupiter.api.Test;

/** What is advised, and how close it is; the odds are made up. */
class WeighingTest {

  private static Option option(String id, double odds) {
    Option.Spread cost = new Option.Spread(100, 90, 100, 110);
    return new Option(id, id, List.of(), 1, 50, 5, cost, odds);
  }

  private static Weighing weighing(boolean readFirst, Option... options) {
    Conclusion conclusion =
        new Conclusion(Reason.DECIDED, List.of(), Conclusion.Advice.WORK, "go on", readFirst);
    return new Weighing(
        Currency.getInstance("EUR"),
        true,
        conclusion,
        List.of(options),
        Double.NaN,
        List.of(),
        List.of());
  }

  @Test
  void theOddsOfASideAreThoseOfAllItsOptions() {
    Weighing mends =
        weighing(false, option("a", 0.3), option(Option.REPLACE, 0.45), option("b", 0.25));
    assertEquals(0.55, mends.oddsOfSide(), 1e-12);
    assertTrue(mends.isClose());
    assertEquals(0.7, weighing(false, option("replace", 0.7), option("a", 0.3)).oddsOfSide());
    assertFalse(weighing(false, option("replace", 0.7), option("a", 0.3)).isClose());
    assertFalse(weighing(false, option("a", 1)).isClose());
  }

  @Test
  void nothingIsAdvisedWhereSomethingIsToBeReadFirst() {
    assertEquals("a", weighing(false, option("a", 1)).recommended().orElseThrow().id());
    assertEquals(Optional.empty(), weighing(true, option("a", 1)).recommended());
    assertEquals(Optional.empty(), weighing(false).recommended());
    assertFalse(weighing(false).isClose());
  }
}

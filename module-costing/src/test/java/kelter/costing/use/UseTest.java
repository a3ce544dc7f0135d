package kelter.costing.use;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import kelter.core.module.Computation;
import kelter.testkit.ledger.NoOutsideCheck;
import org.junit.jupiter.api.Test;

class UseTest {

  private static double result(Computation computation, int place) {
    return computation.results().get(place).quantity().value();
  }

  /**
   * No outside example can be had: running-cost is a sum of prices times amounts by their
   * definition, and published examples differ in what they count. What could go wrong is a unit or
   * the length of the year, which are computed by hand here.
   *
   * <p>7 cycles a week are 365.25 a year. 0.8 kW.h at 0.30 are 0.24, 50 L at 4 a cubic metre are
   * 0.20, with 0.16 of detergent 0.60 a cycle: 219.15 a year, 292.2 kW.h and 18 262.5 L.
   */
  @NoOutsideCheck(
      of = "running-cost",
      because =
          "a sum of prices times amounts by its definition, and published examples"
              + " differ in what they count; units and the length of the year worked by hand")
  @Test
  void aYearByHand() {
    Computation year =
        Computation.of(
            RunningCost.calculation(),
            Map.of(
                "cycles", "7",
                "energy", "0.8 kWh",
                "energy-price", "0.30 EUR",
                "water", "50 L",
                "water-price", "4",
                "detergent", "0.16"));
    assertEquals(219.15, result(year, 0), 1e-9);
    assertEquals(
        List.of("EUR/a", "kW.h/a", "L/a"),
        year.results().stream().map(each -> each.quantity().unit().code()).toList());
    assertEquals(292.2, result(year, 1), 1e-9);
    assertEquals(18_262.5, result(year, 2), 1e-6);
  }

  /**
   * No outside example can be had: life-at-use is a proportion of common practice without a source.
   * By hand: ten times the use, a tenth of the years. The same proportion turns the life of a
   * bearing in revolutions into hours (ISO 281): a million revolutions at 1000 a minute are 16.7 h.
   */
  @NoOutsideCheck(
      of = "life-at-use",
      because =
          "a proportion of common practice without a source; worked by hand, beside the"
              + " same proportion of ISO 281")
  @Test
  void aLaunderette() {
    Computation life =
        Computation.of(LifeAtUse.calculation(), Map.of("life", "12.6 a", "cycles", "42"));
    assertEquals(1.26, result(life, 0), 1e-12);
    assertEquals(16.7, LifeAtUse.years(1e6, 1, 1000 * 60), 0.05);
  }

  @Test
  void whatIsOutsideItsRangeIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> LifeAtUse.years(10, 4, 0));
    assertThrows(IllegalArgumentException.class, () -> LifeAtUse.years(10, 0, 4));
    assertThrows(IllegalArgumentException.class, () -> LifeAtUse.years(-1, 4, 4));
    assertThrows(IllegalArgumentException.class, () -> LifeAtUse.years(1e300, 1e300, 1));
    assertThrows(IllegalArgumentException.class, () -> LifeAtUse.years(1e200, 1, 1e-200));
    assertEquals(0, LifeAtUse.years(0, 4, 4));
    assertThrows(IllegalArgumentException.class, () -> LifeAtUse.years(Double.NaN, 4, 4));
    assertThrows(IllegalArgumentException.class, () -> RunningCost.ofCycle(-1, 1, 0, 0, 0));
    assertThrows(IllegalArgumentException.class, () -> RunningCost.ofCycle(Double.NaN, 1, 0, 0, 0));
  }

  /**
   * No outside example can be had: carbon-of-replacing multiplies energy and emission of a kW.h by
   * their definition; life cycle assessments count more than that. By hand: 300 kW.h at 0.4 kg are
   * 120 kg; 200 kW.h are 80 kg, and 300 kg over 12 years 25 kg.
   */
  @NoOutsideCheck(
      of = "carbon-of-replacing",
      because =
          "products by their definition, and life cycle assessments count more; worked"
              + " by hand")
  @Test
  void carbonByHand() {
    Computation year =
        Computation.of(
            CarbonOfReplacing.calculation(),
            Map.of(
                "energy", "300 kWh/a",
                "energy-new", "200 kWh/a",
                "per-kwh", "400 g",
                "making", "300 kg",
                "life", "12 a"));
    assertEquals(120, result(year, 0), 1e-9);
    assertEquals("kg/a", year.results().get(0).quantity().unit().code());
    assertEquals(105, result(year, 1), 1e-9);
    assertEquals(7.5, CarbonOfReplacing.payBack(300, 120, 80).orElseThrow(), 1e-12);
    assertTrue(CarbonOfReplacing.payBack(300, 80, 80).isEmpty());
    assertThrows(IllegalArgumentException.class, () -> CarbonOfReplacing.running(-1, 0.4));
  }
}

package kelter.electrical.heating;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import kelter.core.job.Appliance;
import kelter.core.job.Nameplate;
import kelter.core.job.RatedRange;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.ProtectionClass;
import kelter.electrical.Forecasts;
import kelter.electrical.Jobs;
import kelter.electrical.SampleMachines;
import org.junit.jupiter.api.Test;

/** What a heater takes once its supply, or one leg of it, is gone. */
class SupplyLostTest {

  private static final Appliance THREE_PHASES =
      new Appliance(
          "washer-extractor",
          "",
          "",
          "",
          Optional.empty(),
          new Nameplate(
              Optional.of(RatedRange.parse("400 V", QuantityKind.VOLTAGE)),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.of(ProtectionClass.I)),
          List.of(Jobs.heater(), Jobs.component("supply", "supply")));

  @Test
  void switchedOffNothingIsThere() {
    Appliance washer = SampleMachines.WASHER;
    for (String question : List.of("heater.current", "supply.voltage-idle", "heater.voltage")) {
      assertEquals(0, Forecasts.of(washer, question, 1, "supply.off"), 1e-9, question);
    }
    assertTrue(Forecasts.of(washer, "supply.fuses-out") < 0.1);
    assertTrue(Forecasts.of(washer, "supply.fuses-out", 1, "supply.off") > 0.9);
    assertEquals(0.5, Forecasts.of(washer, "supply.fuses-out", 1, "supply.leg-lost"), 1e-9);
  }

  /**
   * Three equal heaters in delta, one phase lost: one has the full voltage, two lie in series
   * across it, so that (1 + 1/2) of 3 shares are left. In star without neutral two lie in series
   * across the full voltage: each has (√3/2)² = 3/4 of its power, 1.5 of 3 again.
   */
  @Test
  void withoutOneOfThreePhasesHalfOfThePowerIsLeft() {
    assertEquals(2000, Forecasts.of(THREE_PHASES, "heater.power"), 5);
    assertEquals(1000, Forecasts.of(THREE_PHASES, "heater.power", 1, "supply.leg-lost"), 5);
  }

  /** Between two legs of which one is gone there is no voltage. */
  @Test
  void withoutOneOfTwoLegsNothingIsLeft() {
    Appliance store = Jobs.appliance(Jobs.heater(), Jobs.component("supply", "supply"));
    assertEquals(0, Forecasts.of(store, "heater.current", 1, "supply.leg-lost"), 1e-9);
  }
}

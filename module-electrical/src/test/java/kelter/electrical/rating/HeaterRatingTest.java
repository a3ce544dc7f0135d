package kelter.electrical.rating;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Nameplate;
import kelter.core.job.RatedRange;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.electrical.Jobs;
import org.junit.jupiter.api.Test;

/**
 * What the cold resistance of a heater tells, by Ohm's and Joule's laws with a factor of 1.02 from
 * cold to hot: 25.93 ohm cold are 26.45 ohm hot, which is 230² / 2000.
 */
class HeaterRatingTest {

  private static final double COLD = 26.45 / 1.02;

  private static HeaterRating rating(String voltage, Optional<Quantity> power, double cold) {
    Component heater =
        Jobs.component(
            "heater",
            "heater",
            power,
            Map.of("resistance", Quantity.of(cold, "Ohm", QuantityKind.RESISTANCE)));
    Nameplate nameplate =
        new Nameplate(
            Optional.of(RatedRange.parse(voltage, QuantityKind.VOLTAGE)),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    Appliance machine =
        new Appliance("dishwasher", "", "", "", Optional.empty(), nameplate, List.of(heater));
    return HeaterRating.of(machine, heater).orElseThrow();
  }

  @Test
  void withoutAPowerTheResistanceTellsIt() {
    HeaterRating rating = rating("230 V", Optional.empty(), COLD);
    assertEquals(2000, rating.power(), 0.01);
    assertEquals(230, rating.voltage(), 1e-9);
    assertTrue(rating.resistanceStated());
    assertEquals(0, rating.openness(), 1e-9);
  }

  /** 2 kW in 24.2 ohm are at 220 V, the lower end; in 28.8 ohm at 240 V, the upper one. */
  @Test
  void withAPowerItTellsTheVoltageOfTheRange() {
    Optional<Quantity> power = Optional.of(Quantity.of(2, "kW", QuantityKind.POWER));
    assertEquals(220, rating("220-240 V", power, 24.2 / 1.02).voltage(), 0.01);
    assertEquals(230, rating("220-240 V", power, COLD).voltage(), 0.01);
    assertEquals(240, rating("220-240 V", power, 28.8 / 1.02).voltage(), 0.01);
    assertEquals(240, rating("220-240 V", power, 40).voltage(), 0.01);
  }

  /** The mains of a house may lie anywhere in 220 V to 240 V: 10 / 230 / sqrt 3 (GUM, 4.3.7). */
  @Test
  void aRangeLeavesTheMainsOpen() {
    assertEquals(0.0251, rating("220-240 V", Optional.empty(), COLD).mainsOpenness(), 0.00005);
    assertEquals(0, rating("230 V", Optional.empty(), COLD).mainsOpenness(), 1e-12);
  }
}

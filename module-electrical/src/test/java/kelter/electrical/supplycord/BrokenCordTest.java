package kelter.electrical.supplycord;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Optional;
import kelter.core.job.Appliance;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.electrical.Forecasts;
import kelter.electrical.Jobs;
import org.junit.jupiter.api.Test;

/** What the live conductors of a cord measure. */
class BrokenCordTest {

  /** 10 m of 0.75 mm² have 0.26 Ohm, by 26 Ohm/km of IEC 60228, Table 3; ends 0.1 Ohm. */
  @Test
  void aLongCordHasWhatItsLengthTells() {
    Appliance cleaner =
        Jobs.appliance(
            Jobs.component(
                "cord",
                "supply-cord",
                Optional.empty(),
                Map.of(
                    "length", Quantity.of(10, "m", QuantityKind.DISTANCE),
                    "section", Quantity.of(0.75, "mm2", QuantityKind.AREA))));
    assertEquals(0.36, Forecasts.of(cleaner, "cord.conductor-resistance"), 0.005);
    assertTrue(Forecasts.of(cleaner, "cord.conductor-resistance", 0.1, "cord.broken") > 0.86);
    assertTrue(Forecasts.of(cleaner, "cord.conductor-resistance", 0.45, "cord.broken") > 1e5);
    assertEquals(1e8, Forecasts.of(cleaner, "cord.conductor-resistance", 1, "cord.broken"));
    assertTrue(Forecasts.of(cleaner, "cord.drops-out", 0.5, "cord.broken") > 0.5);
  }

  /** 5 m of 1.5 mm² at 13.3 Ohm/km (IEC 60228, Table 3) stand in for a section without a row. */
  @Test
  void aSectionThatNoTableHasIsTakenAsAUsualCord() {
    Appliance machine =
        Jobs.appliance(
            Jobs.component(
                "cord",
                "supply-cord",
                Optional.empty(),
                Map.of("section", Quantity.of(0.9, "mm2", QuantityKind.AREA))));
    assertEquals(0.1665, Forecasts.of(machine, "cord.conductor-resistance"), 0.0005);
  }
}

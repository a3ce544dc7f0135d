package kelter.electrical.cold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kelter.core.check.Verdict;
import kelter.core.job.Appliance;
import kelter.core.job.Nameplate;
import kelter.core.job.RatedRange;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.electrical.DriveMachines;
import kelter.electrical.Forecasts;
import kelter.electrical.Jobs;
import kelter.electrical.SampleMachines;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What starts a compressor and what thaws its evaporator. */
class ColdTest {

  private static final Appliance MACHINE = SampleMachines.CONTROLS;

  private static double at(String question, String fault) {
    return Forecasts.of(MACHINE, question, 0.5, fault);
  }

  /** At 230 V a resistor in order has 12 to 45 Ohm cold, and is silent when shaken. */
  @Test
  void aCrackedStarterIsOpenAndRattles() {
    double cold = Forecasts.of(MACHINE, "starter.cold-resistance");
    assertTrue(cold > 12 && cold < 45);
    assertTrue(at("starter.cold-resistance", "starter.dead") > 1e6);
    assertTrue(at("starter.rattles", "starter.dead") > 0.6);
    assertTrue(at("starter.burns", "starter.burnt") > 0.7);
    assertTrue(at("starter.burns", "starter.dead") < 0.2);
  }

  /** One of 120 V has 3 to 12 Ohm; the figure of the part tells it. */
  @Test
  void theFigureOfTheStarterComesFirst() {
    Appliance american =
        Jobs.appliance(
            Jobs.component(
                "starter",
                "start-relay",
                Optional.empty(),
                Map.of("cold-resistance", Quantity.of(5, "Ohm", QuantityKind.RESISTANCE))));
    assertEquals(5, Forecasts.of(american, "starter.cold-resistance"), 1e-9);
  }

  /** In ice water a sound sensor has what its table says. */
  @Test
  void aDefrostSensorIsOpenOrOffItsSeat() {
    assertEquals(1, Forecasts.of(MACHINE, "ice.ice-water-ratio"), 1e-9);
    assertEquals(1000, at("ice.ice-water-ratio", "ice.dead"), 1e-6);
    assertEquals(1, at("ice.ice-water-ratio", "ice.off-seat"), 1e-9);
    assertTrue(at("ice.seat", "ice.off-seat") > 0.6);
  }

  @Test
  void aDeadTimerStands() {
    assertTrue(at("clock.stands-still", "clock.dead") > 0.8);
  }

  /**
   * 8 to 60 ohm on 230 V, 2 to 20 ohm on 120 V (from memory); the figure of the part, halved and
   * doubled, comes before both.
   */
  @ParameterizedTest
  @CsvSource({
    "230 V, , 30, CONFORMS",
    "230 V, , 4, DOES_NOT_CONFORM",
    "120 V, , 4, CONFORMS",
    "120 V, , 30, DOES_NOT_CONFORM",
    "230 V, 5, 4, CONFORMS",
    "230 V, 5, 9, CONFORMS",
    "230 V, 5, 15, DOES_NOT_CONFORM",
    "230 V, 5, 1.5, DOES_NOT_CONFORM"
  })
  void aStarterIsHeldAgainstItsFigureOrItsSupply(
      String supply, Double figure, String reading, Verdict verdict) {
    Map<String, Quantity> figures =
        figure == null
            ? Map.of()
            : Map.of("cold-resistance", Quantity.of(figure, "Ohm", QuantityKind.RESISTANCE));
    Appliance machine =
        new Appliance(
            "refrigerator",
            "",
            "",
            "",
            Optional.empty(),
            new Nameplate(
                Optional.of(RatedRange.parse(supply, QuantityKind.VOLTAGE)),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty()),
            List.of(Jobs.component("start-relay", "start-relay", Optional.empty(), figures)));
    assertEquals(
        Set.of(verdict),
        DriveMachines.verdicts(
            machine, DriveMachines.read("start-relay", "cold-resistance", reading + " Ohm")));
  }
}

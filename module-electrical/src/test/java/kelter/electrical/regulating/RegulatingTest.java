package kelter.electrical.regulating;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import java.util.stream.Collectors;
import kelter.core.diagnosis.FaultSymptom;
import kelter.core.job.Appliance;
import kelter.electrical.ElectricalModule;
import kelter.electrical.Forecasts;
import kelter.electrical.Jobs;
import kelter.electrical.SampleMachines;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** When parts open that open by themselves. */
class RegulatingTest {

  private static final Appliance MACHINE = SampleMachines.CONTROLS;

  private static double at(String question, String fault) {
    return Forecasts.of(MACHINE, question, 0.5, fault);
  }

  /** Ovens swing by 15 K about a mean error of 20 K at most: from memory. */
  @Test
  void aThermostatOpensEarlyLateOrNever() {
    assertEquals(0, Forecasts.of(MACHINE, "thermostat.overshoot"), 1e-9);
    assertEquals(-30, at("thermostat.overshoot", "thermostat.opens-early"), 1e-9);
    assertEquals(30, at("thermostat.overshoot", "thermostat.opens-late"), 1e-9);
    assertTrue(at("thermostat.overshoot", "thermostat.welded") > 60);
    assertTrue(at("thermostat.open-resistance", "thermostat.welded") < 0.5);
    assertTrue(at("thermostat.closed-resistance", "thermostat.open") > 1e6);
  }

  /** Ohm's law: 2 kW at 230 V draw 8.7 A, and nothing through an open thermostat. */
  @Test
  void anOpenThermostatLeavesTheOnlyHeaterWithoutCurrent() {
    Appliance iron = SampleMachines.IRON;
    assertEquals(8.7, Forecasts.of(iron, "heater.current"), 0.05);
    assertEquals(0, Forecasts.of(iron, "heater.current", 1, "thermostat.open"), 1e-9);
    assertEquals(8.7, Forecasts.of(iron, "heater.current", 1, "thermostat.opens-late"), 0.05);
  }

  /** Of several heaters nobody knows which one it governs. */
  @Test
  void beforeSeveralHeatersItSpeaksForItself() {
    Appliance store =
        Jobs.appliance(
            Jobs.component("upper", "heater"),
            Jobs.component("lower", "heater"),
            Jobs.component("thermostat", "thermostat"));
    assertTrue(Forecasts.of(store, "thermostat.closed-resistance", 1, "thermostat.open") > 1e6);
    assertThrows(
        AssertionError.class, () -> Forecasts.of(store, "upper.current", 1, "thermostat.open"));
  }

  /** That of a refrigerator feeds the compressor; its only heater thaws. */
  @Test
  void besideACompressorItDoesNotFeedTheHeater() {
    Appliance refrigerator =
        Jobs.appliance(
            Jobs.component("defrost-heater", "air-heater"),
            Jobs.component("starter", "start-relay"),
            Jobs.component("thermostat", "thermostat"));
    assertTrue(
        Forecasts.of(refrigerator, "thermostat.closed-resistance", 1, "thermostat.open") > 1e6);
    assertThrows(
        AssertionError.class,
        () -> Forecasts.of(refrigerator, "defrost-heater.current", 1, "thermostat.open"));
  }

  /** In order 3 s to 15 s after the boil; a stuck one boils on, one that is early never boils. */
  @Test
  void aSteamSwitchThatSticksBoilsOn() {
    double usual = Forecasts.of(MACHINE, "steam.boil-off-time");
    assertTrue(usual > 3 && usual < 15);
    assertTrue(Forecasts.of(MACHINE, "steam.boil-off-time", 0.1, "steam.stuck") > 30);
    assertEquals(0, at("steam.boil-off-time", "steam.opens-early"), 1e-9);
    assertTrue(at("steam.closed-resistance", "steam.dead") > 1e6);
  }

  /** At the middle setting on for 0.25 to 0.55 in periods of 10 s to 60 s. */
  @Test
  void aRegulatorIsOnForMoreOrForNothing() {
    double share = Forecasts.of(MACHINE, "regulator.on-share");
    double period = Forecasts.of(MACHINE, "regulator.period");
    assertTrue(share > 0.25 && share < 0.55 && period > 10 && period < 60);
    assertEquals(1, at("regulator.on-share", "regulator.contact-welded"), 1e-9);
    assertTrue(at("regulator.open-resistance", "regulator.contact-welded") < 0.5);
    assertTrue(at("regulator.on-share", "regulator.drifts") > 0.6);
    assertTrue(at("regulator.period", "regulator.drifts") > 60);
    assertTrue(at("regulator.on-share", "regulator.contact-burnt") < 0.2);
    assertTrue(at("regulator.closed-resistance", "regulator.contact-burnt") > 0.5);
  }

  @Test
  void aFloatSticksOrItsSwitchIsOpen() {
    assertTrue(at("float.float-stuck", "float.stuck") > 0.6);
    assertTrue(at("float.closed-resistance", "float.stuck") < 0.5);
    assertTrue(at("float.float-stuck", "float.open") < 0.2);
    assertTrue(at("float.closed-resistance", "float.open") > 1e6);
  }

  /**
   * The same fault of a thermostat lets what it feeds run too long or too short: by the balance of
   * heat a heater that runs too long gets too hot, a compressor too cold.
   */
  @ParameterizedTest
  @CsvSource({
    "opens-late, too-hot, too-cold-inside",
    "welded, too-hot, too-cold-inside",
    "opens-early, heats-slowly, too-warm-inside",
    "open, stays-cold, too-warm-inside"
  })
  void whatColdAndHeatMakeOfTheSameFault(String fault, String heats, String cools) {
    Appliance refrigerator =
        Jobs.appliance(
            Jobs.component("starter", "start-relay"), Jobs.component("thermostat", "thermostat"));
    Set<String> ofHeat = symptoms(SampleMachines.IRON, "thermostat." + fault);
    Set<String> ofCold = symptoms(refrigerator, "thermostat." + fault);
    assertTrue(ofHeat.contains(heats) && !ofHeat.contains(cools), ofHeat.toString());
    assertTrue(ofCold.contains(cools) && !ofCold.contains(heats), ofCold.toString());
  }

  private static Set<String> symptoms(Appliance machine, String fault) {
    return new ElectricalModule()
        .parts().faultModels(machine).stream()
            .flatMap(model -> model.faults().stream())
            .filter(each -> each.key().equals(fault))
            .flatMap(each -> each.symptoms().stream())
            .map(FaultSymptom::symptom)
            .collect(Collectors.toSet());
  }
}

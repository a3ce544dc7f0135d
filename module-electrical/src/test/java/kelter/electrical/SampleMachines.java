package kelter.electrical;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;

/** Whole made-up machines, one for each path through the fault models. */
public final class SampleMachines {

  /** A machine that heats water. */
  public static final Appliance WASHER =
      Jobs.appliance(
          "50 Hz",
          Jobs.heater(),
          Jobs.component("link", "thermal-link"),
          coil("relay", "relay", 200),
          Jobs.sensor(),
          Jobs.component("supply", "supply"),
          Jobs.component("cord", "supply-cord"));

  /** A machine that heats air with two elements. */
  public static final Appliance DRYER =
      Jobs.appliance(
          Jobs.component(
              "air-heater",
              "air-heater",
              Optional.of(Quantity.of(2.4, "kW", QuantityKind.POWER)),
              Map.of("elements", Quantity.of(2, "1", QuantityKind.RATIO))),
          Jobs.component("link", "thermal-link"),
          Jobs.component("other-link", "thermal-link"));

  /** A machine with a capacitor motor, a door switch and a valve. */
  public static final Appliance MOTOR =
      Jobs.appliance(
          Jobs.motor(),
          Jobs.component(
              "capacitor",
              "run-capacitor",
              Optional.empty(),
              Map.of("capacitance", Quantity.of(16, "uF", QuantityKind.CAPACITANCE))),
          Jobs.component("cord", "supply-cord"),
          Jobs.component("door", "door-switch"),
          coil("valve", "solenoid", 3800));

  /** A made-up machine that heats nothing, with all that controls, switches and cools. */
  public static final Appliance CONTROLS =
      Jobs.appliance(
          Jobs.component("board", "control-board"),
          Jobs.component("timer", "electronics"),
          Jobs.component("harness", "harness"),
          Jobs.component("cord", "supply-cord"),
          Jobs.component("switch", "switch"),
          Jobs.component("selector", "selector-switch"),
          Jobs.component("regulator", "energy-regulator"),
          Jobs.component("thermostat", "thermostat"),
          Jobs.component("steam", "steam-switch"),
          Jobs.component("tilt", "tilt-switch"),
          Jobs.component("float", "float-switch"),
          Jobs.component("starter", "start-relay"),
          Jobs.component("overload", "overload-protector"),
          Jobs.component("fuse", "fuse"),
          Jobs.component("lamp", "lamp"),
          Jobs.component("base", "base-connector"),
          Jobs.component("link", "thermal-link"),
          Jobs.component("latch", "latch"),
          Jobs.component("tariff", "tariff-switch"),
          Jobs.component("humidity", "humidity-sensor"),
          Jobs.component("ice", "defrost-sensor"),
          Jobs.component("clock", "defrost-timer"));

  /** A machine with one heater that a thermostat governs. */
  public static final Appliance IRON =
      Jobs.appliance(Jobs.heater(), Jobs.component("thermostat", "thermostat"));

  private SampleMachines() {}

  private static Component coil(String id, String kind, double ohm) {
    return Jobs.component(
        id,
        kind,
        Optional.empty(),
        Map.of("coil-resistance", Quantity.of(ohm, "Ohm", QuantityKind.RESISTANCE)));
  }

  /** All of them. */
  public static List<Appliance> all() {
    List<Appliance> all = new ArrayList<>(List.of(WASHER, DRYER, MOTOR, CONTROLS, IRON));
    all.addAll(DriveMachines.all());
    return all;
  }
}

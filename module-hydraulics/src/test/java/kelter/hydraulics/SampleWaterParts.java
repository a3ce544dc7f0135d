package kelter.hydraulics;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Nameplate;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.core.source.Standing;

/** Machines for the tests with the small parts that water runs through. */
public final class SampleWaterParts {

  private static final Source INVENTED = new Source("made up for tests", Standing.INVENTED);
  private static final QuantityKind PULSES = QuantityKind.of("pulses for each litre", "{pulse}/L");

  private SampleWaterParts() {}

  /** A machine of each kind that has such parts. */
  public static List<Appliance> all() {
    return List.of(
        machine("espresso-machine", brewing()),
        machine("espresso-machine", List.of(part("group-screen"))),
        machine(
            "espresso-machine",
            parts(
                "pressure-switch", "level-probe", "vacuum-breaker", "steam-wand", "relief-valve")),
        machine("espresso-machine", parts("group-gasket", "o-ring")),
        machine("iron", parts("steam-path", "drip-valve", "tank")),
        machine(
            "storage-water-heater",
            parts("tank", "dip-tube", "mixing-valve", "anode", "relief-valve", "expansion")),
        machine("dehumidifier", parts("tank", "tray")),
        machine("other", parts("tank", "drip-tray")),
        machine(
            "instantaneous-water-heater",
            parts("flow-sensor", "flow-switch", "shower-head", "pressure-disc", "cold-feed")),
        machine("water-boiler", parts("tap", "level-probe")),
        machine("dishwasher", dishwasher()),
        machine("washer-dryer", parts("tub", "dispenser-drawer", "condenser-valve", "fill-hose")),
        machine("washer-extractor", parts("drain-valve", "dosing-pump")),
        machine("glasswasher", List.of(dosing(), part("spray-arm"), part("rinse-pump"))));
  }

  private static List<Component> brewing() {
    return parts(
        "brew-pump", "tank-valve", "over-pressure-valve", "jet", "group-screen", "three-way-valve");
  }

  private static List<Component> dishwasher() {
    List<Component> all =
        new ArrayList<>(
            parts(
                "softener",
                "softener-valve",
                "dispenser-actuator",
                "turbidity-sensor",
                "diverter",
                "sump"));
    all.add(with("flow-sensor", "rated-pulses", Quantity.of(300, "{pulse}/L", PULSES)));
    return all;
  }

  private static Component dosing() {
    return with("dosing-pump", "rated-flow", Quantity.of(50, "mL/min", QuantityKind.FLOW));
  }

  static Appliance machine(String kind, List<Component> components) {
    return new Appliance(kind, "", "", "", Optional.empty(), Nameplate.UNREADABLE, components);
  }

  static List<Component> parts(String... kinds) {
    List<Component> parts = new ArrayList<>();
    for (String kind : kinds) {
      parts.add(part(kind));
    }
    return parts;
  }

  static Component part(String kind) {
    return new Component(kind, kind, Nameplate.UNREADABLE, Map.of(), Map.of(), INVENTED);
  }

  static Component with(String kind, String figure, Quantity value) {
    return new Component(
        kind, kind, Nameplate.UNREADABLE, Map.of(figure, value), Map.of(), INVENTED);
  }
}

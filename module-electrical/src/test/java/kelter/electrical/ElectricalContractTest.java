package kelter.electrical;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.job.Appliance;
import kelter.core.module.CalculationModule;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.testkit.ModuleContract;

class ElectricalContractTest extends ModuleContract {

  @Override
  protected CalculationModule module() {
    return new ElectricalModule();
  }

  @Override
  protected List<Appliance> appliances() {
    return List.of(
        Jobs.appliance(
            Jobs.heater(),
            Jobs.component("link", "thermal-link"),
            Jobs.component(
                "relay",
                "relay",
                Optional.empty(),
                Map.of("coil-resistance", Quantity.of(200, "Ohm", QuantityKind.RESISTANCE))),
            Jobs.sensor(),
            Jobs.component("supply", "supply"),
            Jobs.component("cord", "supply-cord")),
        Jobs.appliance(
            Jobs.component(
                "heater",
                "air-heater",
                Optional.of(Quantity.of(2.4, "kW", QuantityKind.POWER)),
                Map.of("elements", Quantity.of(2, "1", QuantityKind.RATIO))),
            Jobs.component("link", "thermal-link"),
            Jobs.component("other-link", "thermal-link")),
        Jobs.appliance(
            Jobs.motor(),
            Jobs.component(
                "capacitor",
                "run-capacitor",
                Optional.empty(),
                Map.of("capacitance", Quantity.of(16, "uF", QuantityKind.CAPACITANCE))),
            Jobs.component("cord", "supply-cord"),
            Jobs.component("door", "door-switch"),
            Jobs.component(
                "valve",
                "solenoid",
                Optional.empty(),
                Map.of("coil-resistance", Quantity.of(3.8, "kOhm", QuantityKind.RESISTANCE)))),
        Jobs.appliance(Jobs.component("motor", "motor")));
  }
}

package kelter.electrical;

import java.util.ArrayList;
import java.util.List;
import kelter.core.job.Appliance;
import kelter.core.module.CalculationModule;
import kelter.testkit.ModuleContract;

class ElectricalContractTest extends ModuleContract {

  @Override
  protected CalculationModule module() {
    return new ElectricalModule();
  }

  @Override
  protected boolean isShipped() {
    return true;
  }

  @Override
  protected List<Appliance> appliances() {
    List<Appliance> all = new ArrayList<>(SampleMachines.all());
    all.add(Jobs.appliance(Jobs.component("motor", "motor")));
    all.add(Jobs.appliance(Jobs.heater()));
    all.add(Jobs.appliance(Jobs.component("cord", "supply-cord")));
    all.add(
        Jobs.appliance(
            Jobs.component("heater", "heater"),
            Jobs.component("air-heater", "air-heater"),
            Jobs.component("cord", "supply-cord"),
            Jobs.component("other-cord", "supply-cord")));
    all.add(DriveMachines.TURNTABLE);
    all.add(
        Jobs.appliance(
            Jobs.component("burner", "gas-part"),
            Jobs.component("pipes", "refrigerant-circuit"),
            Jobs.component("outlet", "fixed-wiring"),
            Jobs.component("tube", "high-voltage-capacitor")));
    return all;
  }
}

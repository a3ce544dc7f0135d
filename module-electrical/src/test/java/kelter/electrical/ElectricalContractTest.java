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
    return all;
  }
}

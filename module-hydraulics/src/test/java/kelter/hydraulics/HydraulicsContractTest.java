package kelter.hydraulics;

import java.util.ArrayList;
import java.util.List;
import kelter.core.job.Appliance;
import kelter.core.module.CalculationModule;
import kelter.testkit.ModuleContract;

/** Holds the module against what every module must keep. */
class HydraulicsContractTest extends ModuleContract {

  @Override
  protected CalculationModule module() {
    return new HydraulicsModule();
  }

  @Override
  protected List<Appliance> appliances() {
    List<Appliance> all = new ArrayList<>(SampleMachines.all());
    all.addAll(AirSamples.all());
    all.addAll(SampleWaterParts.all());
    return all;
  }
}

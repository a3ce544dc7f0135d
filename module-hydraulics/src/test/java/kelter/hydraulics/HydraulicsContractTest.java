package kelter.hydraulics;

import java.util.List;
import java.util.stream.Stream;
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
    return Stream.concat(SampleMachines.all().stream(), AirSamples.all().stream()).toList();
  }
}

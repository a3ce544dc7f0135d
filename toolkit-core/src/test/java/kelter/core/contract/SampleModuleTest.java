package kelter.core.contract;

import java.util.List;
import kelter.core.job.Appliance;
import kelter.core.module.CalculationModule;
import kelter.testkit.ModuleContract;

/** A module that keeps the contract passes the kit. */
class SampleModuleTest extends ModuleContract {

  @Override
  protected CalculationModule module() {
    return new SampleModule();
  }

  @Override
  protected List<Appliance> appliances() {
    return List.of(SampleModule.appliance());
  }
}

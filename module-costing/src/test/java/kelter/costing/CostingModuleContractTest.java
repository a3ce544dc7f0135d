package kelter.costing;

import java.util.List;
import kelter.core.job.Appliance;
import kelter.core.module.CalculationModule;
import kelter.testkit.ModuleContract;

/** The module keeps the contract. */
class CostingModuleContractTest extends ModuleContract {

  @Override
  protected CalculationModule module() {
    return new CostingModule();
  }

  @Override
  protected boolean isShipped() {
    return true;
  }

  @Override
  protected List<Appliance> appliances() {
    return List.of();
  }
}

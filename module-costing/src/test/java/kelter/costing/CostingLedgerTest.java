package kelter.costing;

import kelter.core.module.CalculationModule;
import kelter.testkit.ledger.ModuleLedger;

/** Holds the ledger of the module against its calculations and tests. */
class CostingLedgerTest extends ModuleLedger {

  @Override
  protected CalculationModule module() {
    return new CostingModule();
  }
}

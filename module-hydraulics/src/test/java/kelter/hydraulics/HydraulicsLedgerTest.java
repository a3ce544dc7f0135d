package kelter.hydraulics;

import kelter.core.module.CalculationModule;
import kelter.testkit.ledger.ModuleLedger;

/** Holds the ledger of the module against its calculations and tests. */
class HydraulicsLedgerTest extends ModuleLedger {

  @Override
  protected CalculationModule module() {
    return new HydraulicsModule();
  }
}

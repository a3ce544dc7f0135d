package kelter.costing;

import java.util.List;
import java.util.Optional;
import kelter.core.module.About;
import kelter.core.module.Calculation;
import kelter.core.module.CalculationModule;
import kelter.core.option.LearnedLives;
import kelter.core.option.Weigher;
import kelter.costing.life.RemainingLife;
import kelter.costing.money.AnnualCost;
import kelter.costing.money.PayBack;
import kelter.costing.money.RealRate;
import kelter.costing.money.RepairOrReplace;
import kelter.costing.money.SinglePresentValue;
import kelter.costing.money.UniformPresentValue;
import kelter.costing.shop.PriceFloor;
import kelter.costing.shop.SparesStock;
import kelter.costing.use.CarbonOfReplacing;
import kelter.costing.use.LifeAtUse;
import kelter.costing.use.RunningCost;
import kelter.costing.weigh.LifecycleWeigher;

/** Lifetimes, cash flow and the choice between mending and replacing. */
public final class CostingModule implements CalculationModule {

  private final Weigher weigher = new LifecycleWeigher(LifecycleWeigher.DRAWS, LearnedLives.NONE);

  /** Made when somebody asks for a calculation by name: weighing needs none. */
  private static final class Calculations {

    static final List<Calculation> ALL =
        List.of(
            RemainingLife.weibullCalculation(),
            RemainingLife.applianceCalculation(),
            SinglePresentValue.calculation(),
            UniformPresentValue.calculation(),
            AnnualCost.calculation(),
            RepairOrReplace.calculation(),
            RealRate.calculation(),
            PayBack.calculation(),
            RunningCost.calculation(),
            LifeAtUse.calculation(),
            CarbonOfReplacing.calculation(),
            PriceFloor.calculation(),
            SparesStock.calculation());

    private Calculations() {}
  }

  /** The module; it keeps nothing between calls. */
  public CostingModule() {
    // Nothing to prepare.
  }

  @Override
  public About about() {
    return new About("costing", "Repair or replace: lifetimes, cash flow, options", "0.1.0");
  }

  @Override
  public List<Calculation> calculations() {
    return Calculations.ALL;
  }

  @Override
  public Optional<Weigher> weigher() {
    return Optional.of(weigher);
  }
}

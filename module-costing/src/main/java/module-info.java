/**
 * What a repair, a new machine or doing nothing costs over the years that are left.
 *
 * <p>Lifetimes, cash flow and the options of a diagnosed job. It depends on the core alone, keeps
 * nothing between calls and never touches the disk.
 *
 * @provides kelter.core.module.CalculationModule the calculations by name and the weigher of
 *     options
 */
module kelter.costing {
  requires transitive kelter.core;
  requires org.apache.commons.numbers.gamma;
  requires org.apache.commons.rng.api;
  requires org.apache.commons.rng.core;
  requires org.apache.commons.rng.sampling;

  exports kelter.costing;
  exports kelter.costing.life;
  exports kelter.costing.money;
  exports kelter.costing.shop;
  exports kelter.costing.use;

  provides kelter.core.module.CalculationModule with
      kelter.costing.CostingModule;
}

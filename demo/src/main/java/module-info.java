import kelter.core.module.CalculationModule;

/**
 * The demo: a module from outside, as a shop might write one for itself, and programs that use the
 * core alone, without a container and without the command line.
 */
module kelter.demo {
  requires transitive kelter.core;

  exports kelter.demo;

  /** The rooms that lie beside it. */
  uses CalculationModule;

  provides CalculationModule with
      kelter.demo.BeltModule;
}

import kelter.core.module.CalculationModule;

/**
 * The demo: a module from outside, as a shop might write one for itself, and a program that uses
 * the core alone, without a container and without the command line.
 */
module kelter.demo {
  requires transitive kelter.core;

  exports kelter.demo;

  provides CalculationModule with
      kelter.demo.BeltModule;
}

import kelter.core.module.CalculationModule;

/**
 * The demo: programs that use the core alone, without a container and without the command line. The
 * module from outside beside it, in {@code outside-module}, has a build of its own.
 */
module kelter.demo {
  requires transitive kelter.core;

  exports kelter.demo;

  /** The rooms that lie beside it. */
  uses CalculationModule;
}

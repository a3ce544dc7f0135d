/** What goes wrong with the burrs of coffee grinders, as a plugin of Kelter. */
module coffee.grinder {
  requires kelter.core;
  requires org.apache.commons.statistics.descriptive;

  provides kelter.core.module.CalculationModule with
      coffee.grinder.GrinderModule;
}

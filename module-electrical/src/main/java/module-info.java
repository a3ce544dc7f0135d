/**
 * Electrical calculations, checks and fault models for Kelter: heaters, windings, sensors,
 * insulation, earthing, supply and capacitors.
 *
 * <p>The packages of laws can be used by themselves; they know nothing of jobs. The rest is reached
 * through {@link kelter.electrical.ElectricalModule}.
 *
 * @provides kelter.core.module.CalculationModule what this module adds to the core
 */
module kelter.electrical {
  requires transitive kelter.core;

  exports kelter.electrical;
  exports kelter.electrical.capacitor;
  exports kelter.electrical.conductor;
  exports kelter.electrical.drive;
  exports kelter.electrical.heater;
  exports kelter.electrical.protection;
  exports kelter.electrical.sensor;
  exports kelter.electrical.supply;
  exports kelter.electrical.winding;

  provides kelter.core.module.CalculationModule with
      kelter.electrical.ElectricalModule;
}

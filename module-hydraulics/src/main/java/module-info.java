/**
 * Water and air in an appliance: their properties, hoses and ducts, jets, pumps and fans, the
 * operating point of a pump in its circuit, and what faults make of it.
 *
 * <p>It needs the core alone and is built with plain constructors.
 *
 * @provides kelter.core.module.CalculationModule the module as the core finds it
 */
module kelter.hydraulics {
  requires transitive kelter.core;

  exports kelter.hydraulics;
  exports kelter.hydraulics.air;
  exports kelter.hydraulics.circuit;
  exports kelter.hydraulics.drain;
  exports kelter.hydraulics.suction;
  exports kelter.hydraulics.spray;
  exports kelter.hydraulics.fill;
  exports kelter.hydraulics.hotwater;
  exports kelter.hydraulics.level;
  exports kelter.hydraulics.measuring;
  exports kelter.hydraulics.pipe;
  exports kelter.hydraulics.pump;
  exports kelter.hydraulics.water;

  provides kelter.core.module.CalculationModule with
      kelter.hydraulics.HydraulicsModule;
}

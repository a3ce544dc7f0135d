package kelter.hydraulics;

import java.util.ArrayList;
import java.util.List;
import kelter.core.module.Part;
import kelter.core.module.Parts;
import kelter.hydraulics.brew.BrewWater;
import kelter.hydraulics.dosing.DispenserActuator;
import kelter.hydraulics.dosing.DosingPump;
import kelter.hydraulics.drainvalve.DrainValve;
import kelter.hydraulics.flowmeter.FlowSensor;
import kelter.hydraulics.flowmeter.FlowSwitch;
import kelter.hydraulics.leak.Tank;
import kelter.hydraulics.leak.Vessel;
import kelter.hydraulics.onefault.BoilerParts;
import kelter.hydraulics.onefault.IronParts;
import kelter.hydraulics.onefault.SafetyGroup;
import kelter.hydraulics.onefault.StoreParts;
import kelter.hydraulics.outlet.Outlets;
import kelter.hydraulics.outlet.ShowerParts;
import kelter.hydraulics.outlet.Tap;
import kelter.hydraulics.softening.Softening;

/** The small parts that water runs through, made once. */
final class WaterParts {

  private static final List<Part> SMALL =
      List.of(
          Vessel.fillHose(),
          Vessel.tub(),
          Vessel.sump(),
          Vessel.ring(),
          Vessel.groupGasket(),
          Vessel.tray(),
          Vessel.dripTray(),
          Vessel.pressureDisc(),
          new Tank(),
          new BrewWater(),
          BoilerParts.pressureSwitch(),
          BoilerParts.levelProbe(),
          BoilerParts.vacuumBreaker(),
          BoilerParts.steamWand(),
          IronParts.steamPath(),
          IronParts.dripValve(),
          StoreParts.dipTube(),
          StoreParts.mixingValve(),
          StoreParts.anode(),
          SafetyGroup.reliefValve(),
          SafetyGroup.expansion(),
          new FlowSensor(),
          FlowSwitch.part(),
          new DosingPump(),
          new DispenserActuator(),
          new DrainValve(),
          new Softening(),
          ShowerParts.showerHead(),
          Outlets.sprayArm(),
          Outlets.diverter(),
          Outlets.dispenserDrawer(),
          Outlets.turbiditySensor(),
          Outlets.condenserValve(),
          ShowerParts.coldFeed(),
          Outlets.rinsePump(),
          new Tap());

  private WaterParts() {}

  /** Some parts and behind them the small ones. */
  static Parts with(Part... first) {
    List<Part> all = new ArrayList<>(List.of(first));
    all.addAll(SMALL);
    return new Parts(all);
  }
}

package kelter.electrical;

import java.util.List;
import kelter.core.check.Check;
import kelter.core.diagnosis.FaultModel;
import kelter.core.job.Appliance;
import kelter.core.module.About;
import kelter.core.module.Calculation;
import kelter.core.module.CalculationModule;
import kelter.core.vocabulary.ComponentKind;
import kelter.electrical.capacitor.CapacitorDischarge;
import kelter.electrical.capacitor.StoredEnergy;
import kelter.electrical.check.ElectricalChecks;
import kelter.electrical.component.Electrical;
import kelter.electrical.conductor.ConductorResistance;
import kelter.electrical.conductor.CopperResistance;
import kelter.electrical.conductor.LeadNull;
import kelter.electrical.conductor.TemperatureRise;
import kelter.electrical.conductor.WireGauge;
import kelter.electrical.fault.HeatingModel;
import kelter.electrical.heater.AlloyResistance;
import kelter.electrical.heater.HeatUp;
import kelter.electrical.heater.HeaterResistance;
import kelter.electrical.heater.PowerInputBand;
import kelter.electrical.heater.ResistivePower;
import kelter.electrical.protection.InsulationLimit;
import kelter.electrical.protection.ProtectiveConductorLimit;
import kelter.electrical.sensor.BetaThermistor;
import kelter.electrical.sensor.PlatinumThermometer;
import kelter.electrical.sensor.SteinhartHart;

/** Heaters, windings, sensors, insulation, earthing, supply and capacitors. */
public final class ElectricalModule implements CalculationModule {

  private static final List<Calculation> CALCULATIONS =
      List.of(
          HeaterResistance.CALCULATION,
          PowerInputBand.CALCULATION,
          AlloyResistance.CALCULATION,
          ResistivePower.CALCULATION,
          HeatUp.TIME,
          HeatUp.POWER,
          LeadNull.CALCULATION,
          ConductorResistance.CALCULATION,
          WireGauge.CALCULATION,
          CopperResistance.CALCULATION,
          TemperatureRise.CALCULATION,
          CapacitorDischarge.CALCULATION,
          StoredEnergy.CALCULATION,
          BetaThermistor.CALCULATION,
          SteinhartHart.CALCULATION,
          PlatinumThermometer.RESISTANCE,
          PlatinumThermometer.TEMPERATURE,
          InsulationLimit.CALCULATION,
          ProtectiveConductorLimit.CALCULATION);

  /** Made by the service loader, or by hand. */
  public ElectricalModule() {}

  @Override
  public About about() {
    return new About(
        "electrical", "heaters, windings, sensors, insulation, earthing, supply", "0.1.0");
  }

  @Override
  public List<Calculation> calculations() {
    return CALCULATIONS;
  }

  @Override
  public List<ComponentKind> componentKinds() {
    return Electrical.kinds();
  }

  @Override
  public List<Check> checks() {
    return ElectricalChecks.ALL;
  }

  @Override
  public List<FaultModel> faultModels(Appliance appliance) {
    return HeatingModel.of(appliance);
  }
}

package kelter.electrical;

import java.util.List;
import kelter.core.law.CopperResistance;
import kelter.core.law.PowerInputBand;
import kelter.core.module.About;
import kelter.core.module.Calculation;
import kelter.core.module.CalculationModule;
import kelter.core.module.Parts;
import kelter.core.safety.Caution;
import kelter.electrical.belt.Belt;
import kelter.electrical.brushmotor.BrushedMotor;
import kelter.electrical.brushmotor.Tacho;
import kelter.electrical.brushroll.BrushRoll;
import kelter.electrical.capacitor.CapacitanceFromCurrent;
import kelter.electrical.capacitor.CapacitorDischarge;
import kelter.electrical.capacitor.CapacitorLeakage;
import kelter.electrical.capacitor.CapacitorLeakageLimit;
import kelter.electrical.capacitor.StoredEnergy;
import kelter.electrical.caution.ElectricalCautions;
import kelter.electrical.cold.DefrostSensor;
import kelter.electrical.cold.DefrostTimer;
import kelter.electrical.cold.StartRelay;
import kelter.electrical.compressor.CompressorWinding;
import kelter.electrical.conductor.ConductorResistance;
import kelter.electrical.conductor.LeadNull;
import kelter.electrical.conductor.TemperatureRise;
import kelter.electrical.conductor.WireGauge;
import kelter.electrical.control.ControlBoard;
import kelter.electrical.control.Electronics;
import kelter.electrical.control.HumiditySensor;
import kelter.electrical.control.TariffSwitch;
import kelter.electrical.door.Door;
import kelter.electrical.door.DoorLock;
import kelter.electrical.doorswitch.DoorSwitch;
import kelter.electrical.drive.BearingFrequencies;
import kelter.electrical.drive.BeltSlip;
import kelter.electrical.drive.BeltTension;
import kelter.electrical.drive.BrushLife;
import kelter.electrical.drive.DampedSwing;
import kelter.electrical.drum.DrumBearing;
import kelter.electrical.drum.Roller;
import kelter.electrical.fanwheel.FanWheel;
import kelter.electrical.heater.AlloyResistance;
import kelter.electrical.heater.CurrentInputBand;
import kelter.electrical.heater.HeatUp;
import kelter.electrical.heater.HeaterConnection;
import kelter.electrical.heater.HeaterResistance;
import kelter.electrical.heater.LoadHeatCapacity;
import kelter.electrical.heater.ResistivePower;
import kelter.electrical.heater.ScaleOnHeater;
import kelter.electrical.heating.Heater;
import kelter.electrical.heating.Heating;
import kelter.electrical.heating.Leaking;
import kelter.electrical.heating.MainsSupply;
import kelter.electrical.heating.Relay;
import kelter.electrical.heating.TemperatureSensor;
import kelter.electrical.heating.ThermalLink;
import kelter.electrical.hob.ElectronicsFan;
import kelter.electrical.hob.GlassTop;
import kelter.electrical.hob.InductionCoil;
import kelter.electrical.hob.Pan;
import kelter.electrical.inverter.InverterDrive;
import kelter.electrical.inverter.LinkCharge;
import kelter.electrical.lamp.Lamp;
import kelter.electrical.latch.Latch;
import kelter.electrical.motor.Motor;
import kelter.electrical.outofreach.OutOfReach;
import kelter.electrical.protection.GroundFaultInterrupter;
import kelter.electrical.protection.InsulationLimit;
import kelter.electrical.protection.LeakageCurrent;
import kelter.electrical.protection.LeakageLimit;
import kelter.electrical.protection.NorthAmericanLimit;
import kelter.electrical.protection.ProtectiveConductorLimit;
import kelter.electrical.regulating.EnergyRegulator;
import kelter.electrical.regulating.FloatSwitch;
import kelter.electrical.regulating.SteamSwitch;
import kelter.electrical.regulating.Thermostat;
import kelter.electrical.seal.Seal;
import kelter.electrical.sensor.BetaThermistor;
import kelter.electrical.sensor.Divider;
import kelter.electrical.sensor.PlatinumThermometer;
import kelter.electrical.sensor.PulseSensor;
import kelter.electrical.sensor.SensorLine;
import kelter.electrical.sensor.SteinhartHart;
import kelter.electrical.solenoid.Solenoid;
import kelter.electrical.supply.CircuitLoad;
import kelter.electrical.supply.GlowingConnection;
import kelter.electrical.supply.SourceImpedance;
import kelter.electrical.supply.SupplyRange;
import kelter.electrical.supplycord.SupplyCord;
import kelter.electrical.suspension.AnchorBolts;
import kelter.electrical.suspension.Damper;
import kelter.electrical.suspension.ImbalanceSwitch;
import kelter.electrical.suspension.Spring;
import kelter.electrical.switching.BaseConnector;
import kelter.electrical.switching.Fuse;
import kelter.electrical.switching.HandSwitch;
import kelter.electrical.switching.Harness;
import kelter.electrical.switching.OverloadProtector;
import kelter.electrical.switching.SelectorSwitch;
import kelter.electrical.switching.TiltSwitch;
import kelter.electrical.winding.CoilImpedance;
import kelter.electrical.winding.HalfWave;
import kelter.electrical.winding.HalfWaveCoil;
import kelter.electrical.winding.PhaseUnbalance;
import kelter.electrical.winding.PowerFactor;
import kelter.electrical.winding.ShortedTurns;
import kelter.electrical.winding.Slip;
import kelter.electrical.winding.SolenoidCurrent;
import kelter.electrical.winding.StarDelta;

/** Heaters, windings, sensors, insulation, earthing, supply and capacitors. */
public final class ElectricalModule implements CalculationModule {

  /** Made when somebody asks for them, since each costs time at the start. */
  private static final class Calculations {
    static final List<Calculation> ALL =
        List.of(
            HeaterResistance.calculation(),
            PowerInputBand.calculation(),
            CurrentInputBand.calculation(),
            ScaleOnHeater.calculation(),
            AlloyResistance.calculation(),
            ResistivePower.calculation(),
            HeatUp.timeCalculation(),
            HeatUp.powerCalculation(),
            LoadHeatCapacity.calculation(),
            LeadNull.calculation(),
            ConductorResistance.calculation(),
            WireGauge.calculation(),
            CopperResistance.calculation(),
            TemperatureRise.calculation(),
            CapacitorDischarge.calculation(),
            StoredEnergy.calculation(),
            BetaThermistor.calculation(),
            SteinhartHart.calculation(),
            PlatinumThermometer.resistanceCalculation(),
            PlatinumThermometer.temperatureCalculation(),
            InsulationLimit.calculation(),
            ProtectiveConductorLimit.calculation(),
            HeaterConnection.calculation(),
            CapacitanceFromCurrent.calculation(),
            Divider.calculation(),
            SensorLine.calculation(),
            PulseSensor.speedCalculation(),
            PulseSensor.flowCalculation(),
            PhaseUnbalance.voltagesCalculation(),
            PhaseUnbalance.windingsCalculation(),
            StarDelta.calculation(),
            Slip.calculation(),
            ShortedTurns.calculation(),
            ShortedTurns.byImpedanceCalculation(),
            PowerFactor.calculation(),
            CoilImpedance.calculation(),
            HalfWave.calculation(),
            SolenoidCurrent.calculation(),
            HalfWaveCoil.calculation(),
            CapacitorLeakage.calculation(),
            CapacitorLeakageLimit.calculation(),
            LeakageLimit.calculation(),
            LeakageCurrent.calculation(),
            NorthAmericanLimit.calculation(),
            GroundFaultInterrupter.calculation(),
            SourceImpedance.calculation(),
            SourceImpedance.jointCalculation(),
            GlowingConnection.calculation(),
            SupplyRange.calculation(),
            CircuitLoad.calculation(),
            BeltTension.calculation(),
            BeltSlip.calculation(),
            BrushLife.calculation(),
            BearingFrequencies.calculation(),
            DampedSwing.calculation());

    private Calculations() {}
  }

  /** Made by the service loader, or by hand. */
  public ElectricalModule() {}

  @Override
  public About about() {
    return new About(
        "electrical", "heaters, windings, sensors, insulation, earthing, supply", "0.1.0");
  }

  @Override
  public List<Calculation> calculations() {
    return Calculations.ALL;
  }

  @Override
  public Parts parts() {
    return Parts.of(
        Heater.ofWater(),
        Heater.ofAir(),
        new ThermalLink(),
        new Relay(),
        new TemperatureSensor(),
        new MainsSupply(),
        new Heating(),
        new Motor(),
        new SupplyCord(),
        new LinkCharge(),
        new DoorSwitch(),
        new Solenoid(),
        new ControlBoard(),
        new Electronics(),
        new Thermostat(),
        new SteamSwitch(),
        new EnergyRegulator(),
        new FloatSwitch(),
        HandSwitch.part(),
        SelectorSwitch.part(),
        TiltSwitch.part(),
        Fuse.part(),
        BaseConnector.part(),
        Harness.part(),
        OverloadProtector.part(),
        new StartRelay(),
        new DefrostSensor(),
        new DefrostTimer(),
        new Lamp(),
        new Latch(),
        new HumiditySensor(),
        new TariffSwitch(),
        new Leaking(),
        new BrushedMotor(),
        new Tacho(),
        new InverterDrive(),
        new InductionCoil(),
        new ElectronicsFan(),
        new GlassTop(),
        new Pan(),
        new Belt(),
        new DrumBearing(),
        Roller.ofDrum(),
        Roller.ofBelt(),
        Roller.ofTurntable(),
        Roller.ofCoupler(),
        new Damper(),
        new Spring(),
        new ImbalanceSwitch(),
        new AnchorBolts(),
        new CompressorWinding(),
        new BrushRoll(),
        FanWheel.ofFan(),
        FanWheel.ofCondenser(),
        new Door(),
        new DoorLock(),
        Seal.ofDoor(),
        Seal.ofFlange(),
        Seal.ofSmallMachine(),
        Seal.ofBody(),
        Seal.ofDrum(),
        new OutOfReach());
  }

  @Override
  public List<Caution> cautions() {
    return ElectricalCautions.ALL;
  }
}

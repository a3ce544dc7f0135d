package kelter.hydraulics;

import java.util.List;
import kelter.core.job.Instrument;
import kelter.core.module.About;
import kelter.core.module.Calculation;
import kelter.core.module.CalculationModule;
import kelter.core.module.Parts;
import kelter.core.safety.Caution;
import kelter.hydraulics.air.AirHeat;
import kelter.hydraulics.air.BlockedAir;
import kelter.hydraulics.air.CompressorDuty;
import kelter.hydraulics.air.DefrostEnergy;
import kelter.hydraulics.air.Drying;
import kelter.hydraulics.air.DuctLoss;
import kelter.hydraulics.air.FanLaws;
import kelter.hydraulics.air.GasketLeak;
import kelter.hydraulics.air.MoistAir;
import kelter.hydraulics.air.SealedSuction;
import kelter.hydraulics.air.SuctionPower;
import kelter.hydraulics.air.VaneFlow;
import kelter.hydraulics.airway.Coil;
import kelter.hydraulics.airway.Duct;
import kelter.hydraulics.airway.Filter;
import kelter.hydraulics.airway.Flap;
import kelter.hydraulics.caution.HydraulicCautions;
import kelter.hydraulics.circuit.PumpAgainstCircuit;
import kelter.hydraulics.circuit.PumpWithMotor;
import kelter.hydraulics.condensate.CondensatePump;
import kelter.hydraulics.condensate.RunOffDrain;
import kelter.hydraulics.condensate.RunOffHose;
import kelter.hydraulics.dampness.MoistureSensor;
import kelter.hydraulics.drain.DrainTime;
import kelter.hydraulics.drain.HoseBackflow;
import kelter.hydraulics.drain.SiphonFlow;
import kelter.hydraulics.drain.StandpipeOverflow;
import kelter.hydraulics.drainpump.DrainPump;
import kelter.hydraulics.fill.FillPath;
import kelter.hydraulics.fill.FlowCoefficient;
import kelter.hydraulics.fill.JoukowskySurge;
import kelter.hydraulics.found.CrumbTray;
import kelter.hydraulics.found.Room;
import kelter.hydraulics.found.WaveGuideCover;
import kelter.hydraulics.hotwater.FlowHeater;
import kelter.hydraulics.hotwater.MixedWater;
import kelter.hydraulics.hotwater.SteamTemperature;
import kelter.hydraulics.hotwater.StirredStore;
import kelter.hydraulics.hotwater.ThermalExpansion;
import kelter.hydraulics.inletvalve.InletValve;
import kelter.hydraulics.level.AirTrap;
import kelter.hydraulics.level.PressureDecay;
import kelter.hydraulics.levelsensor.LevelSensor;
import kelter.hydraulics.measuring.WaterInstruments;
import kelter.hydraulics.pipe.BlockedBore;
import kelter.hydraulics.pipe.FrictionFactor;
import kelter.hydraulics.pipe.Hose;
import kelter.hydraulics.pipe.TorricelliJet;
import kelter.hydraulics.pump.AffinityLaws;
import kelter.hydraulics.pump.HydraulicPower;
import kelter.hydraulics.pump.ImpellerEstimate;
import kelter.hydraulics.pump.Iso9906Grade;
import kelter.hydraulics.pump.PumpHead;
import kelter.hydraulics.pump.SpecificSpeed;
import kelter.hydraulics.pump.VibrationPump;
import kelter.hydraulics.spray.SprayArm;
import kelter.hydraulics.suction.CriticalSubmergence;
import kelter.hydraulics.suction.NpshAvailable;
import kelter.hydraulics.vacuum.DustBag;
import kelter.hydraulics.vacuum.SuctionHose;
import kelter.hydraulics.vacuum.VacuumBody;
import kelter.hydraulics.washpump.WashPump;
import kelter.hydraulics.water.Water;

/** What the module of hydraulics adds. It keeps nothing between calls. */
public final class HydraulicsModule implements CalculationModule {

  private static final About ABOUT =
      new About("hydraulics", "Water, hoses, pumps, filling and draining, air", "0.1.0");

  /** Made when somebody asks for them, since each costs time at the start. */
  private static final class Calculations {
    static final List<Calculation> ALL =
        List.of(
            Water.calculation(),
            FrictionFactor.calculation(),
            Hose.calculation(),
            BlockedBore.calculation(),
            TorricelliJet.calculation(),
            PumpHead.calculation(),
            PumpAgainstCircuit.curveHeadCalculation(),
            AffinityLaws.calculation(),
            HydraulicPower.calculation(),
            PumpAgainstCircuit.calculation(),
            DrainTime.calculation(),
            SiphonFlow.calculation(),
            HoseBackflow.calculation(),
            NpshAvailable.calculation(),
            NpshAvailable.onsetCalculation(),
            CriticalSubmergence.calculation(),
            SprayArm.calculation(),
            SpecificSpeed.calculation(),
            ImpellerEstimate.calculation(),
            FlowCoefficient.calculation(),
            FillPath.calculation(),
            JoukowskySurge.calculation(),
            AirTrap.pressureByHeightCalculation(),
            AirTrap.heightByPressureCalculation(),
            PressureDecay.calculation(),
            StandpipeOverflow.calculation(),
            Iso9906Grade.calculation(),
            PumpWithMotor.calculation(),
            FanLaws.calculation(),
            AirHeat.calculation(),
            DuctLoss.calculation(),
            BlockedAir.calculation(),
            MoistAir.calculation(),
            Drying.calculation(),
            SuctionPower.calculation(),
            SealedSuction.calculation(),
            VaneFlow.calculation(),
            DefrostEnergy.calculation(),
            GasketLeak.calculation(),
            CompressorDuty.calculation(),
            VibrationPump.calculation(),
            FlowHeater.calculation(),
            MixedWater.calculation(),
            StirredStore.calculation(),
            ThermalExpansion.calculation(),
            SteamTemperature.calculation());

    private Calculations() {}
  }

  /** A module without a memory; there is no need for more than one. */
  public HydraulicsModule() {}

  @Override
  public About about() {
    return ABOUT;
  }

  @Override
  public List<Calculation> calculations() {
    return Calculations.ALL;
  }

  @Override
  public Parts parts() {
    return WaterParts.with(
        new DrainPump(),
        new WashPump(),
        new InletValve(),
        new LevelSensor(),
        new Filter(),
        new Duct(),
        new Flap(),
        new Coil(),
        new SuctionHose(),
        new DustBag(),
        new VacuumBody(),
        new RunOffHose(),
        new RunOffDrain(),
        new CondensatePump(),
        new MoistureSensor(),
        new Room(),
        CrumbTray.part(),
        WaveGuideCover.part());
  }

  @Override
  public List<Instrument> instruments() {
    return WaterInstruments.all();
  }

  @Override
  public List<Caution> cautions() {
    return HydraulicCautions.ALL;
  }
}

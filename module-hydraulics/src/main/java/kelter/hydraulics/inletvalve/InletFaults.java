package kelter.hydraulics.inletvalve;

import static kelter.core.diagnosis.model.Course.chance;
import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import kelter.core.diagnosis.Remedy.Restores;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.Course;
import kelter.core.diagnosis.model.FaultRow;
import kelter.core.diagnosis.model.Work;
import kelter.core.safety.Caution;
import kelter.core.vocabulary.Meaning;
import kelter.core.vocabulary.Symptoms;
import kelter.hydraulics.caution.HydraulicCautions;
import kelter.hydraulics.leak.LeakHunt;
import kelter.hydraulics.pipe.BlockedBore;

/**
 * What can be wrong on the way of the water in. A clogged screen and a kinked hose leave (1 − s)²
 * of the bore at a severity s, at least 1 %; a weak valve keeps 5 % of its flow coefficient at
 * severity 1, a weak supply 8 % of its pressure, a tap that is half shut 4 % of its flow rate; a
 * strong supply has three times the pressure. What is half shut takes pressure only while water
 * flows: at rest the pressure on both sides of it is the same. That, the minutes and the chances of
 * cure are judgement: common practice, no source. The chances of the symptoms are from memory;
 * those in the middle are what machines that are complained of do, also where the regulator still
 * holds the flow rate.
 */
final class InletFaults {

  private static final Work CLEAN_SCREEN =
      Work.byHand(
          "clean-screen",
          "clean the screens in hose and valve",
          12,
          0.95,
          Caution.UNPLUG,
          HydraulicCautions.SUPPLY_PRESSURE);
  private static final Work STRAIGHTEN_HOSE =
      Work.byHand(
          "straighten-hose",
          "lay the fill hose without kinks",
          8,
          0.8,
          Caution.UNPLUG,
          HydraulicCautions.SUPPLY_PRESSURE);
  private static final Work RENEW_HOSE =
      Work.withPart(
          "renew-hose",
          "renew the fill hose",
          15,
          0.95,
          Caution.UNPLUG,
          HydraulicCautions.SUPPLY_PRESSURE);
  private static final Work RENEW_VALVE =
      Work.renewing(
          "renew-valve",
          "renew the inlet valve",
          30,
          0.95,
          Caution.UNPLUG,
          HydraulicCautions.SUPPLY_PRESSURE);
  private static final Work TIGHTEN =
      Work.byHand(
          "seal-connection",
          "renew the washer and tighten the connection",
          10,
          0.75,
          Caution.UNPLUG,
          HydraulicCautions.SUPPLY_PRESSURE);
  private static final Work RAISE_PRESSURE =
      Work.byHand(
          "raise-pressure",
          "have the pressure of the supply put right (reducer, filter, pump of the house)",
          15,
          0.6,
          HydraulicCautions.SUPPLY_PRESSURE,
          HydraulicCautions.HOUSE_PIPES);
  private static final Work OPEN_TAP =
      Work.byHand(
          "open-tap",
          "open the tap and stop valves wholly",
          5,
          0.8,
          HydraulicCautions.SUPPLY_PRESSURE,
          HydraulicCautions.HOUSE_PIPES);
  private static final Work REDUCE_PRESSURE =
      new Work(
          "reduce-pressure",
          "have a pressure reducer or a surge arrester fitted",
          40,
          Restores.FUNCTION,
          true,
          0.9,
          List.of(HydraulicCautions.SUPPLY_PRESSURE, HydraulicCautions.HOUSE_PIPES));

  /** The faults. */
  static final List<FaultRow> ALL =
      List.of(
          starves(fault("screen-clogged", "screen of the inlet valve clogged", 0.06))
              .wears(Wear.DEPOSIT)
              .changes(InletFigure.LOSS.plus(Narrowed.BORE), InletFigure.SCREEN.plus(0.82))
              .curedBy(CLEAN_SCREEN),
          starves(
                  fault(
                      "valve-weak",
                      "inlet valve does not open wholly (diaphragm, pilot hole, weak pull)",
                      0.04))
              .wears(Wear.RUBBER)
              .changes(InletFigure.OPENING.times(0.05))
              .curedBy(RENEW_VALVE),
          fault("supply-weak", "pressure of the supply too low", 0.02)
              .changes(InletFigure.PRESSURE.times(0.08))
              .makes(Symptoms.FILLS_SLOWLY, chance(0.01, 0.07, 0.85))
              .makes(Symptoms.DOES_NOT_FILL, chance(0.01, 0.02, 0.3))
              .makes(Meaning.FILL.symptom(), chance(0.01, 0.05, 0.6))
              .curedBy(RAISE_PRESSURE),
          starves(fault("tap-shut", "tap or stop valve of the supply half shut, or clogged", 0.03))
              .changes(InletFigure.TAP.times(0.04))
              .curedBy(OPEN_TAP),
          fault("supply-strong", "pressure of the supply too high", 0.02)
              .apartFrom("supply-weak")
              .changes(InletFigure.PRESSURE.times(3))
              .makes(Symptoms.LOUD, chance(0.02, 0.3, 0.8))
              .makes(Symptoms.LEAKS, 0, 0.15)
              .makes(Symptoms.RELIEF_DRIPS, 0, 0.5)
              .curedBy(REDUCE_PRESSURE),
          fault("hose-kinked", "fill hose kinked or its stop valve tripped", 0.03)
              .changes(InletFigure.LOSS.plus(Narrowed.BORE), InletFigure.KINK.plus(1))
              .makes(Symptoms.DOES_NOT_FILL, chance(0.01, 0.6, 0.95))
              .makes(Symptoms.FILLS_SLOWLY, chance(0.02, 0.25, 0.3))
              .makes(Meaning.FILL.symptom(), chance(0.01, 0.6, 0.9))
              .makes(Symptoms.STOPS_IN_CYCLE, 0, 0.5)
              .curedBy(STRAIGHTEN_HOSE, RENEW_HOSE),
          fault("leaks-by", "inlet valve does not close", 0.02)
              .wears(Wear.RUBBER)
              .changes(InletFigure.LEAK.plus(1))
              .makes(Symptoms.FILLS_WITHOUT_END, chance(0.05, 0.6, 0.95))
              .makes(Symptoms.WATER_LEFT, chance(0.03, 0.4, 0.7))
              .makes(Symptoms.LEAKS, chance(0.01, 0.1, 0.4))
              .makes(Meaning.FILL.symptom(), 0, 0.3)
              .makes(Meaning.LEAK.symptom(), 0, 0.3)
              .curedBy(RENEW_VALVE),
          fault("connection-leaks", "inlet valve or its connection leaks", 0.01)
              .wears(Wear.RUBBER)
              .changes(LeakHunt.effects())
              .makes(Symptoms.LEAKS, chance(0.1, 0.93, 0.97))
              .makes(Meaning.LEAK.symptom(), chance(0.02, 0.3, 0.5))
              .curedBy(TIGHTEN, RENEW_VALVE));

  private InletFaults() {}

  /** Too little water comes in, then nearly none. */
  private static FaultRow starves(FaultRow row) {
    return row.makes(Symptoms.FILLS_SLOWLY, chance(0.02, 0.5, 0.5))
        .makes(Symptoms.DOES_NOT_FILL, chance(0.01, 0.35, 0.9))
        .makes(Meaning.FILL.symptom(), chance(0.01, 0.5, 0.9))
        .makes(Symptoms.STOPS_IN_CYCLE, 0, 0.5);
  }

  /** The loss coefficient of a bore of which a fault leaves less and less. */
  private enum Narrowed implements Course {
    BORE;

    private static final double LEAST_OPEN = 0.01; // ratio

    @Override
    public double at(double severity) {
      return BlockedBore.lossCoefficient(Math.max(LEAST_OPEN, (1 - severity) * (1 - severity)));
    }
  }
}

package kelter.hydraulics.drainpump;

import static kelter.core.diagnosis.model.Course.chance;
import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.Course;
import kelter.core.diagnosis.model.FaultRow;
import kelter.core.diagnosis.model.Work;
import kelter.core.safety.Caution;
import kelter.core.vocabulary.Meaning;
import kelter.core.vocabulary.Symptoms;
import kelter.hydraulics.caution.HydraulicCautions;
import kelter.hydraulics.pumppart.PumpFaults;
import kelter.hydraulics.pumppart.PumpFigure;

/**
 * What can be wrong on the way of the water out.
 *
 * <p>At severity 1 the drag is twice the rated torque, so that the motor cannot turn; the hose, the
 * check valve and the strainer leave 3 % of the bore; the outlet is 1.2 m too high; nine tenths of
 * the flow escape near the end of a leaking hose, which the pump does not notice. All that is
 * judgement, and so are minutes and chances of cure: common practice, no source. The chances of the
 * symptoms are from memory; where the water stops only near severity 1, those in the middle are
 * what machines that are complained of do, rather than what the flow rate there lets expect.
 */
final class DrainFaults {

  private static final double CLOSED_BORE = 0.97; // ratio

  private static final Work CLEAN_STRAINER =
      byHand(
          "clean-strainer",
          "clean the strainer and the trap",
          12,
          0.95,
          HydraulicCautions.SHARP_IN_SUMP);
  private static final Work CLEAN_PUMP =
      byHand(
          "clean-pump",
          "clear the pump chamber and the vanes",
          25,
          0.9,
          HydraulicCautions.SHARP_IN_SUMP);
  private static final Work RENEW_PUMP =
      Work.renewing(
          "renew-pump",
          "renew the drain pump",
          40,
          0.97,
          Caution.UNPLUG,
          HydraulicCautions.HEAVY_WITH_WATER,
          HydraulicCautions.FLOOD_FROM_SUMP);
  private static final Work CLEAR_HOSE =
      byHand(
          "clear-hose",
          "clear the drain hose, take out kinks",
          20,
          0.85,
          HydraulicCautions.FLOOD_FROM_SUMP);
  private static final Work TIGHTEN_HOSE =
      byHand(
          "tighten-hose",
          "seat the drain hose and tighten its clips",
          15,
          0.7,
          HydraulicCautions.FLOOD_FROM_SUMP);
  private static final Work RENEW_HOSE = withPart("renew-hose", "renew the drain hose");
  private static final Work LOWER_HOSE =
      byHand(
          "lower-hose",
          "lay the hose and its outlet lower",
          20,
          0.9,
          HydraulicCautions.FLOOD_FROM_SUMP);
  private static final Work CLEAN_VALVE =
      byHand(
          "clean-valve",
          "clean the check valve and free its flap",
          20,
          0.8,
          HydraulicCautions.FLOOD_FROM_SUMP);
  private static final Work RENEW_VALVE = withPart("renew-valve", "renew the check valve");

  private static final PumpFaults PUMP = new PumpFaults("drain pump");

  static final List<FaultRow> ALL =
      List.of(
          closed(PUMP.passagesBlocked(0.09, 0.55, 0.25)).curedBy(CLEAN_PUMP, RENEW_PUMP),
          fails(PUMP.impellerSlips(0.03, 0.25)).curedBy(RENEW_PUMP),
          PUMP.internalLeak(0.015)
              .makes(Symptoms.DOES_NOT_DRAIN, chance(0.01, 0.15, 0.95))
              .makes(Symptoms.DRAINS_SLOWLY, chance(0.02, 0.8, 0.3))
              .makes(Symptoms.WATER_LEFT, chance(0.02, 0.4, 0.9))
              .makes(Meaning.DRAIN.symptom(), chance(0.01, 0.4, 0.9))
              .makes(Symptoms.DOES_NOT_SPIN, chance(0.01, 0.3, 0.8))
              .makes(Symptoms.STOPS_IN_CYCLE, chance(0.01, 0.2, 0.6))
              .curedBy(RENEW_PUMP),
          fails(PUMP.drag(0.03, 2, 0.45, 0.85)).curedBy(RENEW_PUMP),
          closed(fault("strainer-clogged", "strainer before the drain pump clogged", 0.08))
              .changes(
                  DrainFigure.STRAINER_CLOSED.plus(CLOSED_BORE),
                  DrainFigure.STRAINER.plus(0.85),
                  PumpFigure.LOUDNESS.plus(0.25))
              .makes(Symptoms.LOUD, chance(0.05, 0.4, 0.6))
              .curedBy(CLEAN_STRAINER),
          closed(fault("hose-clogged", "drain hose clogged or kinked", 0.07))
              .changes(DrainFigure.HOSE_CLOSED.plus(CLOSED_BORE))
              .curedBy(CLEAR_HOSE, RENEW_HOSE),
          fault("lift-too-high", "drain hose laid too high", 0.02)
              .changes(DrainFigure.TOO_HIGH.plus(1.2))
              .makes(Symptoms.DOES_NOT_DRAIN, chance(0.01, 0.08, 0.9))
              .makes(Symptoms.DRAINS_SLOWLY, chance(0.02, 0.5, 0.6))
              .makes(Symptoms.WATER_LEFT, chance(0.02, 0.3, 0.9))
              .makes(Meaning.DRAIN.symptom(), chance(0.01, 0.2, 0.85))
              .makes(Symptoms.DOES_NOT_SPIN, chance(0.01, 0.15, 0.75))
              .curedBy(LOWER_HOSE),
          closed(fault("valve-shut", "check valve stuck shut", 0.02))
              .changes(DrainFigure.VALVE_CLOSED.plus(CLOSED_BORE), DrainFigure.VALVE_HANGS.plus(1))
              .apartFrom("valve-open")
              .curedBy(CLEAN_VALVE, RENEW_VALVE),
          fault("valve-open", "check valve stuck open", 0.02)
              .changes(DrainFigure.VALVE_OPEN.plus(1), DrainFigure.VALVE_HANGS.plus(1))
              .makes(Symptoms.DRAINS_SLOWLY, 0, 0.5)
              .makes(Symptoms.WATER_LEFT, chance(0.05, 0.5, 0.85))
              .makes(Meaning.DRAIN.symptom(), 0, 0.3)
              .makes(Symptoms.SMELLS_FOUL, 0, 0.3)
              .makes(Symptoms.POOR_RESULT, 0, 0.3)
              .curedBy(CLEAN_VALVE, RENEW_VALVE),
          fault("hose-leaks", "drain hose off its nozzle, split or leaking", 0.02)
              .wears(Wear.RUBBER)
              .changes(
                  DrainFigure.ESCAPING.plus(0.9), DrainFigure.TRACKS.plus(Course.early(0, 0.8)))
              .makes(Symptoms.LEAKS, chance(0.1, 0.9, 0.95))
              .makes(Meaning.LEAK.symptom(), chance(0.02, 0.3, 0.6))
              .makes(Symptoms.STOPS_IN_CYCLE, 0, 0.3)
              .curedBy(TIGHTEN_HOSE, RENEW_HOSE),
          stands(PUMP.jammed(" by something that holds its rotor fast", 0.03))
              .curedBy(CLEAN_PUMP, RENEW_PUMP),
          stands(PUMP.windingOpen("winding", 0.02)).curedBy(RENEW_PUMP),
          stands(PUMP.noVoltage(0.02)));

  private DrainFaults() {}

  /** The way of the water gets narrow and closes. */
  private static FaultRow closed(FaultRow row) {
    return row.makes(Symptoms.DOES_NOT_DRAIN, chance(0.01, 0.5, 0.95))
        .makes(Symptoms.DRAINS_SLOWLY, chance(0.02, 0.5, 0.3))
        .makes(Symptoms.WATER_LEFT, chance(0.02, 0.6, 0.95))
        .makes(Meaning.DRAIN.symptom(), chance(0.01, 0.55, 0.9))
        .makes(Symptoms.DOES_NOT_SPIN, chance(0.01, 0.4, 0.85))
        .makes(Symptoms.STOPS_IN_CYCLE, chance(0.01, 0.2, 0.6));
  }

  /** The pump gets weak and stops. */
  private static FaultRow fails(FaultRow row) {
    return row.makes(Symptoms.DOES_NOT_DRAIN, chance(0.01, 0.55, 0.95))
        .makes(Symptoms.DRAINS_SLOWLY, chance(0.02, 0.4, 0.2))
        .makes(Symptoms.WATER_LEFT, chance(0.02, 0.7, 0.95))
        .makes(Meaning.DRAIN.symptom(), chance(0.01, 0.6, 0.9))
        .makes(Symptoms.DOES_NOT_SPIN, chance(0.01, 0.5, 0.85))
        .makes(Symptoms.STOPS_IN_CYCLE, chance(0.01, 0.4, 0.7));
  }

  /** The pump does not turn at any severity. */
  private static FaultRow stands(FaultRow row) {
    return row.makes(Symptoms.DOES_NOT_DRAIN, 0.95)
        .makes(Symptoms.WATER_LEFT, 0.95)
        .makes(Meaning.DRAIN.symptom(), 0.85)
        .makes(Symptoms.DOES_NOT_SPIN, 0.8)
        .makes(Symptoms.STOPS_IN_CYCLE, 0.6);
  }

  private static Work byHand(String id, String title, double minutes, double cure, Caution own) {
    return Work.byHand(id, title, minutes, cure, Caution.UNPLUG, Caution.HOT_WATER, own);
  }

  private static Work withPart(String id, String title) {
    return Work.withPart(
        id, title, 25, 0.95, Caution.UNPLUG, Caution.HOT_WATER, HydraulicCautions.FLOOD_FROM_SUMP);
  }
}

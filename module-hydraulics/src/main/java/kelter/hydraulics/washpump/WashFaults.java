package kelter.hydraulics.washpump;

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
 * What can be wrong in the circuit of the wash water.
 *
 * <p>At severity 1 the drag is 1.4 times the rated torque; the water stands at a quarter of its
 * height and the pump, drawing air, loses 55 % of its head and 35 % of the density; 90 % of the
 * jets are closed; the filter leaves 3 % of the bore; the motor turns at 40 % of its speed; as much
 * water escapes before the jets as one and a half times their area would let out. All that is
 * judgement, and so are minutes and chances of cure: common practice, no source. The chances of the
 * symptoms are from memory; what a clogged filter no longer holds back soils the load before the
 * pressure falls.
 */
final class WashFaults {

  private static final Work CLEAN_PUMP =
      byHand(
          "clean-pump",
          "clear the pump chamber and the vanes",
          35,
          0.9,
          HydraulicCautions.SHARP_IN_FILTER);
  private static final Work CLEAN_FILTER =
      byHand(
          "clean-filter",
          "clean the filter and its seat",
          10,
          0.95,
          HydraulicCautions.SHARP_IN_FILTER);
  private static final Work CLEAN_JETS =
      byHand(
          "clean-jets", "clear and descale the jets", 20, 0.9, HydraulicCautions.SHARP_IN_FILTER);
  private static final Work SET_LEVEL =
      byHand(
          "set-level",
          "find why too little water comes in, and set the level right",
          30,
          0.75,
          HydraulicCautions.FLOOD_FROM_WATER_SIDE);
  private static final Work RENEW_IMPELLER =
      withPart(
          "renew-impeller",
          "renew the impeller and its cover",
          45,
          HydraulicCautions.HEAVY_WITH_WATER);
  private static final Work RENEW_SEAL =
      withPart(
          "renew-seal", "renew shaft seal and bearings", 60, HydraulicCautions.HEAVY_WITH_WATER);
  private static final Work RENEW_CAPACITOR =
      withPart(
          "renew-capacitor",
          "renew the run capacitor or the speed control",
          20,
          HydraulicCautions.RUN_CAPACITOR_RENEWED);
  private static final Work RENEW_PASSAGE =
      withPart(
          "renew-passage",
          "renew feed pipe, joint or arm bearing",
          30,
          HydraulicCautions.FLOOD_FROM_WATER_SIDE);
  private static final Work RENEW_PUMP =
      Work.renewing(
          "renew-pump",
          "renew the wash pump",
          60,
          0.97,
          Caution.UNPLUG,
          HydraulicCautions.RUN_CAPACITOR_RENEWED,
          HydraulicCautions.HEAVY_WITH_WATER,
          HydraulicCautions.FLOOD_FROM_WATER_SIDE);

  private static final PumpFaults PUMP = new PumpFaults("wash pump");

  static final List<FaultRow> ALL =
      List.of(
          PUMP.passagesBlocked(0.04, 0.45, 0.2)
              .makes(Symptoms.POOR_RESULT, chance(0.02, 0.5, 0.97))
              .makes(Meaning.MOTOR.symptom(), 0, 0.3)
              .makes(Symptoms.STOPS_IN_CYCLE, 0, 0.3)
              .makes(Symptoms.HEATS_SLOWLY, 0, 0.3)
              .curedBy(CLEAN_PUMP, RENEW_IMPELLER, RENEW_PUMP),
          PUMP.impellerSlips(0.02, 0.2)
              .makes(Symptoms.POOR_RESULT, chance(0.02, 0.9, 0.97))
              .makes(Symptoms.HEATS_SLOWLY, 0, 0.3)
              .curedBy(RENEW_IMPELLER, RENEW_PUMP),
          PUMP.internalLeak(0.03)
              .makes(Symptoms.POOR_RESULT, chance(0.02, 0.27, 0.85))
              .makes(Symptoms.HEATS_SLOWLY, 0, 0.1)
              .curedBy(RENEW_IMPELLER, RENEW_PUMP),
          PUMP.drag(0.04, 1.4, 0.5, 0.8)
              .makes(Symptoms.POOR_RESULT, chance(0.01, 0.05, 0.25))
              .makes(Meaning.MOTOR.symptom(), chance(0.01, 0.2, 0.6))
              .makes(Symptoms.STOPS_IN_CYCLE, chance(0.01, 0.2, 0.6))
              .curedBy(RENEW_SEAL, RENEW_PUMP),
          fault("low-water", "too little water: the wash pump draws air", 0.07)
              .changes(
                  WashFigure.LEVEL.times(0.25),
                  PumpFigure.HEAD.times(0.45),
                  PumpFigure.DENSITY.times(0.65),
                  PumpFigure.LOUDNESS.plus(0.6))
              .makes(Symptoms.POOR_RESULT, chance(0.02, 0.12, 0.8))
              .makes(Symptoms.LOUD, chance(0.05, 0.35, 0.7))
              .makes(Meaning.FILL.symptom(), 0, 0.4)
              .makes(Meaning.HEAT.symptom(), 0, 0.2)
              .makes(Symptoms.STOPS_IN_CYCLE, 0, 0.3)
              .curedBy(SET_LEVEL),
          fault("jets-clogged", "jets clogged", 0.07)
              .wears(Wear.DEPOSIT)
              .changes(WashFigure.OPEN_JETS.times(0.1))
              .makes(Symptoms.POOR_RESULT, chance(0.02, 0.9, 0.95))
              .makes(Symptoms.LOUD, 0, 0.2)
              .curedBy(CLEAN_JETS),
          fault("inlet-clogged", "filter or inlet of the wash pump clogged", 0.07)
              .changes(
                  WashFigure.FILTER_CLOSED.plus(0.97),
                  WashFigure.FILTER.plus(0.85),
                  WashFigure.STARVING.plus(Course.square(0, 0.4)),
                  PumpFigure.LOUDNESS.plus(0.4))
              .makes(Symptoms.POOR_RESULT, chance(0.05, 0.9, 0.97))
              .makes(Symptoms.LOUD, chance(0.01, 0.1, 0.5))
              .makes(Symptoms.HEATS_SLOWLY, 0, 0.2)
              .makes(Symptoms.DISCOLOURED_WATER, 0, 0.2)
              .curedBy(CLEAN_FILTER),
          fault("slow", "motor of the wash pump slow (capacitor, winding or control)", 0.03)
              .wears(Wear.CAPACITOR)
              .changes(PumpFigure.SPEED.times(0.4))
              .makes(Symptoms.POOR_RESULT, chance(0.02, 0.6, 0.97))
              .makes(Meaning.MOTOR.symptom(), chance(0.02, 0.35, 0.6))
              .makes(Symptoms.STOPS_IN_CYCLE, chance(0.02, 0.35, 0.6))
              .makes(Symptoms.LOUD, 0, 0.4)
              .makes(Symptoms.HEATS_SLOWLY, 0, 0.1)
              .curedBy(RENEW_CAPACITOR, RENEW_PUMP),
          fault("passage-leaks", "water escapes between pump and jets", 0.02)
              .wears(Wear.RUBBER)
              .changes(WashFigure.ESCAPE.plus(1.5))
              .makes(Symptoms.POOR_RESULT, chance(0.02, 0.4, 0.9))
              .makes(Symptoms.LEAKS, 0, 0.2)
              .makes(Symptoms.LOUD, 0, 0.2)
              .curedBy(RENEW_PASSAGE),
          stands(PUMP.jammed(", its rotor held fast", 0.02)).curedBy(CLEAN_PUMP, RENEW_PUMP),
          stands(PUMP.windingOpen("main winding", 0.015)).curedBy(RENEW_PUMP),
          stands(PUMP.noVoltage(0.02)));

  private WashFaults() {}

  /** The pump does not turn at any severity; where it feeds the heater, that stays off. */
  private static FaultRow stands(FaultRow row) {
    return row.makes(Symptoms.POOR_RESULT, 0.95)
        .makes(Meaning.MOTOR.symptom(), 0.5)
        .makes(Symptoms.STOPS_IN_CYCLE, 0.5)
        .makes(Symptoms.STAYS_COLD, 0.3)
        .makes(Meaning.HEAT.symptom(), 0.2);
  }

  private static Work byHand(String id, String title, double minutes, double cure, Caution own) {
    return Work.byHand(id, title, minutes, cure, Caution.UNPLUG, Caution.HOT_WATER, own);
  }

  private static Work withPart(String id, String title, double minutes, Caution own) {
    return Work.withPart(id, title, minutes, 0.9, Caution.UNPLUG, Caution.HOT_WATER, own);
  }
}

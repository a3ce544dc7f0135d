package kelter.hydraulics.brew;

import static kelter.core.diagnosis.model.Course.chance;
import static kelter.core.diagnosis.model.Course.early;
import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.FaultRow;
import kelter.core.diagnosis.model.Work;
import kelter.core.safety.Caution;
import kelter.core.vocabulary.Symptoms;
import kelter.hydraulics.caution.HydraulicCautions;

/**
 * What can be wrong on the way of the brewing water. At severity 1 a worn pump has a quarter of its
 * flow rate and of its pressure; jet and screen leave 5 % open; an over-pressure valve opens at a
 * third of its pressure (it gives way sooner with the years far more often than later); nine tenths
 * of the water leave through the exhaust. That, minutes and chances of cure are judgement: common
 * practice, no source. Chances of symptoms are from memory.
 */
final class BrewFaults {

  private static final Work RENEW_PUMP =
      Work.renewing(
          "renew-brew-pump",
          "renew the brew pump",
          30,
          0.95,
          Caution.UNPLUG,
          HydraulicCautions.VENT_FIRST);
  private static final Work FREE_PUMP =
      Work.byHand(
          "free-brew-pump",
          "descale and free the brew pump",
          25,
          0.6,
          Caution.UNPLUG,
          HydraulicCautions.VENT_FIRST);
  private static final Work PRIME =
      Work.byHand(
          "prime-brew-pump",
          "fill the pump with a syringe and bleed it",
          10,
          0.85,
          HydraulicCautions.VENT_FIRST);
  private static final Work CLEAN_TANK_VALVE =
      Work.byHand("free-tank-valve", "clean and free the valve of the tank", 8, 0.85);
  private static final Work SET_VALVE =
      Work.byHand(
          "set-over-pressure-valve",
          "clean and set the over-pressure valve",
          25,
          0.7,
          HydraulicCautions.VENT_FIRST);
  private static final Work RENEW_VALVE =
      Work.renewing(
          "renew-over-pressure-valve",
          "renew the over-pressure valve",
          30,
          0.95,
          Caution.UNPLUG,
          HydraulicCautions.VENT_FIRST);
  private static final Work CLEAR_JET =
      Work.byHand(
          "clear-jet",
          "descale and clear the jet or valve",
          30,
          0.85,
          HydraulicCautions.VENT_FIRST);
  private static final Work CLEAN_SCREEN =
      Work.byHand(
          "clean-group-screen",
          "unscrew the screen and clean it",
          10,
          0.95,
          HydraulicCautions.VENT_FIRST);
  private static final Work CLEAN_THREE_WAY =
      Work.byHand(
          "clean-three-way-valve",
          "descale the three-way valve",
          40,
          0.7,
          Caution.UNPLUG,
          HydraulicCautions.VENT_FIRST);
  private static final Work RENEW_THREE_WAY =
      Work.renewing(
          "renew-three-way-valve",
          "renew the three-way valve",
          35,
          0.95,
          Caution.UNPLUG,
          HydraulicCautions.VENT_FIRST);

  private BrewFaults() {}

  static List<FaultRow> pump() {
    return List.of(
        fault("worn", "brew pump worn", 0.06)
            .wears(Wear.CLEARANCE)
            .changes(
                BrewFigure.FLOW.times(0.25),
                BrewFigure.PRESSURE.times(0.25),
                BrewFigure.SOUND.plus(0.25))
            .makes(Symptoms.WEAK_FLOW, chance(0.05, 0.78, 0.9))
            .makes(Symptoms.LOUD, chance(0.03, 0.52, 0.8))
            .makes(Symptoms.POOR_RESULT, chance(0.03, 0.31, 0.6))
            .makes(Symptoms.NO_FLOW, chance(0.01, 0.27, 0.6))
            .curedBy(RENEW_PUMP),
        fault("airlock", "air in the brew pump", 0.02)
            .apartFrom("coil-open", "jammed")
            .changes(
                BrewFigure.FLOW.becomes(0.05),
                BrewFigure.PRESSURE.becomes(0.05),
                BrewFigure.SOUND.becomes(0.92),
                BrewFigure.WANTS_PRIMING.becomes(0.9))
            .makes(Symptoms.NO_FLOW, 0.83)
            .makes(Symptoms.LOUD, 0.46)
            .curedBy(PRIME),
        fault("jammed", "brew pump jammed", 0.02)
            .apartFrom("coil-open", "airlock")
            .changes(
                BrewFigure.FLOW.becomes(0),
                BrewFigure.PRESSURE.becomes(0),
                BrewFigure.SOUND.becomes(0.33))
            .makes(Symptoms.NO_FLOW, 0.88)
            .makes(Symptoms.HUMS_ONLY, 0.5)
            .curedBy(FREE_PUMP, RENEW_PUMP),
        fault("coil-open", "coil of the brew pump open", 0.02)
            .wears(Wear.WINDING)
            .changes(
                BrewFigure.FLOW.becomes(0),
                BrewFigure.PRESSURE.becomes(0),
                BrewFigure.SOUND.becomes(0),
                BrewFigure.COIL_OPEN.becomes(0.97))
            .makes(Symptoms.NO_FLOW, 0.94)
            .curedBy(RENEW_PUMP));
  }

  static FaultRow tankValve() {
    return fault("stuck", "valve of the water tank stuck", 0.01)
        .wears(Wear.DEPOSIT)
        .changes(BrewFigure.SUCTION.times(early(1, 0)), BrewFigure.SOUND.plus(0.25))
        .makes(Symptoms.NO_FLOW, chance(0.05, 0.73, 0.95))
        .makes(Symptoms.LOUD, chance(0.03, 0.27, 0.5))
        .curedBy(CLEAN_TANK_VALVE);
  }

  static FaultRow overPressure() {
    return fault("drifts", "over-pressure valve opens at the wrong pressure", 0.02)
        .wears(Wear.RUBBER)
        .changes(BrewFigure.OPENS_AT.times(0.33))
        .makes(Symptoms.WEAK_FLOW, chance(0.03, 0.58, 0.9))
        .makes(Symptoms.POOR_RESULT, chance(0.03, 0.46, 0.8))
        .makes(Symptoms.LEAKS, 0, 0.46)
        .curedBy(SET_VALVE, RENEW_VALVE);
  }

  static FaultRow jet() {
    return fault("blocked", "brew jet or hot-water valve blocked", 0.03)
        .wears(Wear.DEPOSIT)
        .changes(BrewFigure.JET.times(early(1, 0.05)))
        .makes(Symptoms.NO_FLOW, chance(0.03, 0.73, 0.95))
        .makes(Symptoms.WEAK_FLOW, chance(0.05, 0.61, 0.5))
        .makes(Symptoms.POOR_RESULT, 0, 0.48)
        .curedBy(CLEAR_JET);
  }

  static FaultRow screen() {
    return fault("clogged", "group screen clogged with coffee", 0.04)
        .wears(Wear.DEPOSIT)
        .changes(BrewFigure.SCREEN.times(early(1, 0.05)))
        .makes(Symptoms.WEAK_FLOW, chance(0.05, 0.85, 0.9))
        .makes(Symptoms.POOR_RESULT, chance(0.03, 0.45, 0.8))
        .makes(Symptoms.NO_FLOW, chance(0.01, 0.33, 0.8))
        .curedBy(CLEAN_SCREEN);
  }

  static FaultRow threeWay() {
    return fault("stuck", "three-way valve stuck or leaking", 0.04)
        .wears(Wear.DEPOSIT)
        .changes(BrewFigure.EXHAUST.plus(1))
        .makes(Symptoms.LEAKS, chance(0.05, 0.54, 0.85))
        .makes(Symptoms.WEAK_FLOW, chance(0.03, 0.28, 0.8))
        .makes(Symptoms.POOR_RESULT, chance(0.03, 0.26, 0.6))
        .makes(Symptoms.NO_FLOW, 0, 0.24)
        .curedBy(CLEAN_THREE_WAY, RENEW_THREE_WAY);
  }
}

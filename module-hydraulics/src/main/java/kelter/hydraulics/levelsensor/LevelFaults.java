package kelter.hydraulics.levelsensor;

import static kelter.core.diagnosis.model.Course.chance;
import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.FaultRow;
import kelter.core.diagnosis.model.Work;
import kelter.core.safety.Caution;
import kelter.core.vocabulary.Meaning;
import kelter.core.vocabulary.Symptoms;
import kelter.hydraulics.caution.HydraulicCautions;

/**
 * What can be wrong with the measuring of the level. At severity 1 a clogged trap passes 5 % of the
 * pressure; a leaking tube keeps 5 % of it while the water stands; a drifting sensor shows half as
 * much again, or half. That, the minutes and the chances of cure are judgement: common practice, no
 * source. The chances of the symptoms are from memory; a clogged trap can also keep the pressure
 * that it has, so that it overfills less often than a leaking tube.
 */
final class LevelFaults {

  private static final Work CLEAN_TRAP =
      Work.byHand(
          "clean-trap",
          "clean the air trap and its passage, blow the tube out",
          25,
          0.9,
          Caution.UNPLUG,
          HydraulicCautions.OVERFILLING);

  private static final Work RENEW_TUBE =
      Work.withPart(
          "renew-tube",
          "renew the tube and seat it on its nozzles",
          20,
          0.9,
          Caution.UNPLUG,
          HydraulicCautions.OVERFILLING);

  private static final Work RENEW_SENSOR =
      Work.renewing(
          "renew-sensor",
          "renew the level sensor",
          25,
          0.95,
          Caution.UNPLUG,
          HydraulicCautions.OVERFILLING);

  /** The faults. */
  static final List<FaultRow> ALL =
      List.of(
          misled(fault("trap-clogged", "air trap of the level sensor clogged", 0.04))
              .wears(Wear.DEPOSIT)
              .changes(
                  LevelFigure.PASSED.times(0.05),
                  LevelFigure.SHOWN.times(0.05),
                  LevelFigure.DEBRIS.plus(0.82))
              .makes(Symptoms.FILLS_WITHOUT_END, chance(0.05, 0.4, 0.95))
              .makes(Symptoms.DOES_NOT_FILL, 0, 0.2)
              .curedBy(CLEAN_TRAP),
          misled(fault("tube-leaks", "tube or trap of the level sensor leaks air", 0.04))
              .wears(Wear.RUBBER)
              .changes(
                  LevelFigure.PASSED.times(0.05),
                  LevelFigure.SHOWN.times(0.05),
                  LevelFigure.LEAK.plus(1))
              .makes(Symptoms.FILLS_WITHOUT_END, chance(0.05, 0.9, 0.95))
              .curedBy(RENEW_TUBE),
          fault("drifts-high", "level sensor shows too much", 0.015)
              .wears(Wear.SENSOR)
              .changes(LevelFigure.SHOWN.times(1.5))
              .makes(Symptoms.POOR_RESULT, chance(0.02, 0.35, 0.7))
              .makes(Symptoms.DOES_NOT_FILL, 0, 0.3)
              .makes(Symptoms.DOES_NOT_SPIN, 0, 0.4)
              .makes(Symptoms.STOPS_IN_CYCLE, 0, 0.4)
              .makes(Meaning.SENSOR.symptom(), 0, 0.3)
              .makes(Meaning.HEAT.symptom(), 0, 0.2)
              .curedBy(RENEW_SENSOR),
          fault("drifts-low", "level sensor shows too little", 0.015)
              .wears(Wear.SENSOR)
              .apartFrom("drifts-high")
              .changes(LevelFigure.SHOWN.times(0.5))
              .makes(Symptoms.FILLS_WITHOUT_END, chance(0.02, 0.7, 0.95))
              .makes(Symptoms.LEAKS, 0, 0.2)
              .makes(Symptoms.STOPS_IN_CYCLE, 0, 0.4)
              .makes(Meaning.FILL.symptom(), 0, 0.4)
              .makes(Meaning.SENSOR.symptom(), 0, 0.3)
              .curedBy(RENEW_SENSOR));

  private LevelFaults() {}

  /** The machine knows less of its water than there is, or nothing. */
  private static FaultRow misled(FaultRow row) {
    return row.makes(Meaning.FILL.symptom(), chance(0.02, 0.35, 0.7))
        .makes(Symptoms.STOPS_IN_CYCLE, chance(0.02, 0.4, 0.7))
        .makes(Symptoms.POOR_RESULT, chance(0.02, 0.25, 0.4))
        .makes(Symptoms.DOES_NOT_SPIN, chance(0.01, 0.2, 0.4))
        .makes(Symptoms.WATER_LEFT, chance(0.01, 0.15, 0.4))
        .makes(Symptoms.LEAKS, 0, 0.3);
  }
}

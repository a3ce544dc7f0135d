package kelter.electrical.brushmotor;

import static kelter.core.diagnosis.model.Course.line;
import static kelter.core.diagnosis.model.Course.square;
import static kelter.core.diagnosis.model.Course.step;
import static kelter.core.diagnosis.model.FaultRow.fault;

import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.Effect;
import kelter.core.diagnosis.model.FaultRow;
import kelter.core.diagnosis.model.Work;
import kelter.core.safety.Caution;
import kelter.core.vocabulary.Meaning;
import kelter.core.vocabulary.Symptoms;
import kelter.electrical.copper.CopperCoil;

/**
 * What can be wrong with a motor with brushes and its tacho. Minutes and chances, those of symptoms
 * too, are from memory.
 */
final class BrushFaults {

  private static final Work RENEW_MOTOR =
      Work.renewing("renew-brushed-motor", "renew the motor", 60, 0.97, Caution.UNPLUG);

  private static final Work RENEW_TACHO =
      Work.renewing("renew-tacho", "renew the tacho generator", 45, 0.95, Caution.UNPLUG);

  static final FaultRow BRUSHES_WORN =
      fault("worn", "brushes worn down", 0.06)
          .wears(Wear.CONTACT)
          .changes(
              BrushFigure.LENGTH.becomes(line(0, -0.3)),
              BrushFigure.ROTOR.times(square(1, 12)), // springs press no longer
              BrushFigure.COMMUTATOR.atLeast(line(0.25, 0.5)))
          .makes(Symptoms.DOES_NOT_TURN, 0.35, 0.9)
          .makes(Symptoms.DOES_NOT_SPIN, 0.5, 0.9)
          .makes(Symptoms.STOPS_IN_CYCLE, 0.4)
          .makes(Symptoms.SPARKS, 0.3, 0.5)
          .makes(Symptoms.SMELLS_BURNT, 0.1, 0.35)
          .makes(Symptoms.LOUD, 0.15)
          .makes(Meaning.MOTOR.symptom(), 0.3, 0.7)
          .curedBy(
              Work.renewing(
                  "renew-brushes",
                  "renew the brushes, both, and blow the dust out of the motor",
                  35,
                  0.93,
                  Caution.UNPLUG));

  static final FaultRow BEARING_WORN =
      fault("bearing-worn", "bearing of the motor worn", 0.02)
          .wears(Wear.BEARING)
          .changes(BrushFigure.STIFFNESS.becomes(line(0.35, 0.95)))
          .makes(Symptoms.LOUD, 0.8)
          .makes(Symptoms.VIBRATES, 0.2, 0.6)
          .makes(Symptoms.SMELLS_BURNT, 0, 0.5)
          .makes(Symptoms.DOES_NOT_TURN, square(0, 0.8))
          .makes(Symptoms.WEAK_SUCTION, 0.2, 0.4)
          .curedBy(RENEW_MOTOR);

  static final FaultRow ARMATURE_SHORTED =
      fault("armature-shorted", "turns of the rotor shorted or commutator burnt", 0.02)
          .wears(Wear.WINDING)
          .changes(
              BrushFigure.ROTOR.times(line(0.8, 0.3)),
              BrushFigure.COMMUTATOR.becomes(line(0.6, 0.97)))
          .makes(Symptoms.SMELLS_BURNT, 0.5, 0.8)
          .makes(Symptoms.SPARKS, 0.5)
          .makes(Symptoms.DOES_NOT_TURN, 0.3, 0.9)
          .makes(Symptoms.DOES_NOT_SPIN, 0.4, 0.9)
          .makes(Symptoms.LOUD, 0.3, 0.5)
          .makes(Symptoms.TRIPS_BREAKER, 0.1, 0.4)
          .makes(Meaning.MOTOR.symptom(), 0.6)
          .curedBy(RENEW_MOTOR);

  static final FaultRow TACHO_OPEN =
      tacho(
          fault("open", "coil of the tacho or its wire open", 0.01)
              .wears(Wear.WIRE)
              .changes(BrushFigure.TACHO.becomes(CopperCoil.OPEN))
              .curedBy(RENEW_TACHO));

  static final FaultRow MAGNET_LOOSE =
      tacho(
          fault("magnet-loose", "magnet of the tacho loose or cracked", 0.01)
              .changes(BrushFigure.MAGNET.becomes(0.95))
              .curedBy(
                  Work.byHand(
                      "fix-tacho-magnet",
                      "fix the magnet of the tacho on its shaft",
                      40,
                      0.8,
                      Caution.UNPLUG),
                  RENEW_TACHO));

  private BrushFaults() {}

  /**
   * An open winding: the field or the rotor, one as likely as the other.
   *
   * @param field whether the motor has a field winding that can be measured by itself
   */
  static FaultRow windingOpen(boolean field) {
    Effect[] open =
        field
            ? new Effect[] {
              BrushFigure.FIELD.times(step(CopperCoil.OPEN, 1)),
              BrushFigure.ROTOR.times(step(1, CopperCoil.OPEN))
            }
            : new Effect[] {BrushFigure.ROTOR.becomes(CopperCoil.OPEN)};
    return fault("winding-open", "winding of the motor open", 0.015)
        .wears(Wear.WINDING)
        .apartFrom("armature-shorted")
        .changes(open)
        .makes(Symptoms.DOES_NOT_TURN, 0.95)
        .makes(Symptoms.DOES_NOT_SPIN, 0.95)
        .makes(Symptoms.SMELLS_BURNT, 0.2)
        .makes(Meaning.MOTOR.symptom(), 0.7)
        .curedBy(RENEW_MOTOR);
  }

  private static FaultRow tacho(FaultRow row) {
    return row.makes(Symptoms.DOES_NOT_SPIN, 0.65)
        .makes(Symptoms.DOES_NOT_TURN, 0.5)
        .makes(Meaning.MOTOR.symptom(), 0.75);
  }
}

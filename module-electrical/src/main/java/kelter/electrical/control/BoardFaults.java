package kelter.electrical.control;

import static kelter.core.diagnosis.model.Course.line;
import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.FaultRow;
import kelter.core.diagnosis.model.Work;
import kelter.core.safety.Caution;
import kelter.core.vocabulary.Meaning;
import kelter.core.vocabulary.Symptoms;
import kelter.electrical.caution.ElectricalCautions;

/**
 * What can be wrong with a control board. What the machine does depends on the load behind a dead
 * output; the chances are means over kinds of machines, from memory.
 */
final class BoardFaults {

  private BoardFaults() {}

  static List<FaultRow> all() {
    return List.of(outputDead(), outputWelded(), supplyDead(), keypadDead(), trackBurnt());
  }

  private static Work renew() {
    return Work.renewing(
        "renew-board",
        "renew the control board, once the loads measure right",
        40,
        0.92,
        Caution.UNPLUG,
        ElectricalCautions.CHARGED_CAPACITOR);
  }

  private static FaultRow outputDead() {
    return fault("output-dead", "an output of the control board dead", 0.03)
        .wears(Wear.CONTACT)
        .changes(
            BoardFigure.OUTPUT.becomes(0),
            BoardFigure.IGNORED.becomes(0.93),
            BoardFigure.BURNS.becomes(0.25))
        .makes(Symptoms.STOPS_IN_CYCLE, 0.5)
        .makes(Symptoms.DOES_NOT_START, 0.35)
        .makes(Symptoms.STAYS_COLD, 0.3)
        .makes(Meaning.MOTOR.symptom(), 0.2)
        .makes(Meaning.HEAT.symptom(), 0.15)
        .makes(Symptoms.DOES_NOT_FILL, 0.15)
        .makes(Symptoms.DOES_NOT_TURN, 0.1)
        .curedBy(renew());
  }

  private static FaultRow outputWelded() {
    return fault("output-welded", "an output of the control board stays on", 0.008)
        .wears(Wear.CONTACT)
        .changes(
            BoardFigure.ACROSS.becomes(0.5),
            BoardFigure.STAYS_ON.becomes(0.93),
            BoardFigure.BURNS.becomes(0.2))
        .makes(Symptoms.RUNS_WITHOUT_END, 0.5)
        .makes(Symptoms.TOO_HOT, 0.4)
        .makes(Symptoms.STOPS_IN_CYCLE, 0.25)
        .makes(Symptoms.FILLS_WITHOUT_END, 0.2)
        .curedBy(renew());
  }

  private static FaultRow supplyDead() {
    return fault("supply-dead", "control board dead", 0.025)
        .wears(Wear.CAPACITOR)
        .changes(
            BoardFigure.OUTPUT.becomes(0),
            BoardFigure.IGNORED.becomes(0.96),
            BoardFigure.DARK.becomes(0.95),
            BoardFigure.BUTTONS.becomes(0.98),
            BoardFigure.BURNS.becomes(0.3))
        .makes(Symptoms.DOES_NOT_START, 0.9)
        .makes(Symptoms.CONTROL_DEAD, 0.88)
        .makes(Symptoms.DISPLAY_DEAD, 0.83)
        .makes(Symptoms.STOPS_IN_CYCLE, 0.15)
        .curedBy(renew());
  }

  private static FaultRow keypadDead() {
    return fault("keypad-dead", "buttons of the control board dead", 0.012)
        .wears(Wear.CONTACT)
        .changes(BoardFigure.BUTTONS.becomes(line(0.35, 0.9)))
        .makes(Symptoms.CONTROL_DEAD, 0.85, 0.95)
        .makes(Symptoms.DOES_NOT_START, 0.3, 0.6)
        .makes(Symptoms.DISPLAY_DEAD, 0.1, 0.2)
        .curedBy(
            Work.withPart(
                "renew-keypad", "clean or renew the keypad and its plug", 30, 0.85, Caution.UNPLUG),
            renew());
  }

  private static FaultRow trackBurnt() {
    return fault("track-burnt", "track or solder joint of the control board burnt", 0.01)
        .wears(Wear.WIRE)
        .changes(
            BoardFigure.BURNS.becomes(line(0.6, 0.95)),
            BoardFigure.IGNORED.becomes(0.65),
            BoardFigure.DARK.becomes(0.25),
            BoardFigure.BUTTONS.becomes(0.25),
            BoardFigure.OUTPUT.becomes(0.05))
        .makes(Symptoms.STOPS_IN_CYCLE, 0.5)
        .makes(Symptoms.DOES_NOT_START, 0.28)
        .makes(Symptoms.DISPLAY_DEAD, 0.24)
        .makes(Symptoms.SMELLS_BURNT, 0.05, 0.25)
        .makes(Symptoms.STAYS_COLD, 0.13)
        .makes(Meaning.SENSOR.symptom(), 0.12)
        .curedBy(
            Work.byHand(
                "mend-track",
                "bridge the burnt track, solder it anew, and mend what burnt it",
                45,
                0.6,
                Caution.UNPLUG,
                ElectricalCautions.CHARGED_CAPACITOR),
            renew());
  }

  /** Only in machines that defrost. */
  static FaultRow defrostDead() {
    return fault("defrost-dead", "control board does not start the defrost", 0.01)
        .wears(Wear.CONTACT)
        .changes(BoardFigure.NO_DEFROST.becomes(0.94))
        .makes(Symptoms.ICES_UP, 0.85)
        .makes(Symptoms.TOO_WARM_INSIDE, 0.5)
        .makes(Symptoms.RUNS_WITHOUT_END, 0.5)
        .makes(Symptoms.POOR_RESULT, 0.3)
        .curedBy(renew());
  }
}

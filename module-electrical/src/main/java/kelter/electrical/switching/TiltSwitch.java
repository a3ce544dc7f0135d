package kelter.electrical.switching;

import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import java.util.Optional;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.Work;
import kelter.core.module.Part;
import kelter.core.safety.Caution;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Symptoms;
import kelter.electrical.caution.ElectricalCautions;
import kelter.electrical.contact.ContactWords;
import kelter.electrical.contact.Path;

/** A switch that opens once the machine falls over. Chances are from memory. */
public final class TiltSwitch {

  private static final Observable CLOSED =
      ContactWords.closed(
          "resistance across it, upright",
          "Take one wire off, stand the machine upright and level, and measure across it.",
          5);

  private static final Observable OPENED =
      ContactWords.opened(
          "resistance across it, machine on its side",
          "Take one wire off, lay the machine down and measure across it.",
          5);

  private TiltSwitch() {}

  /**
   * The part.
   *
   * @return what is known of it
   */
  public static Part part() {
    return new ContactPart(
        new ComponentKind(
            "tilt-switch", "tilt switch", List.of(CLOSED, OPENED), List.of(), List.of()),
        CLOSED,
        Optional.of(OPENED),
        Optional.empty(),
        ElectricalCautions.NEVER_BRIDGE_TILT_SWITCH,
        List.of(
            fault("open", "tilt switch open", 0.02)
                .wears(Wear.CONTACT)
                .changes(Path.open())
                .makes(Symptoms.DOES_NOT_START, 0.85)
                .makes(Symptoms.SHORT_CYCLES, 0.2)
                .curedBy(
                    Work.byHand(
                        "free-tilt-switch",
                        "level the machine, clean and free the tilt switch",
                        15,
                        0.5,
                        Caution.UNPLUG),
                    Work.renewing(
                        "renew-tilt-switch", "renew the tilt switch", 25, 0.95, Caution.UNPLUG))));
  }
}

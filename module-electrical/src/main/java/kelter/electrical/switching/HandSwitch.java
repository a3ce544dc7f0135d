package kelter.electrical.switching;

import static kelter.core.diagnosis.model.Course.line;
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
import kelter.electrical.contact.SwitchContact;

/** The switch of a machine. Chances are from memory. */
public final class HandSwitch {

  private static final Observable CLOSED =
      ContactWords.closed(
          "resistance across it, switched on",
          "Take one wire off, switch on and measure across each pole. Work it a few times: a worn one"
              + " jumps.",
          4);

  private static final Observable OPENED =
      ContactWords.opened(
          "resistance across it, switched off",
          "Take one wire off, switch off and measure across each pole.",
          4);

  private static final Observable BURNS =
      ContactWords.burns(
          "burnt look of switch and terminals",
          "Look at its case and terminals, pull each push-on terminal a little.",
          3);

  private HandSwitch() {}

  /**
   * The part.
   *
   * @return what is known of it
   */
  public static Part part() {
    Work renew = Work.renewing("renew-switch", "renew the switch", 20, 0.95, Caution.UNPLUG);
    return new ContactPart(
        new ComponentKind("switch", "switch", List.of(CLOSED, OPENED, BURNS), List.of(), List.of()),
        CLOSED,
        Optional.of(OPENED),
        Optional.of(BURNS),
        ElectricalCautions.HAND_SWITCH_CONTACT,
        List.of(
            fault("contact-burnt", "contact of the switch burnt", 0.02)
                .wears(Wear.CONTACT)
                .changes(Path.poor(0.7, 100), SwitchContact.MARKS.becomes(line(0.35, 0.9)))
                .makes(Symptoms.DOES_NOT_START, 0.4, 0.9)
                .makes(Symptoms.STOPS_IN_CYCLE, 0.4)
                .makes(Symptoms.SPARKS, 0.2, 0.4)
                .makes(Symptoms.SMELLS_BURNT, 0.1, 0.35)
                .curedBy(renew),
            fault("dead", "switch does not close", 0.02)
                .wears(Wear.CONTACT)
                .apartFrom("contact-burnt")
                .changes(Path.open())
                .makes(Symptoms.DOES_NOT_START, 0.8)
                .makes(Symptoms.DISPLAY_DEAD, 0.2)
                .makes(Symptoms.STOPS_IN_CYCLE, 0.13)
                .curedBy(renew),
            fault("contact-welded", "contact of the switch welded", 0.003)
                .wears(Wear.CONTACT)
                .apartFrom("dead")
                .changes(SwitchContact.welded())
                .makes(Symptoms.RUNS_WITHOUT_END, 0.8)
                .makes(Symptoms.TOO_HOT, 0.4)
                .curedBy(renew)));
  }
}

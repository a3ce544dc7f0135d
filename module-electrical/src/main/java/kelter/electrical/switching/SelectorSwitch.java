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

/** A switch with several settings. Chances are from memory. */
public final class SelectorSwitch {

  private static final Observable CLOSED =
      ContactWords.closed(
          "highest resistance of a contact that its setting closes",
          "Draw which wires sit where, then pull them off. Step through the settings, measure each"
              + " contact that should close and write the highest.",
          8);

  private static final Observable OPENED =
      ContactWords.opened(
          "lowest resistance of a contact that its setting opens",
          "Wires off, turn to off, measure each contact and write the lowest.",
          6);

  private static final Observable BURNS =
      ContactWords.burns(
          "burnt look of selector and terminals",
          "Look at terminals and case: dull or dark terminals were hot.",
          4);

  private SelectorSwitch() {}

  /**
   * The part.
   *
   * @return what is known of it
   */
  public static Part part() {
    Work renew =
        Work.renewing("renew-selector", "renew the selector switch", 35, 0.95, Caution.UNPLUG);
    return new ContactPart(
        new ComponentKind(
            "selector-switch",
            "selector switch",
            List.of(CLOSED, OPENED, BURNS),
            List.of(),
            List.of()),
        CLOSED,
        Optional.of(OPENED),
        Optional.of(BURNS),
        ElectricalCautions.SELECTOR_CONTACT,
        List.of(
            fault("contact-burnt", "contact of the selector switch burnt", 0.03)
                .wears(Wear.CONTACT)
                .changes(
                    Path.RESISTANCE.becomes(Path.burning(0.7)),
                    SwitchContact.MARKS.becomes(line(0.35, 0.9)))
                .makes(Symptoms.DOES_NOT_START, 0.3, 0.75)
                .makes(Symptoms.STAYS_COLD, 0.35)
                .makes(Symptoms.SMELLS_BURNT, 0.1, 0.45)
                .makes(Symptoms.CONTROL_DEAD, 0.25)
                .makes(Symptoms.STOPS_IN_CYCLE, 0.3)
                .curedBy(renew),
            fault("contact-welded", "contact of the selector switch welded", 0.002)
                .wears(Wear.CONTACT)
                .changes(SwitchContact.welded())
                .makes(Symptoms.TOO_HOT, 0.4)
                .makes(Symptoms.RUNS_WITHOUT_END, 0.5)
                .curedBy(renew)));
  }
}

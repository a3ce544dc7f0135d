package kelter.electrical.switching;

import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import java.util.Optional;
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

/** A fuse inside a machine. Chances are from memory. */
public final class Fuse {

  private static final Observable CLOSED =
      ContactWords.closed(
          "resistance across it",
          "Take it out of its holder and measure between its caps. Glass may look whole and be open.",
          3,
          ElectricalCautions.CHARGED_CAPACITOR);

  private static final Observable BLACK =
      ContactWords.burns(
          "dark look of the fuse and its holder",
          "Look at its glass and at the clips: black and silvered glass means a short.",
          2,
          ElectricalCautions.CHARGED_CAPACITOR);

  private Fuse() {}

  /**
   * The part.
   *
   * @return what is known of it
   */
  public static Part part() {
    return new ContactPart(
        new ComponentKind("fuse", "fuse", List.of(CLOSED, BLACK), List.of(), List.of()),
        CLOSED,
        Optional.empty(),
        Optional.of(BLACK),
        ElectricalCautions.BLOWN_FUSE,
        List.of(
            fault("blown", "fuse blown", 0.02)
                .changes(Path.open(), SwitchContact.MARKS.becomes(0.4))
                .makes(Symptoms.DOES_NOT_START, 0.85)
                .makes(Symptoms.CONTROL_DEAD, 0.7)
                .makes(Symptoms.LIGHT_OUT, 0.5)
                .makes(Symptoms.STAYS_COLD, 0.4)
                .makes(Symptoms.TRIPS_BREAKER, 0.15)
                .curedBy(
                    Work.renewing(
                        "renew-fuse",
                        "find why the fuse blew, mend that and renew it",
                        25,
                        0.7,
                        Caution.UNPLUG,
                        ElectricalCautions.BLOWN_FUSE))));
  }
}

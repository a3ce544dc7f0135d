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
import kelter.electrical.contact.SwitchContact;

/** The protector of a compressor that opens when it is hot or stands. Chances are from memory. */
public final class OverloadProtector {

  private static final Observable CLOSED =
      ContactWords.closed(
          "resistance across it, cold",
          "Let the compressor cool for an hour. Pull the protector off its pin and measure across"
              + " it.",
          5);

  private static final Observable BURNS =
      ContactWords.burns(
          "burnt look of the protector and its pin",
          "Look at its case and at the pin of the compressor.",
          3);

  private OverloadProtector() {}

  /**
   * The part.
   *
   * @return what is known of it
   */
  public static Part part() {
    return new ContactPart(
        new ComponentKind(
            "overload-protector",
            "overload protector",
            List.of(CLOSED, BURNS),
            List.of(),
            List.of()),
        CLOSED,
        Optional.empty(),
        Optional.of(BURNS),
        ElectricalCautions.NEVER_BRIDGE_PROTECTOR,
        List.of(
            fault("open", "overload protector open when cold", 0.01)
                .wears(Wear.CONTACT)
                .changes(Path.open(), SwitchContact.MARKS.becomes(0.3))
                .makes(Symptoms.TOO_WARM_INSIDE, 0.95)
                .makes(Symptoms.POOR_RESULT, 0.5)
                .makes(Symptoms.SHORT_CYCLES, 0.35)
                .makes(Symptoms.HUMS_ONLY, 0.08)
                .curedBy(
                    Work.renewing(
                        "renew-overload-protector",
                        "renew the overload protector, and measure the windings",
                        25,
                        0.8,
                        Caution.UNPLUG,
                        ElectricalCautions.NEVER_BRIDGE_PROTECTOR))));
  }
}

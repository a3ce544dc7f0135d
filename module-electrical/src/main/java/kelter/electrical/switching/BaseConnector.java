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

/** The connector of a jug with its base. Chances are from memory. */
public final class BaseConnector {

  private static final Observable CLOSED =
      ContactWords.closed(
          "highest resistance of one way through the connector",
          "Set the jug on its base. Measure from each pin of the plug to the same terminal inside,"
              + " turn the jug a little meanwhile, and write the higher one.",
          6);

  private static final Observable BURNS =
      ContactWords.burns(
          "burnt or melted look of the connector",
          "Look into the connector of base and jug: dull pins, brown or melted plastic.",
          2);

  private BaseConnector() {}

  /**
   * The part.
   *
   * @return what is known of it
   */
  public static Part part() {
    return new ContactPart(
        new ComponentKind(
            "base-connector", "base connector", List.of(CLOSED, BURNS), List.of(), List.of()),
        CLOSED,
        Optional.empty(),
        Optional.of(BURNS),
        ElectricalCautions.HOT_JOINT,
        List.of(
            fault("burnt", "connector between jug and base burnt", 0.03)
                .wears(Wear.CONTACT)
                .changes(
                    Path.RESISTANCE.becomes(Path.burning(0.6)),
                    SwitchContact.MARKS.becomes(line(0.4, 0.95)))
                .makes(Symptoms.DOES_NOT_START, 0.5, 0.9)
                .makes(Symptoms.STOPS_IN_CYCLE, 0.3)
                .makes(Symptoms.SMELLS_BURNT, 0.2, 0.6)
                .makes(Symptoms.SPARKS, 0.1, 0.25)
                .curedBy(
                    Work.renewing(
                        "renew-base-connector",
                        "renew the connector on both sides",
                        30,
                        0.95,
                        Caution.UNPLUG))));
  }
}

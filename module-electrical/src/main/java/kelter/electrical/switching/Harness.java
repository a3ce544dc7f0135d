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
import kelter.core.vocabulary.Meaning;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Symptoms;
import kelter.electrical.caution.ElectricalCautions;
import kelter.electrical.component.Electrical;
import kelter.electrical.contact.ContactWords;
import kelter.electrical.contact.Path;
import kelter.electrical.contact.SwitchContact;

/** The wires between the parts, with their connectors. Chances are from memory. */
public final class Harness {

  private static final Observable WAY =
      ContactWords.closed(
          "highest resistance of a wire from connector to connector",
          "Pull both connectors of the part that does nothing. Measure each wire end to end, bend the"
              + " harness along its length meanwhile, and write the highest.",
          8);

  private static final Observable DAMAGE =
      Observable.named("damage", "damage of wires and connectors")
          .graded("none", "rubbed", "bare", "broken")
          .how(
              "Follow the wires to door, tub and edges: rubbed, pinched, green or brown? Pull each"
                  + " terminal a little.")
          .by(Electrical.inside(6));

  private Harness() {}

  /**
   * The part.
   *
   * @return what is known of it
   */
  public static Part part() {
    return new ContactPart(
        new ComponentKind("harness", "harness", List.of(WAY, DAMAGE), List.of(), List.of()),
        WAY,
        Optional.empty(),
        Optional.of(DAMAGE),
        ElectricalCautions.HOT_JOINT,
        List.of(
            fault("broken", "wire or connector of the harness broken", 0.01)
                .wears(Wear.WIRE)
                .changes(
                    Path.RESISTANCE.becomes(Path.parting(1, 1e8, 0.5)),
                    SwitchContact.MARKS.becomes(line(0.4, 0.9)))
                .makes(Symptoms.STOPS_IN_CYCLE, 0.5)
                .makes(Symptoms.STAYS_COLD, 0.3)
                .makes(Symptoms.DOES_NOT_START, 0.1, 0.3)
                .makes(Meaning.MOTOR.symptom(), 0.17)
                .makes(Meaning.HEAT.symptom(), 0.12)
                .makes(Symptoms.TRIPS_BREAKER, 0.1)
                .curedBy(
                    Work.byHand(
                        "mend-harness",
                        "mend the wire or connector, and keep it from rubbing",
                        35,
                        0.85,
                        Caution.UNPLUG))));
  }
}

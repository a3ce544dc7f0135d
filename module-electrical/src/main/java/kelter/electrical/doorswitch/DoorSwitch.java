package kelter.electrical.doorswitch;

import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import java.util.Optional;
import kelter.core.check.Check;
import kelter.core.check.LimitCheck;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.PartModel;
import kelter.core.diagnosis.model.Spread;
import kelter.core.diagnosis.model.Work;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.module.Part;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Meaning;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Symptoms;
import kelter.electrical.caution.ElectricalCautions;
import kelter.electrical.component.Electrical;
import kelter.electrical.contact.ContactLimits;
import kelter.electrical.contact.ContactWords;
import kelter.electrical.contact.Path;
import kelter.electrical.contact.SwitchContact;

/** A door switch. Chances, those of symptoms too, resistances and spreads are from memory. */
public final class DoorSwitch implements Part {

  static final Observable CLOSED_RESISTANCE =
      Observable.named("closed-resistance", "resistance across it with the door closed")
          .logarithmic(QuantityKind.RESISTANCE, Electrical.RESISTANCE)
          .provingFrom(ContactWords.PROVES)
          .how("Take one wire off, close the door and measure across the switch, leads nulled.")
          .by(Electrical.dead(4, Electrical.OHMMETER));

  static final Observable OPEN_RESISTANCE =
      Observable.named("open-resistance", "resistance across it with the door open")
          .logarithmic(QuantityKind.RESISTANCE, Electrical.RESISTANCE)
          .how("Take one wire off, open the door and measure across the switch.")
          .by(Electrical.dead(4, Electrical.OHMMETER));

  /** A door switch. */
  public static final ComponentKind DOOR_SWITCH =
      new ComponentKind(
          "door-switch",
          "door switch",
          List.of(CLOSED_RESISTANCE, OPEN_RESISTANCE),
          List.of(),
          List.of());

  @Override
  public List<ComponentKind> kinds() {
    return List.of(DOOR_SWITCH);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        LimitCheck.named("door-switch-continuity", "Does the door switch close?")
            .on(DOOR_SWITCH, CLOSED_RESISTANCE, ContactLimits.CLOSED),
        LimitCheck.named("door-switch-opens", "Does the door switch open?")
            .on(
                DOOR_SWITCH,
                OPEN_RESISTANCE,
                ContactLimits.open(
                    "resistance with the door open", ElectricalCautions.RUNS_WITH_DOOR_OPEN)));
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component door) {
    Work renew =
        Work.renewing(
            "renew-door-switch", "adjust the door or renew its switch", 30, 0.95, Caution.UNPLUG);
    return Optional.of(
        PartModel.of(door.id(), Electrical.PRIORS, Path.ALL)
            .on(door, DOOR_SWITCH, SwitchContact.ALL)
            .faults(
                fault("contact-burnt", "contact of the door switch burnt", 0.03)
                    .wears(Wear.CONTACT)
                    .changes(Path.poor(0.5, 60))
                    .makes(Symptoms.DOES_NOT_START, 0.1, 0.7)
                    .makes(Symptoms.STOPS_IN_CYCLE, 0.1, 0.6)
                    .makes(Meaning.DOOR.symptom(), 0.1, 0.5)
                    .curedBy(renew),
                fault("contact-open", "door switch does not close", 0.05)
                    .wears(Wear.CONTACT)
                    .apartFrom("contact-burnt")
                    .changes(Path.open())
                    .makes(Symptoms.DOES_NOT_START, 0.85)
                    .makes(Symptoms.STOPS_IN_CYCLE, 0.2)
                    .makes(Symptoms.LIGHT_OUT, 0.25)
                    .makes(Meaning.DOOR.symptom(), 0.5)
                    .curedBy(renew),
                fault("contact-welded", "contact of the door switch welded or bridged", 0.01)
                    .wears(Wear.CONTACT)
                    .apartFrom("contact-open")
                    .changes(SwitchContact.welded())
                    .makes(Symptoms.DOES_NOT_START, 0.1)
                    .makes(Meaning.DOOR.symptom(), 0.25)
                    .curedBy(renew))
            .looks(CLOSED_RESISTANCE, Path.RESISTANCE, Spread.constant(0.7))
            .looks(OPEN_RESISTANCE, SwitchContact.OPENED, Spread.constant(0.7))
            .build());
  }
}

package kelter.electrical.door;

import static kelter.core.diagnosis.model.Course.line;
import static kelter.core.diagnosis.model.Course.power;
import static kelter.core.diagnosis.model.Course.step;
import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import java.util.Optional;
import kelter.core.check.Allowed;
import kelter.core.check.Check;
import kelter.core.check.LimitCheck;
import kelter.core.check.Limits;
import kelter.core.check.Measured;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.FaultRow;
import kelter.core.diagnosis.model.Figure;
import kelter.core.diagnosis.model.FigureSet;
import kelter.core.diagnosis.model.PartModel;
import kelter.core.diagnosis.model.Spread;
import kelter.core.diagnosis.model.Work;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.module.Part;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Meaning;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Span;
import kelter.core.vocabulary.Symptoms;
import kelter.electrical.caution.ElectricalCautions;
import kelter.electrical.component.Electrical;
import kelter.electrical.contact.ContactLimits;
import kelter.electrical.contact.ContactWords;
import kelter.electrical.copper.CoilWords;

/**
 * A door lock with a heated bimetal (PTC) or a pulse coil, and its contact. Chances, those of
 * symptoms too, and spreads are from memory.
 */
public final class DoorLock implements Part {

  static final Characteristic COIL =
      new Characteristic(
              "coil-resistance",
              "resistance of its PTC, cold, or of its pulse coil",
              QuantityKind.RESISTANCE)
          .within(new Span(1, 1e5));

  static final Observable CLICKS =
      Observable.named("clicks", "it clicks, and the door holds, within ten seconds of the start")
          .asked(1, "Close the door, start, listen and pull. A PTC locks after 2 s to 6 s.");

  static final Observable BOLT =
      Observable.named("bolt", "how its bolt moves by hand")
          .graded("freely", "sluggishly", "by force only", "stuck")
          .how("Take the lock out and move bolt and slide with a screwdriver.")
          .by(Electrical.inside(8));

  static final Observable COIL_RESISTANCE =
      CoilWords.resistance(
          "resistance of its PTC or coil",
          "Pull its plug, let it cool for five minutes and measure between the coil pins.",
          5);

  static final Observable CONTACT_RESISTANCE =
      Observable.named("contact-resistance", "resistance across its contact while it is locked")
          .logarithmic(QuantityKind.RESISTANCE, Electrical.RESISTANCE)
          .provingFrom(ContactWords.PROVES)
          .how(
              "Let it lock, then plug out. A PTC holds for a minute or two: prove dead, pull its plug"
                  + " and measure across the contact.")
          .by(Electrical.dead(6, Electrical.OHMMETER, ElectricalCautions.NEVER_BRIDGE_DOOR_LOCK));

  static final ComponentKind DOOR_LOCK =
      new ComponentKind(
          "door-lock",
          "door lock",
          List.of(CLICKS, BOLT, COIL_RESISTANCE, CONTACT_RESISTANCE),
          List.of(COIL),
          List.of());

  /** Taken where a job does not state it, Ohm. */
  private static final double USUAL = 500;

  /** How far locks of one kind, and of any kind, differ, as natural logarithms. */
  private static final Spread<Object> OF_KIND = Spread.constant(0.25);

  private static final Spread<Object> OF_ANY = Spread.constant(1.2);

  /** By how much a contact that is burnt through has more than one that begins to burn, ratio. */
  private static final double BURNT = 120;

  /** What faults change. */
  private static final class Lock {
    static final FigureSet ALL = new FigureSet("door-lock");
    static final Figure COIL =
        ALL.figure("resistance of PTC or coil, ratio to the one in order", 1);
    static final Figure CONTACT =
        ALL.figure("resistance of the contact when it should be locked, Ohm", 0.1);
    static final Figure CLICKS = ALL.figure("chance that it is heard and felt to lock", 0.96);
    static final Figure BOLT = ALL.figure("how hard the bolt moves, from 0 to 1", 0.06);
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(DOOR_LOCK);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        LimitCheck.named("door-lock-contact", "Does the contact of the door lock close?")
            .on(DOOR_LOCK, CONTACT_RESISTANCE, ContactLimits.CLOSED),
        LimitCheck.named("door-lock-coil", "Is the PTC or coil of the door lock whole?")
            .on(DOOR_LOCK, COIL_RESISTANCE, DoorLock::coil));
  }

  private static Optional<Allowed> coil(Measured measured) {
    double figure = measured.component().si(COIL);
    return Optional.of(
        figure > 0
            ? Allowed.of(
                "PTC or coil against its figure",
                Source.commonPractice("half to double the figure: PTC elements differ that much"),
                new Limits(figure / 2, figure * 2))
            : Allowed.of(
                "PTC or coil of the door lock",
                Source.fromMemory("pulse coils 40 ohm to 200 ohm, PTC 0.1 kohm to 2.5 kohm cold"),
                new Limits(40, 2.5e3)));
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component lock) {
    Work renew =
        Work.renewing(
            "renew-door-lock",
            "renew the door lock",
            35,
            0.95,
            Caution.UNPLUG,
            ElectricalCautions.NEVER_BRIDGE_DOOR_LOCK);
    double open = Electrical.RESISTANCE.high();
    double usual = lock.si(COIL, USUAL);
    return Optional.of(
        PartModel.of(lock, DOOR_LOCK, Electrical.PRIORS, Lock.ALL)
            .faults(
                shown(
                    fault("contact-open", "contact of the door lock does not close", 0.025)
                        .wears(Wear.CONTACT)
                        .changes(Lock.CONTACT.becomes(open), Lock.CLICKS.becomes(0.85))
                        .makes(Symptoms.DOOR_DOES_NOT_LOCK, 0.5)
                        .makes(Symptoms.STOPS_IN_CYCLE, 0.3)
                        .curedBy(renew)),
                fault("contact-burnt", "contact of the door lock burnt", 0.01)
                    .wears(Wear.CONTACT)
                    .apartFrom("contact-open")
                    .changes(Lock.CONTACT.becomes(power(0.5, BURNT)))
                    .makes(Symptoms.DOES_NOT_START, 0.1, 0.7)
                    .makes(Symptoms.STOPS_IN_CYCLE, 0.1, 0.6)
                    .makes(Meaning.DOOR.symptom(), 0.1, 0.5)
                    .makes(Symptoms.DOOR_DOES_NOT_LOCK, 0.1, 0.4)
                    .curedBy(renew),
                shown(
                    fault("coil-open", "PTC or coil of the door lock open", 0.02)
                        .changes(
                            Lock.COIL.becomes(1e9),
                            Lock.CONTACT.becomes(open),
                            Lock.CLICKS.becomes(0.03))
                        .makes(Symptoms.DOOR_DOES_NOT_LOCK, 0.85)
                        .makes(Symptoms.DOOR_DOES_NOT_OPEN, 0.2)
                        .curedBy(renew)),
                shown(
                    fault("jammed", "door lock jammed, open or locked", 0.015)
                        .wears(Wear.WIRE)
                        .changes(
                            Lock.CONTACT.becomes(step(open, 0.1)),
                            Lock.CLICKS.becomes(0.3),
                            Lock.BOLT.becomes(line(0.6, 0.97)))
                        .makes(Symptoms.DOOR_DOES_NOT_OPEN, step(0.5, 0.9))
                        .makes(Symptoms.DOOR_DOES_NOT_LOCK, step(0.8, 0.1))
                        .curedBy(
                            Work.byHand(
                                "free-door-lock",
                                "free the door lock and set it to its hook",
                                30,
                                0.6,
                                Caution.UNPLUG,
                                ElectricalCautions.NEVER_BRIDGE_DOOR_LOCK),
                            renew)))
            .looks(CLICKS, Lock.CLICKS)
            .looks(BOLT, Lock.BOLT)
            .looks(COIL_RESISTANCE, Lock.COIL.of(usual), lock.si(COIL) > 0 ? OF_KIND : OF_ANY)
            .looks(CONTACT_RESISTANCE, Lock.CONTACT, Spread.constant(0.7))
            .build());
  }

  /** What each of them makes. */
  private static FaultRow shown(FaultRow row) {
    return row.makes(Symptoms.DOES_NOT_START, 0.6).makes(Meaning.DOOR.symptom(), 0.5);
  }
}

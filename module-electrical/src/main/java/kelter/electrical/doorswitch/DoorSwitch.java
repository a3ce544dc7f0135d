package kelter.electrical.doorswitch;

import static kelter.core.diagnosis.model.Course.line;
import static kelter.core.diagnosis.model.Course.power;
import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import java.util.Optional;
import kelter.core.check.Check;
import kelter.core.check.LimitCheck;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.FaultRow;
import kelter.core.diagnosis.model.Figure;
import kelter.core.diagnosis.model.PartModel;
import kelter.core.diagnosis.model.Spread;
import kelter.core.diagnosis.model.Work;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.module.Part;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.electrical.component.Electrical;
import kelter.electrical.contact.ClosedContact;

/** A door switch. Chances and resistances are from memory. */
public final class DoorSwitch implements Part {

  /** Resistance of a closed switch. */
  public static final Observable CLOSED_RESISTANCE =
      Observable.logarithmic(
          "closed-resistance",
          "resistance across it with the door closed",
          QuantityKind.RESISTANCE,
          Electrical.RESISTANCE,
          List.of(),
          Electrical.dead(
              "Take one wire off, close the door and measure across the switch, leads nulled.",
              4,
              Electrical.OHMMETER));

  /** Whether the machine starts. */
  public static final Observable DOES_NOT_START =
      Observable.yesNo(
          "does-not-start",
          "it does not start although the door is closed",
          Electrical.look("Ask, or close the door and start a programme.", 2));

  /** A door switch. */
  public static final ComponentKind DOOR_SWITCH =
      new ComponentKind(
          "door-switch",
          "door switch",
          List.of(CLOSED_RESISTANCE, DOES_NOT_START),
          List.of(),
          List.of());

  /** Contacts in one state, as a natural logarithm. */
  private static final Spread<Object> OF_CONTACTS = Spread.constant(0.7);

  /** Made once by the module. */
  public DoorSwitch() {}

  /** What faults change. */
  private enum Switch implements Figure {
    /** Resistance of the closed switch on an ordinary meter, Ohm. */
    RESISTANCE(0.1),
    /** Chance that the machine does not start. */
    NOTICED(0.03);

    private final double inOrder;

    Switch(double inOrder) {
      this.inOrder = inOrder;
    }

    @Override
    public double inOrder() {
      return inOrder;
    }
  }

  /** Made when a machine has one. */
  private static final class Faults {

    private static final Work RENEW =
        Work.renewing(
            "renew-door-switch", "adjust the door or renew its switch", 30, 0.95, Caution.UNPLUG);

    static final FaultRow BURNT =
        fault("contact-burnt", "contact of the door switch burnt", 0.03)
            .wears(Wear.CONTACT)
            .changes(
                Switch.RESISTANCE.becomes(power(0.5, 60)), Switch.NOTICED.becomes(line(0.1, 0.7)))
            .curedBy(RENEW);

    static final FaultRow OPEN =
        fault("contact-open", "door switch does not close", 0.05)
            .wears(Wear.CONTACT)
            .apartFrom("contact-burnt")
            .changes(
                Switch.RESISTANCE.becomes(Electrical.RESISTANCE.high()),
                Switch.NOTICED.becomes(0.95))
            .curedBy(RENEW);
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(DOOR_SWITCH);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        new LimitCheck(
            "door-switch-continuity",
            "Does the door switch close?",
            DOOR_SWITCH,
            CLOSED_RESISTANCE,
            ClosedContact.RULE));
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component door) {
    return Optional.of(
        PartModel.of(
                door.id(), Source.fromMemory("estimate of how often it is found"), Switch.values())
            .on(door, DOOR_SWITCH)
            .faults(Faults.BURNT, Faults.OPEN)
            .looks(CLOSED_RESISTANCE, state -> state.of(Switch.RESISTANCE), OF_CONTACTS)
            .looks(DOES_NOT_START, Switch.NOTICED)
            .build());
  }
}

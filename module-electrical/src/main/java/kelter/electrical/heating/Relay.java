package kelter.electrical.heating;

import static kelter.core.diagnosis.model.Course.constant;
import static kelter.core.diagnosis.model.Course.line;
import static kelter.core.diagnosis.model.Course.power;
import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import kelter.core.check.Allowed;
import kelter.core.check.Check;
import kelter.core.check.LimitCheck;
import kelter.core.check.Limits;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.FaultRow;
import kelter.core.diagnosis.model.Figure;
import kelter.core.diagnosis.model.FigureSet;
import kelter.core.diagnosis.model.PartModel;
import kelter.core.diagnosis.model.Spread;
import kelter.core.diagnosis.model.State;
import kelter.core.diagnosis.model.Work;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.module.Part;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Meaning;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Proof;
import kelter.core.vocabulary.Span;
import kelter.core.vocabulary.Symptoms;
import kelter.electrical.caution.ElectricalCautions;
import kelter.electrical.component.Electrical;
import kelter.electrical.copper.CoilWords;
import kelter.electrical.copper.CopperRule;

/**
 * The relay of a heater. Contacts burn before they weld; a welded one stays closed whatever the
 * coil does. Chances, those of symptoms too, effects and spreads are from memory.
 */
public final class Relay implements Part {

  static final Characteristic COIL =
      new Characteristic("coil-resistance", "resistance of the coil", QuantityKind.RESISTANCE)
          .within(new Span(0.1, 1e6));

  static final Observable COIL_RESISTANCE =
      CoilWords.resistance(
          "resistance of the coil", "Measure across the coil, unplugged from the control.", 5);

  static final Observable VOLTAGE_DROP =
      Observable.named("voltage-drop", "voltage across the closed contact under load")
          .quantity(QuantityKind.VOLTAGE, 0, 500)
          .how("Clip on to both sides of the contact, then let the machine heat and read.")
          .by(Electrical.live(10, new Accuracy(0.01, 0.05)));

  static final Observable CONTACT_BURNS =
      Observable.named("contact-burns", "burnt look of contact, terminals and board")
          .graded("none", "dark", "brown", "charred")
          .how("Look at contact, terminals and solder joints of the relay.")
          .by(Electrical.inside(5));

  static final Observable BURNT_SMELL =
      Observable.named("burnt-smell", "it smells of burnt board or lacquer")
          .asked(2, "Smell at the opening of the control, or ask.");

  static final Observable CLOSED_WHEN_OFF =
      Observable.named("closed-when-off", "the contact is closed although the coil is off")
          .proving()
          .how("Take a wire off and measure continuity across the contact with the coil off.")
          .by(Electrical.inside(4));

  static final ComponentKind RELAY =
      new ComponentKind(
          "relay",
          "relay",
          List.of(COIL_RESISTANCE, VOLTAGE_DROP, CONTACT_BURNS, BURNT_SMELL, CLOSED_WHEN_OFF),
          List.of(COIL),
          List.of());

  /** A closed contact under load, V; common practice, no source. */
  private static final double DROP = 0.5;

  /**
   * By what ratio the resistance of a burnt contact has risen at worst: to 0.6 Ohm, which are 44 W
   * at 8.6 A, near what {@code GlowingConnection} tells; then it arcs, and heats part of the time.
   */
  private static final double WORST_CONTACT = 30;

  /** What faults change. */
  static final class Contact {
    static final FigureSet ALL = new FigureSet("relay");
    static final Figure RESISTANCE = ALL.figure("resistance when closed, Ohm", 0.02);
    static final Figure WELDED = ALL.figure("above 0 where it is welded", 0);
    static final Figure COIL_OPEN = ALL.figure("above 0 where the coil is open", 0);
    static final Figure BURNS = ALL.figure("burnt look of contact and board, from 0 to 1", 0.1);
    static final Figure SMELLS = ALL.figure("chance of a burnt smell", 0.02);
    static final Figure CLOSED_WHEN_OFF =
        ALL.figure("chance that it is found closed though it should be open", Proof.FALSE_ALARM);

    private Contact() {}
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(RELAY);
  }

  @Override
  public String whyNot(Appliance appliance, Component component) {
    return HeatingGroup.missing(appliance);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        LimitCheck.named("relay-voltage-drop", "Does the contact of the relay lose voltage?")
            .on(
                RELAY,
                VOLTAGE_DROP,
                Allowed.of(
                        "voltage drop of a closed contact",
                        Source.commonPractice(
                            "a contact in order drops less than 0.5 V under its load"),
                        Limits.atMost(DROP))
                    .resting("times the current it is the heat: 1 V at 10 A are 10 W")
                    .butIfNot(ElectricalCautions.HOT_JOINT)),
        LimitCheck.named(
                "relay-coil-resistance", "Does the coil of the relay measure what it should?")
            .on(RELAY, COIL_RESISTANCE, new CopperRule("coil", COIL)));
  }

  /** Puts it into the model of its circuit. */
  static void addTo(PartModel model, Component relay, HeatingGroup group, HeatingCircuit circuit) {
    Work renew =
        Work.renewing(
            "renew-relay",
            "renew the relay and its burnt terminals",
            40,
            0.93,
            Caution.UNPLUG,
            ElectricalCautions.CHARGED_CAPACITOR);
    model
        .on(relay, RELAY, Contact.ALL)
        .faults(
            burnt(group).curedBy(renew), welded().curedBy(renew), coilOpen(group).curedBy(renew))
        .looks(CONTACT_BURNS, Contact.BURNS)
        .looks(BURNT_SMELL, Contact.SMELLS)
        .looks(CLOSED_WHEN_OFF, Contact.CLOSED_WHEN_OFF)
        .under(circuit)
        .observe(VOLTAGE_DROP, Operation::contactDrop, Spread.relative(0.3).atLeast(0.1));
    double coil = relay.si(COIL);
    if (coil > 0) {
      model.looks(
          COIL_RESISTANCE,
          state -> state.has(Contact.COIL_OPEN) ? Electrical.RESISTANCE.high() : coil,
          Spread.constant(0.1));
    }
  }

  private static FaultRow burnt(HeatingGroup group) {
    return HeatSymptoms.coldOrSlow(
        fault("contact-burnt", "relay contact burnt", 0.04)
            .changes(
                Contact.RESISTANCE.times(power(1, WORST_CONTACT)),
                Contact.BURNS.becomes(line(0.35, 0.95)),
                Contact.SMELLS.becomes(line(0.1, 0.7)),
                CircuitFigure.DUTY.times(0.2))
            .makes(Symptoms.SMELLS_BURNT, 0.1, 0.6)
            .makes(Symptoms.TEMPERATURE_SWINGS, 0, 0.2)
            .wears(Wear.CONTACT),
        group,
        line(0.05, 0.75),
        line(0.4, 0.2));
  }

  private static FaultRow welded() {
    return fault("contact-welded", "relay contact welded", 0.01)
        .changes(
            Contact.WELDED.becomes(1),
            Contact.CLOSED_WHEN_OFF.becomes(0.99),
            Contact.SMELLS.atLeast(0.2))
        .makes(Symptoms.TOO_HOT, 0.8)
        .makes(Symptoms.RUNS_WITHOUT_END, 0.2)
        .makes(Symptoms.SMELLS_BURNT, 0.15)
        .makes(Meaning.TOO_HOT.symptom(), 0.3)
        .wears(Wear.CONTACT);
  }

  private static FaultRow coilOpen(HeatingGroup group) {
    return HeatSymptoms.cold(
        fault("coil-open", "relay coil open", 0.015).changes(Contact.COIL_OPEN.becomes(1)),
        group,
        constant(0.95));
  }

  /** Whether the contact stays open because the coil is. */
  static boolean isHeldOpen(State relay) {
    return relay.has(Contact.COIL_OPEN) && !relay.has(Contact.WELDED);
  }
}

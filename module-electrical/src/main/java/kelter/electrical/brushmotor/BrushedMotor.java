package kelter.electrical.brushmotor;

import java.util.List;
import java.util.Optional;
import kelter.core.check.Check;
import kelter.core.check.LimitCheck;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.model.PartModel;
import kelter.core.diagnosis.model.Spread;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.module.Part;
import kelter.core.quantity.QuantityKind;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Span;
import kelter.electrical.caution.ElectricalCautions;
import kelter.electrical.component.Electrical;
import kelter.electrical.contact.ContactWords;
import kelter.electrical.copper.CopperCoil;
import kelter.electrical.copper.CopperRule;

/**
 * A motor with brushes: rotor, field, bearings, commutator, and its brushes. The first motor with
 * brushes of an appliance is taken to have the first brushes; brushes without one are a part by
 * themselves. Figures that a job lacks are from memory.
 */
public final class BrushedMotor implements Part {

  static final Characteristic ROTOR =
      new Characteristic(
              "rotor-resistance",
              "resistance of the rotor by way of the brushes at 20 °C",
              QuantityKind.RESISTANCE)
          .within(new Span(0.01, 1e5));

  static final Characteristic FIELD =
      new Characteristic(
              "field-resistance",
              "resistance of the field winding at 20 °C",
              QuantityKind.RESISTANCE)
          .within(new Span(0.01, 1e5));

  static final Characteristic NEW_LENGTH =
      new Characteristic("new-length", "length of a new brush", QuantityKind.LENGTH)
          .within(new Span(1e-3, 0.1));

  static final Characteristic CHANGE_LENGTH =
      new Characteristic(
              "change-length", "length at which brushes are changed", QuantityKind.LENGTH)
          .within(new Span(1e-3, 0.1));

  static final Observable ROTOR_RESISTANCE =
      Observable.named("rotor-resistance", "resistance of the rotor by way of the brushes")
          .logarithmic(QuantityKind.RESISTANCE, Electrical.RESISTANCE)
          .provingFrom(ContactWords.OPEN)
          .at(Electrical.TEMPERATURE)
          .how(
              "Unplug the motor and measure between the two brushes, leads nulled. Turn the rotor by"
                  + " hand to four places and write the middle reading.")
          .by(Electrical.dead(5, Electrical.OHMMETER));

  static final Observable FIELD_RESISTANCE =
      Observable.named("field-resistance", "resistance of the field winding")
          .logarithmic(QuantityKind.RESISTANCE, Electrical.RESISTANCE)
          .provingFrom(ContactWords.OPEN)
          .at(Electrical.TEMPERATURE)
          .how("Unplug the motor and measure between the ends of the field, leads nulled.")
          .by(Electrical.dead(5, Electrical.OHMMETER));

  static final Observable TURNING =
      Observable.named("turning-by-hand", "how it turns by hand")
          .graded("freely", "roughly", "stiffly", "stuck")
          .how("Take the belt off, if it has one, and turn the shaft by hand.")
          .by(Electrical.inside(5));

  static final Observable COMMUTATOR =
      Observable.named("commutator", "look of the commutator")
          .graded("even and brown", "dark", "grooved", "bars burnt")
          .how("Take a brush out and turn the rotor. Look at each bar with a lamp.")
          .by(Electrical.inside(6));

  static final Observable LENGTH =
      Observable.named("length", "length of the shorter brush")
          .quantity(QuantityKind.LENGTH, 0, 0.1)
          .how("Take both brushes out and measure the carbon alone. Write the shorter one.")
          .by(Electrical.dead(8, new Accuracy(0, 5e-4), ElectricalCautions.BRUSH_DUST));

  /** A motor with brushes. */
  public static final ComponentKind BRUSHED_MOTOR =
      new ComponentKind(
          "brushed-motor",
          "motor with brushes",
          List.of(ROTOR_RESISTANCE, FIELD_RESISTANCE, TURNING, COMMUTATOR),
          List.of(ROTOR, FIELD),
          List.of());

  /** The brushes of a motor. */
  public static final ComponentKind BRUSHES =
      new ComponentKind(
          "brushes",
          "motor brushes",
          List.of(LENGTH),
          List.of(NEW_LENGTH, CHANGE_LENGTH),
          List.of());

  /** Taken where a job does not state it, Ohm, and how far such motors differ, as a logarithm. */
  private static final double USUAL_ROTOR = 2.5;

  private static final Spread<Object> ANY_ROTOR = Spread.constant(0.5);

  /** Rotors of one kind, at any place of the rotor, as a natural logarithm. */
  private static final Spread<Object> OF_ROTORS = Spread.constant(0.15);

  /** Taken where a job does not state them, m. */
  private static final double USUAL_NEW = 0.036;

  private static final double USUAL_CHANGE = 0.012;

  @Override
  public List<ComponentKind> kinds() {
    return List.of(BRUSHED_MOTOR, BRUSHES);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        LimitCheck.named("brush-length", "Are the brushes long enough?")
            .on(BRUSHES, LENGTH, BrushChecks::length),
        LimitCheck.named("rotor-resistance", "Does the rotor measure what it should?")
            .on(BRUSHED_MOTOR, ROTOR_RESISTANCE, BrushChecks::rotor),
        LimitCheck.named("field-resistance", "Does the field winding measure what it should?")
            .on(BRUSHED_MOTOR, FIELD_RESISTANCE, new CopperRule("field winding", FIELD)));
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component component) {
    List<Component> motors = appliance.componentsOf(BRUSHED_MOTOR.id());
    List<Component> brushes = appliance.componentsOf(BRUSHES.id());
    boolean together = !motors.isEmpty() && !brushes.isEmpty();
    boolean isMotor = component.kind().equals(BRUSHED_MOTOR.id());
    if (together && !isMotor && component == brushes.get(0)) {
      return Optional.empty(); // in the model of the motor
    }
    PartModel model = PartModel.of(component.id(), Electrical.PRIORS, BrushFigure.ALL);
    if (isMotor) {
      addMotor(model, component);
    }
    if (!isMotor || (together && component == motors.get(0))) {
      addBrushes(model, isMotor ? brushes.get(0) : component);
    }
    return Optional.of(model.build());
  }

  private static void addMotor(PartModel model, Component motor) {
    double field = motor.si(FIELD);
    model
        .on(motor, BRUSHED_MOTOR)
        .faults(
            BrushFaults.windingOpen(field > 0),
            BrushFaults.BEARING_WORN,
            BrushFaults.ARMATURE_SHORTED)
        .looks(TURNING, BrushFigure.STIFFNESS)
        .looks(COMMUTATOR, BrushFigure.COMMUTATOR);
    model
        .under(new CopperCoil(motor.si(ROTOR, USUAL_ROTOR), BrushFigure.ROTOR))
        .observe(
            ROTOR_RESISTANCE, Double::doubleValue, motor.si(ROTOR) > 0 ? OF_ROTORS : ANY_ROTOR);
    if (field > 0) {
      model
          .under(new CopperCoil(field, BrushFigure.FIELD))
          .observe(FIELD_RESISTANCE, Double::doubleValue, Spread.constant(0.06));
    }
  }

  private static void addBrushes(PartModel model, Component brushes) {
    double change = brushes.si(CHANGE_LENGTH, USUAL_CHANGE);
    double wears = Math.max(change, brushes.si(NEW_LENGTH, USUAL_NEW)) - change;
    model
        .on(brushes, BRUSHES)
        .faults(BrushFaults.BRUSHES_WORN)
        .looks(
            LENGTH,
            state -> Math.max(0, change + wears * state.of(BrushFigure.LENGTH)),
            Spread.relative(0.2).atLeast(1e-3));
  }
}

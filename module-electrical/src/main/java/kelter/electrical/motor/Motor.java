package kelter.electrical.motor;

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
import kelter.core.vocabulary.Procedure;
import kelter.core.vocabulary.Span;
import kelter.electrical.capacitor.CapacitorDischarge;
import kelter.electrical.caution.ElectricalCautions;
import kelter.electrical.component.Electrical;
import kelter.electrical.contact.ContactWords;
import kelter.electrical.copper.CopperCoil;
import kelter.electrical.copper.CopperRule;
import kelter.electrical.insulation.EarthLeak;
import kelter.electrical.insulation.InsulationRule;

/**
 * A motor with its windings, its insulation and its capacitor. What it cannot forecast for want of
 * a service figure it does not ask. The first motor of an appliance is taken to have the first
 * capacitor.
 */
public final class Motor implements Part {

  /** Where a motor capacitor may hold a charge, after what is said before a dead measurement. */
  private static final String DISCHARGE =
      "Hold a discharge tool of 20 kOhm across the motor capacitor for "
          + CapacitorDischarge.throughTool(100e-6)
          + " s (up to 100 uF), then read that less than 34 V are left. ";

  static final Characteristic MAIN =
      new Characteristic(
              "winding-resistance",
              "resistance of the main winding at 20 °C",
              QuantityKind.RESISTANCE)
          .within(new Span(0.01, 1e5));

  static final Characteristic AUXILIARY =
      new Characteristic(
              "auxiliary-resistance",
              "resistance of the auxiliary winding at 20 °C",
              QuantityKind.RESISTANCE)
          .within(new Span(0.01, 1e5));

  static final Characteristic CAPACITANCE =
      new Characteristic("capacitance", "capacitance marked on it", QuantityKind.CAPACITANCE)
          .within(new Span(1e-8, 1e-2));

  static final Observable WINDING_RESISTANCE =
      winding("winding-resistance", "resistance of the main winding");

  static final Observable AUXILIARY_RESISTANCE =
      winding("auxiliary-resistance", "resistance of the auxiliary winding");

  static final Observable INSULATION =
      Observable.named("insulation-resistance", "insulation resistance to earth")
          .logarithmic(QuantityKind.INSULATION_RESISTANCE, Electrical.INSULATION)
          .at(Electrical.TEMPERATURE)
          .how(
              DISCHARGE
                  + "Unplug the motor from its control and measure with 500 V from a winding to the"
                  + " frame, one minute.")
          .by(Electrical.insulation());

  static final Observable CURRENT =
      Observable.named("current", "current of the running motor")
          .quantity(QuantityKind.CURRENT, 0, 100)
          .at(Electrical.VOLTAGE)
          .how("Clamp around one wire of the motor while it runs.")
          .by(Electrical.live(8, Electrical.CLAMP));

  static final Observable TURNING =
      Observable.named("turning-by-hand", "how it turns by hand")
          .graded("freely", "roughly", "stiffly", "stuck")
          .how("Take the belt off and turn the shaft by hand.")
          .by(discharged(8, Electrical.BY_EYE));

  static final Observable BURNT_SMELL =
      Observable.named("burnt-smell", "it smells of burnt lacquer").asked(1, "Smell at the motor.");

  static final Observable WET =
      Observable.named("wet", "water marks, drops or fresh rust on it")
          .how("Look at the motor and above it with a lamp.")
          .by(Electrical.inside(5));

  static final Observable MEASURED_CAPACITANCE =
      Observable.named("capacitance", "capacitance")
          .quantity(QuantityKind.CAPACITANCE, 0, 1e-3)
          .how("Take the motor capacitor out of circuit and measure it; no other capacitor.")
          .by(discharged(6, new Accuracy(0.02, 1e-8)));

  static final Observable SWOLLEN =
      Observable.named("swollen", "it is swollen, cracked or leaks")
          .proving()
          .how("Look at its case, without touching it: nothing is discharged for that.")
          .by(Electrical.inside(3, ElectricalCautions.CHARGED_CAPACITOR));

  /** A motor with a main and perhaps an auxiliary winding. */
  public static final ComponentKind MOTOR =
      new ComponentKind(
          "motor",
          "motor",
          List.of(
              WINDING_RESISTANCE,
              AUXILIARY_RESISTANCE,
              INSULATION,
              CURRENT,
              TURNING,
              BURNT_SMELL,
              WET),
          List.of(MAIN, AUXILIARY),
          List.of());

  /** The capacitor of a motor. */
  public static final ComponentKind RUN_CAPACITOR =
      new ComponentKind(
          "run-capacitor",
          "motor capacitor",
          List.of(MEASURED_CAPACITANCE, SWOLLEN),
          List.of(CAPACITANCE),
          List.of());

  /** Windings of one kind: 5 %, as a natural logarithm; from memory. */
  private static final Spread<Object> OF_WINDINGS = Spread.constant(0.05);

  /** Motors at work, 15 %, and 0.05 A, and what they draw more at fault, 20 %; from memory. */
  private static final Spread<Object> OF_LOAD =
      Spread.relative(0.15).atLeast(0.05).andOfEffect(0.2);

  @Override
  public List<ComponentKind> kinds() {
    return List.of(MOTOR, RUN_CAPACITOR);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        LimitCheck.named("motor-insulation", "Does the motor leak to earth?")
            .on(MOTOR, INSULATION, new InsulationRule(false)),
        LimitCheck.named("motor-current", "Does the motor draw more than it is rated for?")
            .on(MOTOR, CURRENT, MotorChecks::current),
        LimitCheck.named("winding-resistance", "Does the main winding measure what it should?")
            .on(MOTOR, WINDING_RESISTANCE, new CopperRule("main winding", MAIN)),
        LimitCheck.named(
                "auxiliary-resistance", "Does the auxiliary winding measure what it should?")
            .on(MOTOR, AUXILIARY_RESISTANCE, new CopperRule("auxiliary winding", AUXILIARY)),
        LimitCheck.named("capacitance", "Does the capacitor have what is marked on it?")
            .on(RUN_CAPACITOR, MEASURED_CAPACITANCE, MotorChecks::capacitance));
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component component) {
    if (!component.kind().equals(MOTOR.id())) {
      return Optional.empty();
    }
    PartModel model = PartModel.of(component.id(), Electrical.PRIORS, MotorFigure.ALL);
    addMotor(model, component);
    List<Component> capacitors = appliance.componentsOf(RUN_CAPACITOR.id());
    if (!capacitors.isEmpty() && component == appliance.componentsOf(MOTOR.id()).get(0)) {
      addCapacitor(model, capacitors.get(0));
    }
    return Optional.of(model.build());
  }

  @Override
  public String whyNot(Appliance appliance, Component component) {
    return component.kind().equals(RUN_CAPACITOR.id())
            && appliance.componentsOf(MOTOR.id()).isEmpty()
        ? "list the motor that it belongs to"
        : "";
  }

  private static void addMotor(PartModel model, Component motor) {
    double main = motor.si(MAIN);
    double auxiliary = motor.si(AUXILIARY);
    model
        .on(motor, MOTOR)
        .faults(MotorFaults.ofMotor(auxiliary > 0))
        .looks(INSULATION, s -> EarthLeak.insulation(s.of(MotorFigure.LEAK)), EarthLeak.SPREAD)
        .looks(TURNING, MotorFigure.STIFFNESS)
        .looks(BURNT_SMELL, MotorFigure.SMELLS)
        .looks(WET, MotorFigure.WET);
    if (main > 0) {
      model
          .under(new CopperCoil(main, MotorFigure.MAIN))
          .observe(WINDING_RESISTANCE, Double::doubleValue, OF_WINDINGS);
    }
    if (auxiliary > 0) {
      model
          .under(new CopperCoil(auxiliary, MotorFigure.AUXILIARY))
          .observe(AUXILIARY_RESISTANCE, Double::doubleValue, OF_WINDINGS);
    }
    if (motor.nameplate().current().isPresent()) {
      double rated = motor.nameplate().current().get().si();
      model.under(RunningMotor.AT_WORK).observe(CURRENT, ratio -> rated * ratio, OF_LOAD);
    }
  }

  private static void addCapacitor(PartModel model, Component capacitor) {
    model
        .on(capacitor, RUN_CAPACITOR)
        .faults(MotorFaults.WEAK, MotorFaults.OPEN, MotorFaults.BURST)
        .looks(SWOLLEN, MotorFigure.SWOLLEN);
    double marked = capacitor.si(CAPACITANCE);
    if (marked > 0) {
      model.looks(
          MEASURED_CAPACITANCE,
          MotorFigure.CAPACITANCE.of(marked),
          Spread.constant(0.05 * marked)); // the tolerance of capacitors in order
    }
  }

  private static Procedure discharged(double minutes, Accuracy typical) {
    return Electrical.dead(minutes, typical, ElectricalCautions.CHARGED_CAPACITOR).then(DISCHARGE);
  }

  private static Observable winding(String id, String title) {
    return Observable.named(id, title)
        .logarithmic(QuantityKind.RESISTANCE, Electrical.RESISTANCE)
        .provingFrom(ContactWords.OPEN)
        .at(Electrical.TEMPERATURE)
        .how("Unplug the motor from its control and measure between its terminals, leads nulled.")
        .by(discharged(5, Electrical.OHMMETER));
  }
}

package kelter.electrical.fault.motor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Question;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.law.CopperResistance;
import kelter.core.vocabulary.Observable;
import kelter.electrical.component.Electrical;
import kelter.electrical.component.MotorKinds;
import kelter.electrical.fault.EarthLeak;
import kelter.electrical.fault.StateModel;
import kelter.electrical.fault.StateModel.Answer;
import kelter.electrical.fault.StateModel.Forecast;
import kelter.electrical.rating.Stated;

/**
 * A motor with its windings, its insulation and its capacitor. What it cannot forecast for want of
 * a service figure it does not ask. The first motor of an appliance is taken to have the first
 * capacitor.
 */
public final class MotorModel implements StateModel.Part<MotorState> {

  /** Spread of windings of one kind, as a natural logarithm: 5 %; from memory. */
  private static final double WINDING = 0.05;

  /** Spread of the current of motors at work, as a ratio; from memory. */
  private static final double LOAD = 0.15;

  /** Spread of capacitors in order: their tolerance of 5 %, as a ratio. */
  private static final double CAPACITOR = 0.05;

  private static final double ROOM = 293.15;

  private final Component motor;
  private final Optional<Component> capacitor;

  private MotorModel(Component motor, Optional<Component> capacitor) {
    this.motor = motor;
    this.capacitor = capacitor;
  }

  /**
   * The motors of an appliance.
   *
   * @param appliance the machine
   * @return one model for each motor
   */
  public static List<FaultModel> of(Appliance appliance) {
    List<FaultModel> models = new ArrayList<>();
    for (Component motor : appliance.componentsOf(MotorKinds.MOTOR.id())) {
      List<Component> capacitors = appliance.componentsOf(MotorKinds.RUN_CAPACITOR.id());
      boolean hasOne = models.isEmpty() && !capacitors.isEmpty();
      models.add(
          new MotorModel(motor, hasOne ? Optional.of(capacitors.get(0)) : Optional.empty())
              .model());
    }
    return models;
  }

  private FaultModel model() {
    return new StateModel<>(
        motor.id(), this, List.of(), MotorFaults.of(motor, hasAuxiliary(), capacitor), questions());
  }

  private boolean hasAuxiliary() {
    return figure(motor, MotorKinds.AUXILIARY.id()) > 0;
  }

  private static double figure(Component part, String name) {
    return Stated.si(part.figure(name));
  }

  private List<Question> questions() {
    List<Observable> known = new ArrayList<>(MotorKinds.MOTOR.observables());
    if (!(figure(motor, MotorKinds.MAIN.id()) > 0)) {
      known.remove(MotorKinds.WINDING_RESISTANCE);
    }
    if (!hasAuxiliary()) {
      known.remove(MotorKinds.AUXILIARY_RESISTANCE);
    }
    if (motor.nameplate().current().isEmpty()) {
      known.remove(MotorKinds.CURRENT);
    }
    List<Question> all = new ArrayList<>();
    for (Observable observable : known) {
      all.add(new Question(motor.id(), observable, Conditions.NONE));
    }
    if (capacitor.isPresent()) {
      String part = capacitor.get().id();
      if (figure(capacitor.get(), MotorKinds.CAPACITANCE.id()) > 0) {
        all.add(new Question(part, MotorKinds.MEASURED_CAPACITANCE, Conditions.NONE));
      }
      all.add(new Question(part, MotorKinds.SWOLLEN, Conditions.NONE));
    }
    return all;
  }

  @Override
  public MotorState healthy() {
    return new MotorState();
  }

  @Override
  public Answer<MotorState> answer(Question question) {
    return switch (question.observable().id()) {
      case "winding-resistance" -> {
        double expected = expected(MotorKinds.MAIN.id(), question.conditions());
        yield state -> winding(expected * state.main);
      }
      case "auxiliary-resistance" -> {
        double expected = expected(MotorKinds.AUXILIARY.id(), question.conditions());
        yield state -> winding(expected * state.auxiliary);
      }
      case "insulation-resistance" -> state -> EarthLeak.shown(state.insulation(), state.leaks());
      case "current" -> {
        double rated = motor.nameplate().current().orElseThrow().si();
        yield state ->
            new Forecast(rated * state.current, Math.hypot(0.05, LOAD * rated * state.current));
      }
      case "capacitance" -> {
        double marked = figure(capacitor.orElseThrow(), MotorKinds.CAPACITANCE.id());
        yield state -> new Forecast(marked * state.capacitance, CAPACITOR * marked);
      }
      case "turning-by-hand" -> state -> new Forecast(state.stiffness, 0.13);
      default -> seen(question.observable().id());
    };
  }

  private static Answer<MotorState> seen(String observable) {
    return switch (observable) {
      case "hums" -> state -> Forecast.chance(state.hums);
      case "silent" -> state -> Forecast.chance(state.silent);
      case "burnt-smell" -> state -> Forecast.chance(state.burntSmell);
      case "wet" -> state -> Forecast.chance(state.wet);
      case "swollen" -> state -> Forecast.chance(state.swollen);
      case "trips-rcd" -> state -> Forecast.chance(EarthLeak.trips(state.insulation()));
      default -> throw new IllegalArgumentException("no forecast of '" + observable + "'");
    };
  }

  private static Forecast winding(double resistance) {
    return new Forecast(resistance, WINDING);
  }

  /** The resistance in order at the temperature of the reading; at room temperature if unsaid. */
  private double expected(String figure, Conditions conditions) {
    double cold = figure(motor, figure);
    double kelvin = conditions.si(Electrical.TEMPERATURE.id(), ROOM);
    double inRange = Math.min(Math.max(kelvin, 223.15), 473.15);
    return cold * CopperResistance.factor(inRange);
  }
}

package kelter.electrical.fault.simple;

import java.util.ArrayList;
import java.util.List;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.Remedy;
import kelter.core.diagnosis.Remedy.Restores;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.law.CopperResistance;
import kelter.core.safety.Caution;
import kelter.core.safety.Caution.Signal;
import kelter.core.source.Source;
import kelter.core.vocabulary.Observable;
import kelter.electrical.component.ControlKinds;
import kelter.electrical.component.Electrical;
import kelter.electrical.component.MotorKinds;
import kelter.electrical.component.SupplyKinds;
import kelter.electrical.fault.Ageing;
import kelter.electrical.fault.StateModel;
import kelter.electrical.fault.StateModel.Answer;
import kelter.electrical.fault.StateModel.Change;
import kelter.electrical.fault.StateModel.Forecast;
import kelter.electrical.fault.StateModel.Known;
import kelter.electrical.rating.Stated;

/**
 * Models of parts whose faults show in one resistance, and in what is felt, heard or smelt of it. A
 * resistance is either too high or open, so that two faults of one part are never there together.
 * The chances are from memory.
 */
public final class SimpleParts {

  private static final Source PRIOR = Source.fromMemory("estimate of how often it is found");

  /** What an open part measures, Ohm. */
  private static final double OPEN = Electrical.RESISTANCE.high();

  /** A protective conductor that is just poor, Ohm; from memory. */
  private static final double FIRST_EARTH = 0.3;

  /** A contact that is just burnt, Ohm; from memory. */
  private static final double FIRST_BURNT = 0.5;

  /** The protective conductor of an ordinary cord with its contacts, Ohm; from memory. */
  private static final double EARTH = 0.1;

  /** A closed switch on an ordinary meter, Ohm; from memory. */
  private static final double CLOSED = 0.1;

  private static final double ROOM = 293.15;

  private static final Caution MEASURE_EARTH =
      new Caution(
          Signal.DANGER,
          "Electric shock. Measure the protective conductor again, bending the cord, before the"
              + " machine is plugged in.");

  private SimpleParts() {}

  /** The one resistance of a part, and the chances of what is noticed. */
  private static final class State {
    private double resistance;
    private double noticed = 0.03;
    private double smells = 0.02;

    private State(double resistance) {
      this.resistance = resistance;
    }

    private void becomes(double newResistance, double chanceOfNotice) {
      resistance = newResistance;
      noticed = chanceOfNotice;
    }
  }

  /**
   * What a fault changes.
   *
   * @param fault the id of the fault
   */
  private record Effect(String fault) implements Change<State> {
    @Override
    public void apply(State state, double s) {
      switch (fault) {
        case "earth-poor" -> state.becomes(FIRST_EARTH * Math.pow(70, s), 0.03 + 0.15 * s);
        case "earth-open" -> state.becomes(OPEN, 0.5);
        case "contact-burnt" -> state.becomes(FIRST_BURNT * Math.pow(60, s), 0.1 + 0.6 * s);
        case "contact-open" -> state.becomes(OPEN, 0.95);
        case "coil-shorted" -> {
          state.becomes(state.resistance * (1 - 0.9 * s), 0.1 + 0.7 * s);
          state.smells = 0.15 + 0.65 * s;
        }
        case "coil-open" -> {
          state.becomes(OPEN, 0.95);
          state.smells = Math.max(state.smells, 0.15);
        }
        default -> throw new IllegalArgumentException("no part has a fault '" + fault + "'");
      }
    }
  }

  /**
   * How a state shows.
   *
   * @param observable what is asked
   * @param factor the resistance that is read by that at 20 °C, ratio; NaN where another thing is
   *     asked
   * @param spread the spread of the resistance, as a natural logarithm; NaN likewise
   */
  private record Shown(String observable, double factor, double spread) implements Answer<State> {
    @Override
    public Forecast of(State state) {
      return switch (observable) {
        case "tingle", "does-not-start", "does-not-act" -> Forecast.chance(state.noticed);
        case "burnt-smell" -> Forecast.chance(state.smells);
        default -> new Forecast(state.resistance * factor, spread);
      };
    }
  }

  /**
   * A part that is told by its one resistance.
   *
   * @param normal the resistance of the part in order at 20 °C, Ohm
   */
  private record OneResistance(double normal) implements StateModel.Part<State> {
    @Override
    public State healthy() {
      return new State(normal);
    }

    @Override
    public Answer<State> answer(Question question) {
      String observable = question.observable().id();
      return switch (observable) {
        case "protective-conductor-resistance" -> new Shown(observable, 1, 0.6);
        case "closed-resistance" -> new Shown(observable, 1, 0.7);
        case "coil-resistance" -> new Shown(observable, warm(question.conditions()), 0.06);
        default -> new Shown(observable, Double.NaN, Double.NaN);
      };
    }
  }

  /**
   * The simple parts of an appliance.
   *
   * @param appliance the machine
   * @return one model for each cord, door switch, and solenoid whose resistance is known
   */
  public static List<FaultModel> of(Appliance appliance) {
    List<FaultModel> models = new ArrayList<>();
    for (Component cord : appliance.componentsOf(SupplyKinds.CORD.id())) {
      models.add(cord(cord));
    }
    for (Component part : appliance.componentsOf(ControlKinds.DOOR_SWITCH.id())) {
      models.add(doorSwitch(part));
    }
    for (Component part : appliance.componentsOf(MotorKinds.SOLENOID.id())) {
      double cold = Stated.si(part.figure(MotorKinds.COIL.id()));
      if (cold > 0) {
        models.add(solenoid(part, cold));
      }
    }
    return models;
  }

  /** A tingle needs a small leak beside: filters have one, so it is felt now and then. */
  private static FaultModel cord(Component cord) {
    Remedy renew =
        remedy(
            "renew-cord",
            cord.id(),
            "renew the supply cord, or make the earth connection good",
            35,
            MEASURE_EARTH);
    return model(
        cord,
        EARTH,
        List.of(SupplyKinds.PROTECTIVE_CONDUCTOR, SupplyKinds.TINGLE),
        List.of(
            known("earth-poor", cord.id(), "protective conductor poor", 0.01, renew)
                .wearing(Ageing.WIRE),
            known("earth-open", cord.id(), "protective conductor open", 0.02, renew)
                .apartFrom("earth-poor")
                .wearing(Ageing.WIRE)));
  }

  private static FaultModel doorSwitch(Component part) {
    Remedy renew =
        remedy("renew-door-switch", part.id(), "adjust the door or renew its switch", 30);
    return model(
        part,
        CLOSED,
        List.of(ControlKinds.CLOSED_RESISTANCE, ControlKinds.DOES_NOT_START),
        List.of(
            known("contact-burnt", part.id(), "contact of the door switch burnt", 0.03, renew)
                .wearing(Ageing.CONTACT),
            known("contact-open", part.id(), "door switch does not close", 0.05, renew)
                .apartFrom("contact-burnt")
                .wearing(Ageing.CONTACT)));
  }

  private static FaultModel solenoid(Component part, double cold) {
    Remedy renew = remedy("renew-solenoid", part.id(), "renew the coil or the whole part", 30);
    return model(
        part,
        cold,
        MotorKinds.SOLENOID.observables(),
        List.of(
            known("coil-shorted", part.id(), "turns shorted in the coil", 0.02, renew),
            known("coil-open", part.id(), "coil open", 0.04, renew).apartFrom("coil-shorted")));
  }

  private static FaultModel model(
      Component part, double normal, List<Observable> observables, List<Known<State>> known) {
    List<Question> questions = new ArrayList<>();
    for (Observable observable : observables) {
      questions.add(new Question(part.id(), observable, Conditions.NONE));
    }
    return new StateModel<>(part.id(), new OneResistance(normal), List.of(), known, questions);
  }

  private static double warm(Conditions conditions) {
    double kelvin = conditions.si(Electrical.TEMPERATURE.id(), ROOM);
    return CopperResistance.factor(Math.min(Math.max(kelvin, 223.15), 473.15));
  }

  private static Known<State> known(
      String id, String component, String title, double prior, Remedy remedy) {
    return new Known<>(
        new Fault(id, component, title, prior, PRIOR, List.of(remedy)), new Effect(id));
  }

  private static Remedy remedy(
      String id, String component, String title, double minutes, Caution... more) {
    List<Caution> cautions = new ArrayList<>(List.of(Caution.UNPLUG));
    cautions.addAll(List.of(more));
    return new Remedy(id, component, title, minutes, Restores.COMPONENT, true, 0.95, cautions);
  }
}

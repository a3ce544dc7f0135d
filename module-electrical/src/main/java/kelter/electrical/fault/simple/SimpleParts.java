package kelter.electrical.fault.simple;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.Remedy;
import kelter.core.diagnosis.Remedy.Restores;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.quantity.Quantity;
import kelter.core.safety.Caution;
import kelter.core.safety.Caution.Signal;
import kelter.core.source.Source;
import kelter.core.vocabulary.Observable;
import kelter.electrical.component.ControlKinds;
import kelter.electrical.component.Electrical;
import kelter.electrical.component.MotorKinds;
import kelter.electrical.component.SupplyKinds;
import kelter.electrical.conductor.CopperResistance;
import kelter.electrical.fault.Ageing;
import kelter.electrical.fault.StateModel;
import kelter.electrical.fault.StateModel.Answer;
import kelter.electrical.fault.StateModel.Forecast;
import kelter.electrical.fault.StateModel.Known;

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
  }

  /**
   * The simple parts of an appliance.
   *
   * @param appliance the machine
   * @return one model for each cord, door switch, and solenoid whose resistance is known
   */
  public static List<FaultModel> of(Appliance appliance) {
    List<FaultModel> models = new ArrayList<>();
    appliance.componentsOf(SupplyKinds.CORD.id()).forEach(cord -> models.add(cord(cord)));
    appliance.componentsOf(ControlKinds.DOOR_SWITCH.id()).forEach(s -> models.add(doorSwitch(s)));
    appliance
        .componentsOf(MotorKinds.SOLENOID.id())
        .forEach(part -> solenoid(part).ifPresent(models::add));
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
        question ->
            question.observable().id().equals(SupplyKinds.TINGLE.id())
                ? state -> Forecast.chance(state.noticed)
                : state -> new Forecast(state.resistance, 0.6),
        List.of(
            new Known<State>(
                    fault("earth-poor", cord.id(), "protective conductor poor", 0.01, renew),
                    (state, s) -> {
                      state.resistance = FIRST_EARTH * Math.pow(70, s);
                      state.noticed = 0.03 + 0.15 * s;
                    })
                .wearing(Ageing.WIRE),
            new Known<State>(
                    fault("earth-open", cord.id(), "protective conductor open", 0.02, renew),
                    (state, s) -> {
                      state.resistance = OPEN;
                      state.noticed = 0.5;
                    })
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
        question ->
            question.observable().id().equals(ControlKinds.DOES_NOT_START.id())
                ? state -> Forecast.chance(state.noticed)
                : state -> new Forecast(state.resistance, 0.7),
        List.of(
            new Known<State>(
                    fault(
                        "contact-burnt",
                        part.id(),
                        "contact of the door switch burnt",
                        0.03,
                        renew),
                    (state, s) -> {
                      state.resistance = FIRST_BURNT * Math.pow(60, s);
                      state.noticed = 0.1 + 0.6 * s;
                    })
                .wearing(Ageing.CONTACT),
            new Known<State>(
                    fault("contact-open", part.id(), "door switch does not close", 0.05, renew),
                    (state, s) -> {
                      state.resistance = OPEN;
                      state.noticed = 0.95;
                    })
                .apartFrom("contact-burnt")
                .wearing(Ageing.CONTACT)));
  }

  private static Optional<FaultModel> solenoid(Component part) {
    Remedy renew = remedy("renew-solenoid", part.id(), "renew the coil or the whole part", 30);
    return part.figure(MotorKinds.COIL.id())
        .map(Quantity::si)
        .filter(r -> r > 0)
        .map(
            cold ->
                model(
                    part,
                    cold,
                    MotorKinds.SOLENOID.observables(),
                    SimpleParts::solenoid,
                    List.of(
                        new Known<State>(
                            fault(
                                "coil-shorted",
                                part.id(),
                                "turns shorted in the coil",
                                0.02,
                                renew),
                            (state, s) -> {
                              state.resistance *= 1 - 0.9 * s;
                              state.noticed = 0.1 + 0.7 * s;
                              state.smells = 0.15 + 0.65 * s;
                            }),
                        new Known<State>(
                                fault("coil-open", part.id(), "coil open", 0.04, renew),
                                (state, s) -> {
                                  state.resistance = OPEN;
                                  state.noticed = 0.95;
                                  state.smells = Math.max(state.smells, 0.15);
                                })
                            .apartFrom("coil-shorted"))));
  }

  private static Answer<State> solenoid(Question question) {
    return switch (question.observable().id()) {
      case "does-not-act" -> state -> Forecast.chance(state.noticed);
      case "burnt-smell" -> state -> Forecast.chance(state.smells);
      default -> {
        double factor = warm(question.conditions());
        yield state -> new Forecast(state.resistance * factor, 0.06);
      }
    };
  }

  private static FaultModel model(
      Component part,
      double normal,
      List<Observable> observables,
      Function<Question, Answer<State>> answers,
      List<Known<State>> known) {
    return new StateModel<>(
        part.id(),
        () -> new State(normal),
        List.of(),
        known,
        observables.stream()
            .map(observable -> new Question(part.id(), observable, Conditions.NONE))
            .toList(),
        answers);
  }

  private static double warm(Conditions conditions) {
    double kelvin = conditions.si(Electrical.TEMPERATURE.id(), ROOM);
    return CopperResistance.factor(Math.min(Math.max(kelvin, 223.15), 473.15));
  }

  private static Fault fault(
      String id, String component, String title, double prior, Remedy remedy) {
    return new Fault(id, component, title, prior, PRIOR, List.of(remedy));
  }

  private static Remedy remedy(
      String id, String component, String title, double minutes, Caution... more) {
    List<Caution> cautions = new ArrayList<>(List.of(Caution.UNPLUG));
    cautions.addAll(List.of(more));
    return new Remedy(id, component, title, minutes, Restores.COMPONENT, true, 0.95, cautions);
  }
}

package kelter.electrical.fault.heating;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.diagnosis.Question;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.vocabulary.Observable;
import kelter.electrical.component.ControlKinds;
import kelter.electrical.component.Electrical;
import kelter.electrical.component.HeaterKinds;
import kelter.electrical.component.SupplyKinds;
import kelter.electrical.fault.EarthLeak;
import kelter.electrical.fault.StateModel;
import kelter.electrical.fault.StateModel.Answer;
import kelter.electrical.fault.StateModel.Forecast;
import kelter.electrical.rating.SensorCurve;
import kelter.electrical.rating.Stated;

/**
 * How the state of a heating circuit shows in each observable. The spreads say how far machines in
 * the same state differ; those of figures follow from the tolerance of the power input, all others
 * are from memory.
 */
final class HeatingAnswers implements StateModel.Part<HeatingState> {

  private static final Conditions AT_ROOM_TEMPERATURE =
      new Conditions(
          Map.of(
              Electrical.TEMPERATURE.id(),
              Quantity.ofSi(SensorAnswer.ROOM, 0, QuantityKind.TEMPERATURE)));

  private final HeatingGroup group;

  /** The curves of the sensors, in their order. */
  private final List<Optional<SensorCurve>> curves = new ArrayList<>();

  HeatingAnswers(HeatingGroup group) {
    this.group = group;
    for (Component sensor : group.sensors()) {
      curves.add(SensorCurve.of(sensor));
    }
  }

  /**
   * A thermal link.
   *
   * @param place its place among those of the circuit
   */
  private record LinkAnswer(int place) implements Answer<HeatingState> {
    @Override
    public Forecast of(HeatingState state) {
      return new Forecast(state.link[place], 0.7);
    }
  }

  /**
   * The supply.
   *
   * @param lost the share of the loss under load that is there while it is read
   */
  private record SupplyAnswer(double lost) implements Answer<HeatingState> {
    @Override
    public Forecast of(HeatingState state) {
      double voltage = state.mains * (1 - lost * (1 - state.reaching));
      return new Forecast(voltage, HeaterAnswer.FROM_READING_TO_READING * state.ratedVoltage);
    }
  }

  /**
   * The cord with its plug.
   *
   * @param observable what is asked
   */
  private record CordAnswer(String observable) implements Answer<HeatingState> {
    @Override
    public Forecast of(HeatingState state) {
      return switch (observable) {
        case "insulation-resistance" ->
            EarthLeak.shown(state.applianceInsulation(), state.anyLeak());
        case "plug-burns" -> new Forecast(state.plugBurns, 0.15);
        case "plug-hot" -> Forecast.chance(state.plugHot);
        default -> throw new IllegalArgumentException("no forecast of '" + observable + "'");
      };
    }
  }

  /** All questions, under the usual conditions. */
  List<Question> questions() {
    List<Question> all = new ArrayList<>();
    Component heater = group.heater();
    for (Observable o :
        (group.heatsAir() ? HeaterKinds.AIR_HEATER : HeaterKinds.HEATER).observables()) {
      all.add(new Question(heater.id(), o, usual(o)));
    }
    for (Component link : group.links()) {
      add(all, link, ControlKinds.LINK_RESISTANCE);
    }
    for (Component relay : group.relays()) {
      for (Observable o : ControlKinds.RELAY.observables()) {
        if (o != ControlKinds.COIL_RESISTANCE || coil(relay) > 0) {
          add(all, relay, o);
        }
      }
    }
    for (int i = 0; i < curves.size(); i++) {
      Component sensor = group.sensors().get(i);
      if (curves.get(i).isPresent()) {
        all.add(new Question(sensor.id(), ControlKinds.SENSOR_RESISTANCE, AT_ROOM_TEMPERATURE));
        add(all, sensor, ControlKinds.SHOWN_ERROR);
      }
      add(all, sensor, ControlKinds.OFF_ITS_SEAT);
    }
    if (group.supply().isPresent()) {
      add(all, group.supply().get(), SupplyKinds.IDLE);
      add(all, group.supply().get(), SupplyKinds.LOADED);
    }
    if (group.cord().isPresent()) {
      add(all, group.cord().get(), SupplyKinds.APPLIANCE_INSULATION);
      add(all, group.cord().get(), SupplyKinds.PLUG_BURNS);
      add(all, group.cord().get(), SupplyKinds.PLUG_HOT);
    }
    return List.copyOf(all);
  }

  private static void add(List<Question> all, Component part, Observable observable) {
    all.add(new Question(part.id(), observable, Conditions.NONE));
  }

  private Conditions usual(Observable observable) {
    if (observable == HeaterKinds.HEATING_RATE) {
      return ofHeater(HeaterKinds.VOLUME.id());
    }
    return observable == HeaterKinds.AIR_RISE
        ? ofHeater(HeaterKinds.AIRFLOW.id())
        : Conditions.NONE;
  }

  /** The conditions that a service figure of the heater tells. */
  private Conditions ofHeater(String figure) {
    Optional<Quantity> stated = group.heater().figure(figure);
    return stated.isPresent() ? new Conditions(Map.of(figure, stated.get())) : Conditions.NONE;
  }

  private static double coil(Component relay) {
    return Stated.si(relay.figure(ControlKinds.COIL.id()));
  }

  @Override
  public HeatingState healthy() {
    return new HeatingState(group);
  }

  @Override
  public Answer<HeatingState> answer(Question question) {
    String part = question.component();
    String observable = question.observable().id();
    if (part.equals(group.heater().id())) {
      return HeaterAnswer.to(observable, question.conditions());
    }
    if (isOf(group.supply(), part)) {
      return new SupplyAnswer(observable.equals(SupplyKinds.LOADED.id()) ? 1 : 0.2);
    }
    if (isOf(group.cord(), part)) {
      return new CordAnswer(observable);
    }
    int relay = place(group.relays(), part);
    if (relay >= 0) {
      return new RelayAnswer(observable, relay, coil(group.relays().get(relay)));
    }
    int sensor = place(group.sensors(), part);
    if (sensor >= 0) {
      return SensorAnswer.to(observable, question.conditions(), sensor, curves.get(sensor));
    }
    return new LinkAnswer(place(group.links(), part));
  }

  private static boolean isOf(Optional<Component> part, String id) {
    return part.isPresent() && part.get().id().equals(id);
  }

  /** The place of a part, -1 if it is not there. */
  private static int place(List<Component> parts, String id) {
    for (int i = 0; i < parts.size(); i++) {
      if (parts.get(i).id().equals(id)) {
        return i;
      }
    }
    return -1;
  }
}

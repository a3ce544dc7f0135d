package kelter.electrical.heating;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.electrical.component.CordWords;
import kelter.electrical.rating.HeaterRating;
import kelter.electrical.regulating.Thermostat;

/**
 * A heater whose rating is known, with what lies in its circuit. Where an appliance has several, a
 * link, relay or sensor belongs to the heater with which its id shares a word, such as an
 * air-cut-out to an air-heater; one that shares none, and the supply, to the first.
 *
 * @param heater the heater
 * @param medium what it heats
 * @param balance what is heated along with water
 * @param blown whether a stream of air with lint or dust in it runs over it
 * @param opensWarm whether its thermal links may be open in a warm room and in order
 * @param rating what it has when it is in order
 * @param rated whether its rating is stated; else it is a usual one
 * @param links its thermal links
 * @param relays its relays
 * @param sensors the temperature sensors that govern it
 * @param thermostats its thermostats, where it is the only heater
 * @param supply the supply, if the job lists it
 * @param cord the supply cord, at whose plug the whole appliance is measured, if the job lists it
 */
record HeatingGroup(
    Component heater,
    Medium medium,
    HeatBalance balance,
    boolean blown,
    boolean opensWarm,
    HeaterRating rating,
    boolean rated,
    List<Component> links,
    List<Component> relays,
    List<Component> sensors,
    List<Component> thermostats,
    Optional<Component> supply,
    Optional<Component> cord) {

  /** Words of ids that do not tell one heater from another. */
  private static final Set<String> COMMON_WORDS =
      Set.of("heater", "element", "sensor", "link", "relay", "thermal", "temperature");

  /** Machines whose heaters get no lint: they stand in still air or are cast into metal. */
  private static final Set<String> WITHOUT_LINT =
      Set.of("refrigerator", "oven", "hob", "plate-hob", "iron", "toaster");

  /** The group of a component; empty if it is no heater. */
  static Optional<HeatingGroup> of(Appliance appliance, Component heater) {
    Optional<HeatingGroup> first = first(appliance);
    if (first.isEmpty() || first.get().heater == heater) {
      return first;
    }
    return alone(appliance, heater).map(group -> group.withPartsOf(appliance, false));
  }

  /** The first group of an appliance; empty if it has no heater. */
  static Optional<HeatingGroup> first(Appliance appliance) {
    for (Component part : appliance.components()) {
      Optional<HeatingGroup> alone = alone(appliance, part);
      if (alone.isPresent()) {
        return Optional.of(alone.get().withPartsOf(appliance, true));
      }
    }
    return Optional.empty();
  }

  /** What a job has to say so that the parts of a heating circuit can be judged; may be empty. */
  static String missing(Appliance appliance) {
    return first(appliance).isPresent()
        ? ""
        : "list the heater to whose circuit it belongs, with its rated power and voltage";
  }

  private static Optional<HeatingGroup> alone(Appliance appliance, Component part) {
    Optional<Medium> medium = Medium.of(part.kind());
    if (medium.isEmpty()) {
      return Optional.empty();
    }
    Optional<HeaterRating> rating = HeaterRating.of(appliance, part);
    return Optional.of(
        new HeatingGroup(
            part,
            medium.get(),
            HeatBalance.of(appliance.kind()),
            medium.get() == Medium.AIR && !WITHOUT_LINT.contains(appliance.kind()),
            WholeLink.opensWarm(appliance),
            rating.orElseGet(() -> HeaterRating.usual(appliance, part, medium.get().usualPower())),
            rating.isPresent(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            Optional.empty(),
            Optional.empty()));
  }

  private HeatingGroup withPartsOf(Appliance appliance, boolean first) {
    return new HeatingGroup(
        heater,
        medium,
        balance,
        blown,
        opensWarm,
        rating,
        rated,
        own(appliance, ThermalLink.THERMAL_LINK.id(), first),
        own(appliance, Relay.RELAY.id(), first),
        own(appliance, TemperatureSensor.TEMPERATURE_SENSOR.id(), first),
        Thermostat.isInCircuit(appliance)
            ? own(appliance, Thermostat.THERMOSTAT.id(), first)
            : List.of(),
        first ? first(appliance, MainsSupply.SUPPLY.id()) : Optional.empty(),
        first ? first(appliance, CordWords.CORD.id()) : Optional.empty());
  }

  /** The parts of a kind that lie in the circuit of this heater. */
  private List<Component> own(Appliance appliance, String kind, boolean first) {
    List<Component> own = new ArrayList<>();
    for (Component part : appliance.componentsOf(kind)) {
      Optional<Component> named = namedHeater(appliance, part);
      if (named.isPresent() ? named.get() == heater : first) {
        own.add(part);
      }
    }
    return own;
  }

  /** The heater whose id shares a word with that of a part. */
  private static Optional<Component> namedHeater(Appliance appliance, Component part) {
    List<String> words = List.of(part.id().split("-"));
    for (Component other : appliance.components()) {
      if (Medium.of(other.kind()).isPresent()) {
        for (String word : other.id().split("-")) {
          if (!COMMON_WORDS.contains(word) && words.contains(word)) {
            return Optional.of(other);
          }
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<Component> first(Appliance appliance, String kind) {
    List<Component> parts = appliance.componentsOf(kind);
    return parts.isEmpty() ? Optional.empty() : Optional.of(parts.get(0));
  }

  /** Whether the whole appliance is measured at a cord. */
  boolean isMeasuredAt(Component part) {
    return cord.isPresent() && cord.get() == part;
  }
}

package kelter.electrical.heating;

import java.util.List;
import java.util.Optional;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.electrical.component.CordWords;
import kelter.electrical.rating.HeaterRating;
import kelter.electrical.regulating.Thermostat;

/**
 * A heater whose rating is known, with what lies in its circuit. Where an appliance has several,
 * the links, relays, sensors and the supply are taken to belong to the first.
 *
 * @param heater the heater
 * @param medium what it heats
 * @param balance what is heated along with water
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
    HeaterRating rating,
    boolean rated,
    List<Component> links,
    List<Component> relays,
    List<Component> sensors,
    List<Component> thermostats,
    Optional<Component> supply,
    Optional<Component> cord) {

  /** The group of a component; empty if it is no heater. */
  static Optional<HeatingGroup> of(Appliance appliance, Component heater) {
    Optional<HeatingGroup> first = first(appliance);
    if (first.isEmpty() || first.get().heater == heater) {
      return first;
    }
    return alone(appliance, heater);
  }

  /** The first group of an appliance; empty if it has no heater. */
  static Optional<HeatingGroup> first(Appliance appliance) {
    for (Component part : appliance.components()) {
      Optional<HeatingGroup> alone = alone(appliance, part);
      if (alone.isPresent()) {
        return Optional.of(alone.get().withAllOf(appliance));
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
            rating.orElseGet(() -> HeaterRating.usual(appliance, part, medium.get().usualPower())),
            rating.isPresent(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            Optional.empty(),
            Optional.empty()));
  }

  private HeatingGroup withAllOf(Appliance appliance) {
    return new HeatingGroup(
        heater,
        medium,
        balance,
        rating,
        rated,
        appliance.componentsOf(ThermalLink.THERMAL_LINK.id()),
        appliance.componentsOf(Relay.RELAY.id()),
        appliance.componentsOf(TemperatureSensor.TEMPERATURE_SENSOR.id()),
        Thermostat.isInCircuit(appliance)
            ? appliance.componentsOf(Thermostat.THERMOSTAT.id())
            : List.of(),
        first(appliance, MainsSupply.SUPPLY.id()),
        first(appliance, CordWords.CORD.id()));
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

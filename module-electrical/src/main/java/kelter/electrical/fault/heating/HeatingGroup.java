package kelter.electrical.fault.heating;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.electrical.component.ControlKinds;
import kelter.electrical.component.HeaterKinds;
import kelter.electrical.component.SupplyKinds;
import kelter.electrical.rating.HeaterRating;

/**
 * A heater with what lies in its circuit. Where an appliance has several heaters, the links,
 * relays, sensors and the supply are taken to belong to the first.
 *
 * @param heater the heater
 * @param rating what it has when it is in order
 * @param links its thermal links
 * @param relays its relays
 * @param sensors the temperature sensors that govern it
 * @param supply the supply, if the job lists it
 * @param cord the supply cord, at whose plug the whole appliance is measured, if the job lists it
 */
record HeatingGroup(
    Component heater,
    HeaterRating rating,
    List<Component> links,
    List<Component> relays,
    List<Component> sensors,
    Optional<Component> supply,
    Optional<Component> cord) {

  /** The groups of an appliance, heaters without a rating left out. */
  static List<HeatingGroup> of(Appliance appliance) {
    List<HeatingGroup> groups = new ArrayList<>();
    for (Component part : appliance.components()) {
      if (HeaterKinds.isHeater(part.kind())) {
        Optional<HeaterRating> rating = HeaterRating.of(appliance, part);
        if (rating.isPresent()) {
          groups.add(of(appliance, part, rating.get(), groups.isEmpty()));
        }
      }
    }
    return groups;
  }

  private static HeatingGroup of(
      Appliance appliance, Component heater, HeaterRating rating, boolean first) {
    if (!first) {
      return new HeatingGroup(
          heater, rating, List.of(), List.of(), List.of(), Optional.empty(), Optional.empty());
    }
    return new HeatingGroup(
        heater,
        rating,
        appliance.componentsOf(ControlKinds.THERMAL_LINK.id()),
        appliance.componentsOf(ControlKinds.RELAY.id()),
        appliance.componentsOf(ControlKinds.TEMPERATURE_SENSOR.id()),
        first(appliance.componentsOf(SupplyKinds.SUPPLY.id())),
        first(appliance.componentsOf(SupplyKinds.CORD.id())));
  }

  private static Optional<Component> first(List<Component> parts) {
    return parts.isEmpty() ? Optional.empty() : Optional.of(parts.get(0));
  }

  /** Whether it heats air and not water. */
  boolean heatsAir() {
    return heater.kind().equals(HeaterKinds.AIR_HEATER.id());
  }
}

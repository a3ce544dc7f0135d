package kelter.electrical.fault;

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
 */
record HeatingGroup(
    Component heater,
    HeaterRating rating,
    List<Component> links,
    List<Component> relays,
    List<Component> sensors,
    Optional<Component> supply) {

  /** The groups of an appliance, heaters without a rating left out. */
  static List<HeatingGroup> of(Appliance appliance) {
    List<Component> heaters =
        appliance.components().stream()
            .filter(HeatingGroup::isHeater)
            .filter(heater -> HeaterRating.of(appliance, heater).isPresent())
            .toList();
    return heaters.stream()
        .map(heater -> of(appliance, heater, heater.id().equals(heaters.get(0).id())))
        .toList();
  }

  private static HeatingGroup of(Appliance appliance, Component heater, boolean first) {
    return new HeatingGroup(
        heater,
        HeaterRating.of(appliance, heater).orElseThrow(),
        first ? appliance.componentsOf(ControlKinds.THERMAL_LINK.id()) : List.of(),
        first ? appliance.componentsOf(ControlKinds.RELAY.id()) : List.of(),
        first ? appliance.componentsOf(ControlKinds.TEMPERATURE_SENSOR.id()) : List.of(),
        first
            ? appliance.componentsOf(SupplyKinds.SUPPLY.id()).stream().findFirst()
            : Optional.empty());
  }

  private static boolean isHeater(Component component) {
    return component.kind().equals(HeaterKinds.HEATER.id())
        || component.kind().equals(HeaterKinds.AIR_HEATER.id());
  }

  /** Whether it heats air and not water. */
  boolean heatsAir() {
    return heater.kind().equals(HeaterKinds.AIR_HEATER.id());
  }
}

package kelter.electrical.regulating;

import java.util.List;
import java.util.Optional;
import kelter.core.check.Allowed;
import kelter.core.check.Check;
import kelter.core.check.LimitCheck;
import kelter.core.check.Limits;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.model.Effect;
import kelter.core.diagnosis.model.PartModel;
import kelter.core.diagnosis.model.Spread;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.module.Part;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.electrical.caution.ElectricalCautions;
import kelter.electrical.component.Electrical;
import kelter.electrical.contact.ContactLimits;
import kelter.electrical.contact.ContactWords;

/**
 * A thermostat with a contact, of a heater or of a compressor. Where the machine has one heater, it
 * lies in its circuit and an open one leaves the heater without current. Chances, effects and
 * spreads are from memory.
 */
public final class Thermostat implements Part {

  static final Observable CLOSED =
      ContactWords.closed(
          "resistance across it while it should be closed",
          "Take one wire off. Turn it to its highest heat, or the cold one to its coldest, at room"
              + " temperature, and measure across it.",
          3);

  static final Observable OPENED =
      ContactWords.opened(
          "resistance across it while it should be open",
          "Take one wire off. Turn it to off, or warm its sensor with hot air beyond its setting, and"
              + " measure across it.",
          6);

  static final Observable OVERSHOOT =
      Observable.named("overshoot", "how far it goes beyond its setting before it opens")
          .quantity(QuantityKind.TEMPERATURE_DIFFERENCE, -80, 150)
          .how(
              "Put a thermometer where the heat or the cold is used, close the machine and log until"
                  + " it has opened three times. Write the mean of the last two less the setting;"
                  + " colder counts as more where it cools, and less than zero is too early.")
          .by(Electrical.running(25, new Accuracy(0, 2)));

  /** A thermostat with a contact. */
  public static final ComponentKind THERMOSTAT =
      new ComponentKind(
          "thermostat", "thermostat", List.of(CLOSED, OPENED, OVERSHOOT), List.of(), List.of());

  /** From setting to opening of thermostats in order, K: the mean error of ovens, from memory. */
  private static final double OFF = 20;

  private static final List<String> HEATERS = List.of("heater", "air-heater");

  /** Parts beside which a thermostat governs a compressor, and a heater only thaws. */
  private static final List<String> OF_COMPRESSORS =
      List.of("refrigerant-circuit", "compressor-winding", "start-relay", "overload-protector");

  private static final Source WITHIN =
      Source.fromMemory(
          "thermostats of small and large machines open within 20 K of their setting");

  @Override
  public List<ComponentKind> kinds() {
    return List.of(THERMOSTAT);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        LimitCheck.named("thermostat-conducts", "Does the thermostat conduct?")
            .on(
                THERMOSTAT,
                CLOSED,
                ContactLimits.lowPath(
                    "resistance of the thermostat", ElectricalCautions.NEVER_BRIDGE_THERMOSTAT)),
        LimitCheck.named("thermostat-opens", "Does the thermostat open?")
            .on(
                THERMOSTAT,
                OPENED,
                ContactLimits.open(
                    "resistance of an open contact", ElectricalCautions.NEVER_BRIDGE_THERMOSTAT)),
        LimitCheck.named("thermostat-overshoot", "Does the thermostat open near its setting?")
            .on(
                THERMOSTAT,
                OVERSHOOT,
                Allowed.of("how far it goes beyond its setting", WITHIN, new Limits(-OFF, OFF))
                    .butIfNot(ElectricalCautions.NEVER_BRIDGE_THERMOSTAT)));
  }

  /**
   * Whether the thermostats of a machine lie in the circuit of its heater: where it has one heater
   * and no compressor.
   *
   * @param appliance the machine
   * @return whether the circuit speaks of them
   */
  public static boolean isInCircuit(Appliance appliance) {
    int heaters = 0;
    for (String kind : HEATERS) {
      heaters += appliance.componentsOf(kind).size();
    }
    return heaters == 1 && !cools(appliance);
  }

  private static boolean cools(Appliance appliance) {
    for (String kind : OF_COMPRESSORS) {
      if (!appliance.componentsOf(kind).isEmpty()) {
        return true;
      }
    }
    return false;
  }

  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component thermostat) {
    return isInCircuit(appliance)
        ? Optional.empty()
        : Optional.of(
            addTo(PartModel.of(thermostat.id(), Electrical.PRIORS), thermostat, cools(appliance))
                .build());
  }

  /**
   * Goes on with the thermostat of a heater.
   *
   * @param model the model of its circuit
   * @param thermostat the thermostat
   * @param interrupted what the circuit loses where it is open
   * @return the model
   */
  public static PartModel inCircuit(PartModel model, Component thermostat, Effect... interrupted) {
    return addTo(model, thermostat, false, interrupted);
  }

  private static PartModel addTo(
      PartModel model, Component thermostat, boolean cools, Effect... interrupted) {
    return model
        .on(thermostat, THERMOSTAT, Governing.ALL)
        .faults(ThermostatFaults.of(cools, interrupted))
        .looks(CLOSED, Governing.CLOSED, Spread.constant(0.7))
        .looks(OPENED, Governing.OPENED, Spread.constant(0.7))
        .looks(OVERSHOOT, Governing.OVERSHOOT, Spread.relative(0.2).atLeast(OFF / 2));
  }
}

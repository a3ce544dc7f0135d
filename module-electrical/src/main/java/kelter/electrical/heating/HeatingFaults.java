package kelter.electrical.heating;

import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.ArrayList;
import java.util.List;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.Course;
import kelter.core.diagnosis.model.FaultRow;
import kelter.core.source.Source;
import kelter.electrical.heating.HeatingFigures.Circuit;
import kelter.electrical.heating.HeatingFigures.Link;
import kelter.electrical.heating.HeatingFigures.Relay;
import kelter.electrical.heating.HeatingFigures.Sensor;
import kelter.electrical.insulation.EarthLeak;

/**
 * What can be wrong in a heating circuit, what it changes, and what cures it; chances and effects
 * are from memory.
 *
 * <p>Faults that are one resistance between the same two terminals are never there together: a
 * heater that is open is not shorted, nor is only one of its elements open; a sensor that is open
 * or shorted reads nothing that could drift. A wrong heater may well be open, and contacts burn
 * before they weld.
 */
final class HeatingFaults {

  static final Source PRIOR = Source.fromMemory("estimate of how often it is found");

  /** By how much the worst drifted or loose sensor errs, K. */
  private static final double DRIFT = 12.5;

  private HeatingFaults() {}

  static List<FaultRow> ofHeater(Medium medium, int elements) {
    List<FaultRow> rows = new ArrayList<>();
    rows.add(
        fault("shorted-turns", "heater shorted, in part or wholly", 0.01)
            .changes(
                Circuit.RESISTANCE.times(Course.power(1, 0.01)),
                Circuit.SHEATH_DAMAGED.becomes(Course.line(0.3, 0.7)))
            .curedBy(HeatingWork.renewHeater(medium))
            .wears(Wear.HEATER));
    rows.add(
        fault("wrong-part", "a heater of too little power fitted", 0.005)
            .changes(Circuit.RESISTANCE.times(2), Circuit.MARKING_DIFFERS.becomes(0.9))
            .curedBy(HeatingWork.renewHeater(medium)));
    if (elements > 1) {
      double left = elements / (elements - 1.0);
      rows.add(
          fault("element-open", "one of " + elements + " elements open", 0.06)
              .changes(Circuit.RESISTANCE.times(Course.line(left, left)))
              .curedBy(HeatingWork.renewHeater(medium))
              .wears(Wear.HEATER));
    }
    rows.add(
        fault("open", "heater open", 0.12)
            .changes(Circuit.HEATER_OPEN.becomes(1), Circuit.SHEATH_DAMAGED.atLeast(0.3))
            .apartFrom("shorted-turns", "element-open")
            .curedBy(HeatingWork.renewHeater(medium))
            .wears(Wear.HEATER));
    rows.add(leaking(medium));
    rows.add(medium == Medium.AIR ? lint() : scaled());
    return rows;
  }

  static FaultRow leaking(Medium medium) {
    return fault("leaking", "heater leaks to earth", 0.08)
        .changes(
            Circuit.LEAK.plus(EarthLeak.CONDUCTANCE),
            Circuit.SHEATH_DAMAGED.atLeast(Course.line(0.15, 0.6)))
        .curedBy(HeatingWork.renewHeater(medium))
        .wears(Wear.HEATER);
  }

  private static FaultRow lint() {
    return fault("lint", "lint in the way of the air", 0.12)
        .changes(
            Circuit.DEPOSIT.becomes(Course.line(0.35, 0.95)),
            Circuit.AIRFLOW.times(0.3),
            Circuit.DUTY.times(0.5))
        .curedBy(HeatingWork.CLEAR_AIR_PATH)
        .wears(Wear.DEPOSIT);
  }

  private static FaultRow scaled() {
    return fault("scaled", "heater scaled", 0.08)
        .changes(Circuit.DEPOSIT.becomes(Course.line(0.35, 0.95)), Circuit.DUTY.times(0.85))
        .curedBy(HeatingWork.DESCALE, HeatingWork.renewHeater(Medium.WATER))
        .wears(Wear.DEPOSIT);
  }

  static FaultRow linkOpen() {
    return fault("open", "thermal link open", 0.05)
        .changes(Link.RESISTANCE.becomes(HeatingFigures.OPEN), Circuit.INTERRUPTED.becomes(1))
        .curedBy(HeatingWork.RENEW_LINK);
  }

  static List<FaultRow> ofRelay() {
    return List.of(
        fault("contact-burnt", "relay contact burnt", 0.04)
            .changes(
                Relay.CONTACT.times(Course.power(1, 150)),
                Relay.BURNS.becomes(Course.line(0.35, 0.95)),
                Relay.BURNT_SMELL.becomes(Course.line(0.1, 0.7)),
                Circuit.DUTY.times(0.2))
            .curedBy(HeatingWork.RENEW_RELAY)
            .wears(Wear.CONTACT),
        fault("contact-welded", "relay contact welded", 0.01)
            .changes(
                Relay.WELDED.becomes(1),
                Relay.CLOSED_WHEN_OFF.becomes(0.99),
                Relay.BURNT_SMELL.atLeast(0.2),
                Circuit.OVERHEATS.atLeast(0.8))
            .curedBy(HeatingWork.RENEW_RELAY)
            .wears(Wear.CONTACT),
        fault("coil-open", "relay coil open", 0.015)
            .changes(Relay.COIL_OPEN.becomes(1))
            .curedBy(HeatingWork.RENEW_RELAY));
  }

  static List<FaultRow> ofSensor(Medium medium) {
    return List.of(
        fault("reads-too-warm", "sensor drifted, reads too warm", 0.03)
            .changes(Sensor.TOO_WARM.plus(DRIFT), Circuit.REACHED.times(0.5))
            .curedBy(HeatingWork.renewSensor(medium))
            .wears(Wear.SENSOR),
        fault("reads-too-cold", "sensor drifted, reads too cold", 0.015)
            .changes(Sensor.TOO_WARM.plus(-DRIFT), Circuit.OVERHEATS.atLeast(Course.line(0.1, 0.8)))
            .apartFrom("reads-too-warm")
            .curedBy(HeatingWork.renewSensor(medium))
            .wears(Wear.SENSOR),
        fault("off-seat", "sensor off its seat", 0.015)
            .changes(
                Sensor.OFF_SEAT.becomes(0.98),
                Sensor.OFF_BY.plus(-DRIFT),
                Circuit.OVERHEATS.atLeast(Course.line(0.1, 0.8)))
            .curedBy(HeatingWork.seatSensor(medium)),
        fault("sensor-shorted", "sensor shorted", 0.01)
            .changes(Sensor.RESISTANCE.becomes(1e-3))
            .apartFrom("reads-too-warm", "reads-too-cold")
            .curedBy(HeatingWork.renewSensor(medium)),
        fault("sensor-open", "sensor or its wire open", 0.03)
            .changes(Sensor.RESISTANCE.becomes(HeatingFigures.OPEN))
            .apartFrom("reads-too-warm", "reads-too-cold", "sensor-shorted")
            .curedBy(HeatingWork.seatSensor(medium), HeatingWork.renewSensor(medium))
            .wears(Wear.WIRE));
  }

  static FaultRow lowVoltage() {
    return fault(
            "low-voltage",
            "too little voltage reaches the heater: weak supply or a hot joint",
            0.02)
        .changes(
            Circuit.REACHING.times(0.7),
            Circuit.PLUG_BURNS.becomes(Course.line(0.3, 0.8)),
            Circuit.PLUG_HOT.becomes(Course.line(0.15, 0.75)))
        .curedBy(HeatingWork.MEND_SUPPLY)
        .wears(Wear.WIRE);
  }

  static FaultRow otherLeak() {
    return fault("other-leak", "another part or the wiring leaks to earth", 0.04)
        .changes(Circuit.OTHER_LEAK.plus(EarthLeak.CONDUCTANCE))
        .curedBy(HeatingWork.FIND_LEAK)
        .wears(Wear.WIRE);
  }
}

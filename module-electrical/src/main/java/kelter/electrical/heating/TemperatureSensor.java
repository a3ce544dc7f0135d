package kelter.electrical.heating;

import static kelter.core.diagnosis.model.Course.constant;
import static kelter.core.diagnosis.model.Course.line;
import static kelter.core.diagnosis.model.FaultRow.fault;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kelter.core.check.Allowed;
import kelter.core.check.Check;
import kelter.core.check.LimitCheck;
import kelter.core.check.Limits;
import kelter.core.check.Measured;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Wear;
import kelter.core.diagnosis.model.FaultRow;
import kelter.core.diagnosis.model.Figure;
import kelter.core.diagnosis.model.FigureSet;
import kelter.core.diagnosis.model.PartModel;
import kelter.core.diagnosis.model.Spread;
import kelter.core.diagnosis.model.State;
import kelter.core.diagnosis.model.Work;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.law.Celsius;
import kelter.core.module.Part;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Meaning;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Symptoms;
import kelter.electrical.component.Electrical;
import kelter.electrical.rating.SensorCurve;

/**
 * A thermistor or platinum thermometer that governs a heater, or what cools or cooks in its place.
 * One that is open or shorted reads nothing that could drift, and the control then does not let it
 * heat. Chances, those of symptoms too, effects and spreads are from memory.
 */
public final class TemperatureSensor implements Part {

  /** What no whole sensor has at any room temperature, Ohm; from memory. */
  private static final double OPEN = 1e7;

  static final Observable SENSOR_RESISTANCE =
      Observable.named("resistance", "resistance at a known temperature")
          .logarithmic(QuantityKind.RESISTANCE, Electrical.RESISTANCE)
          .provingFrom(OPEN)
          .at(Electrical.SENSOR_TEMPERATURE)
          .how("Unplug the sensor from the control and measure; read a thermometer beside it.")
          .by(Electrical.dead(5, new Accuracy(0.01, 1)));

  static final Observable SHOWN_ERROR =
      Observable.named(
              "shown-error", "temperature that the machine shows less that of a thermometer")
          .quantity(QuantityKind.TEMPERATURE_DIFFERENCE, -100, 100)
          .at(Electrical.SENSOR_TEMPERATURE)
          .how(
              "Let the machine show the temperature of its sensor, hold a thermometer as near to it"
                  + " as the closed machine allows, wait until both stand still.")
          .by(Electrical.running(10, new Accuracy(0.01, 1)));

  static final Observable OFF_ITS_SEAT =
      Observable.named("off-its-seat", "the sensor does not touch what it should sense")
          .how("Look whether the sensor sits tight in its clip or pocket.")
          .by(Electrical.inside(3));

  static final ComponentKind TEMPERATURE_SENSOR =
      new ComponentKind(
          "temperature-sensor",
          "temperature sensor",
          List.of(SENSOR_RESISTANCE, SHOWN_ERROR, OFF_ITS_SEAT),
          List.of(SensorCurve.R25, SensorCurve.BETA, SensorCurve.R0),
          List.of(SensorCurve.TABLE));

  /** How far it may lie from its table, as a ratio; common practice, no source. */
  private static final double FROM_TABLE = 0.05;

  /** The room where no temperature is stated, K. */
  private static final double COOL_ROOM = Celsius.ZERO + 15;

  private static final double WARM_ROOM = Celsius.ZERO + 25;

  /** Water for washing, K. */
  private static final double WASH = Celsius.ZERO + 40;

  /** How far the machine's own temperature may be off, K; common practice, no source. */
  private static final double SHOWN = 5;

  /** By how much the worst drifted or loose sensor errs, K. */
  private static final double DRIFT = 12.5;

  /** What a sensor governs where nothing of the machine is a heater. */
  private static final Set<String> GOVERNED = Set.of("induction-coil", "compressor-winding");

  private static final Conditions AT_ROOM_TEMPERATURE =
      new Conditions(
          Map.of(
              Electrical.TEMPERATURE.id(),
              Quantity.ofSi(Celsius.TWENTY, 0, QuantityKind.TEMPERATURE)));

  /** What faults change. */
  static final class Sensor {
    static final FigureSet ALL = new FigureSet("temperature-sensor");
    static final Figure RESISTANCE =
        ALL.figure("resistance over the one at its temperature in order, as a ratio", 1);
    static final Figure TOO_WARM = ALL.figure("by how much it reads too warm, K", 0);
    static final Figure OFF_BY =
        ALL.figure("by how much it is warmer than what it should sense, K", 0);
    static final Figure OFF_SEAT = ALL.figure("chance that it is found off its seat", 0.01);

    private Sensor() {}
  }

  /** What mends it. */
  private record Cures(Work seated, Work renewed) {

    static Cures with(Caution... cautions) {
      return new Cures(
          Work.byHand("seat-sensor", "seat the sensor and clean its contacts", 15, 0.9, cautions),
          Work.renewing("renew-sensor", "renew the temperature sensor", 25, 0.95, cautions));
    }
  }

  @Override
  public List<ComponentKind> kinds() {
    return List.of(TEMPERATURE_SENSOR);
  }

  @Override
  public String whyNot(Appliance appliance, Component component) {
    return HeatingGroup.missing(appliance);
  }

  @Override
  public List<Check> checks() {
    return List.of(
        LimitCheck.named("sensor-resistance", "Does the temperature sensor read right?")
            .on(TEMPERATURE_SENSOR, SENSOR_RESISTANCE, TemperatureSensor::resistance),
        LimitCheck.named("shown-temperature", "Does the machine show the right temperature?")
            .on(
                TEMPERATURE_SENSOR,
                SHOWN_ERROR,
                Allowed.of(
                    "temperature shown against a thermometer",
                    Source.commonPractice("the machine shows the temperature within 5 K"),
                    new Limits(-SHOWN, SHOWN))));
  }

  /**
   * What a sensor's table or curve says at the temperature stated, within 5 %. Where no temperature
   * is stated, the limits span what it may have from 15 °C to 25 °C.
   */
  private static Optional<Allowed> resistance(Measured measured) {
    Optional<SensorCurve> curve = SensorCurve.of(measured.component());
    if (curve.isEmpty()) {
      return Optional.empty();
    }
    double cool = ohm(curve.get(), measured, COOL_ROOM);
    double warm = ohm(curve.get(), measured, WARM_ROOM);
    if (!Double.isFinite(cool + warm)) {
      return Optional.empty();
    }
    boolean stated = measured.conditions().figure(Electrical.TEMPERATURE).isPresent();
    return Optional.of(
        Allowed.of(
                "sensor resistance against its curve",
                Source.commonPractice(
                    "within 5 % of the sensor's curve; curve: " + curve.get().source().display()),
                new Limits(
                    Math.min(cool, warm) * (1 - FROM_TABLE),
                    Math.max(cool, warm) * (1 + FROM_TABLE)))
            .resting(stated ? "" : "15 °C to 25 °C taken, because no temperature is stated"));
  }

  /** Resistance at the temperature stated, else at the usual one, Ohm; NaN outside the curve. */
  private static double ohm(SensorCurve curve, Measured measured, double usual) {
    return curve.ohm(measured.conditions().si(Electrical.TEMPERATURE, usual));
  }

  /**
   * Of a machine that cools, or heats a pan by induction; else the circuit of its heater speaks.
   */
  @Override
  public Optional<FaultModel> faultModel(Appliance appliance, Component sensor) {
    if (!governsNoHeater(appliance)) {
      return Optional.empty();
    }
    PartModel model = PartModel.of(sensor.id(), Electrical.PRIORS);
    Cures cures = Cures.with(Caution.UNPLUG);
    addTo(
        model, sensor, tooWarm(cures), tooCold(cures), offSeat(cures), shorted(cures), open(cures));
    return Optional.of(model.build());
  }

  private static boolean governsNoHeater(Appliance appliance) {
    return !Heater.isIn(appliance)
        && appliance.components().stream().anyMatch(each -> GOVERNED.contains(each.kind()));
  }

  /** Puts it into the model of its circuit. */
  static void addTo(PartModel model, Component sensor, HeatingGroup group) {
    Cures cures = Cures.with(Caution.UNPLUG, group.medium().hot());
    addTo(
        model,
        sensor,
        HeatSymptoms.coldOrSlow(tooWarm(cures), group, line(0.05, 0.55), line(0.1, 0.4)),
        tooCold(cures),
        offSeat(cures),
        HeatSymptoms.cold(shorted(cures), group, constant(0.85)),
        HeatSymptoms.cold(open(cures), group, constant(0.85)));
  }

  /** What its curve would tell is asked where it has one. */
  private static void addTo(PartModel model, Component sensor, FaultRow... rows) {
    model
        .on(sensor, TEMPERATURE_SENSOR, Sensor.ALL)
        .faults(rows)
        .looks(OFF_ITS_SEAT, Sensor.OFF_SEAT);
    Optional<SensorCurve> curve = SensorCurve.of(sensor);
    if (curve.isPresent()) {
      model
          .under(new Thermometer(curve.get(), Celsius.TWENTY))
          .usually(AT_ROOM_TEMPERATURE)
          .observe(
              SENSOR_RESISTANCE,
              Thermometer.Reading::resistance,
              (value, order, reading) -> reading.spread())
          .under(new Thermometer(curve.get(), WASH))
          .observe(SHOWN_ERROR, Thermometer.Reading::shownError, Spread.relative(0.3).atLeast(2));
    }
  }

  /** The machine stops heating early. */
  private static FaultRow tooWarm(Cures cures) {
    return fault("reads-too-warm", "sensor drifted, reads too warm", 0.03)
        .changes(Sensor.TOO_WARM.plus(DRIFT))
        .makes(Meaning.SENSOR.symptom(), 0.05, 0.3)
        .wears(Wear.SENSOR)
        .curedBy(cures.renewed());
  }

  private static FaultRow tooCold(Cures cures) {
    return tooHot(
        fault("reads-too-cold", "sensor drifted, reads too cold", 0.015)
            .changes(Sensor.TOO_WARM.plus(-DRIFT))
            .makes(Meaning.SENSOR.symptom(), 0.05, 0.3)
            .apartFrom("reads-too-warm")
            .wears(Wear.SENSOR)
            .curedBy(cures.renewed()));
  }

  private static FaultRow offSeat(Cures cures) {
    return tooHot(
        fault("off-seat", "sensor off its seat", 0.015)
            .changes(Sensor.OFF_SEAT.becomes(0.98), Sensor.OFF_BY.plus(-DRIFT))
            .makes(Symptoms.TEMPERATURE_SWINGS, 0.05, 0.4)
            .curedBy(cures.seated()));
  }

  private static FaultRow tooHot(FaultRow row) {
    return row.makes(Symptoms.TOO_HOT, 0.1, 0.8)
        .makes(Symptoms.POOR_RESULT, 0.1, 0.4)
        .makes(Meaning.TOO_HOT.symptom(), 0, 0.4);
  }

  private static FaultRow shorted(Cures cures) {
    return unreadable(
        fault("sensor-shorted", "sensor shorted", 0.01)
            .changes(Sensor.RESISTANCE.becomes(1e-3))
            .apartFrom("reads-too-warm", "reads-too-cold")
            .curedBy(cures.renewed()));
  }

  private static FaultRow open(Cures cures) {
    return unreadable(
        fault("sensor-open", "sensor or its wire open", 0.03)
            .changes(Sensor.RESISTANCE.becomes(Electrical.RESISTANCE.high()))
            .apartFrom("reads-too-warm", "reads-too-cold", "sensor-shorted")
            .wears(Wear.WIRE)
            .curedBy(cures.seated(), cures.renewed()));
  }

  private static FaultRow unreadable(FaultRow row) {
    return row.makes(Meaning.SENSOR.symptom(), 0.7).makes(Symptoms.DOES_NOT_START, 0.2);
  }

  /** Whether it is open or shorted, so that the control does not let it heat. */
  static boolean isUnreadable(State sensor) {
    return sensor.of(Sensor.RESISTANCE) != Sensor.RESISTANCE.inOrder();
  }
}

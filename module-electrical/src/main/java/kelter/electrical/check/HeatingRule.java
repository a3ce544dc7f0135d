package kelter.electrical.check;

import java.util.Optional;
import kelter.core.check.Limits;
import kelter.core.job.Component;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.RatedRange;
import kelter.core.source.Source;
import kelter.electrical.component.Electrical;
import kelter.electrical.component.HeaterKinds;
import kelter.electrical.heater.HeatUp;
import kelter.electrical.rating.MainsRange;
import kelter.electrical.rating.RatedInput;
import kelter.electrical.rating.Stated;

/**
 * What a heater does to its water or air against its rated power, and the voltage that reaches it.
 * Where no voltage is stated, the limits span the mains range of 10 % to either side. Where the
 * nameplate has a range of voltages, {@link RatedInput} says to which its power belongs.
 */
final class HeatingRule {

  /** Least share of the power that warms the water of a closed machine; common practice. */
  private static final double STAYS = 0.70;

  /** How far the flow of air may be off its figure, as a ratio; common practice, no source. */
  private static final double AIRFLOW = 0.20;

  /** Density of water, kg/m³, at 40 °C within 0.7 % from 10 °C to 60 °C: IAPWS R6-95. */
  private static final double WATER_DENSITY = 992.2;

  /** Heat capacity of air, J/(m³ K): 1.2 kg/m³ at 20 °C and 1005 J/(kg K), from memory. */
  private static final double AIR_HEAT_CAPACITY = 1206;

  private HeatingRule() {}

  static Optional<LimitCheck.Allowed> voltage(Job job, Component heater, Measurement measurement) {
    Optional<RatedRange> rated = Stated.voltage(job.appliance(), heater);
    if (rated.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new LimitCheck.Allowed(
            MainsRange.of(rated.get()),
            Source.commonPractice("the mains range of 10 % to either side reaches the terminals"),
            "voltage at the terminals against rated voltage",
            rated.get().isRange() ? "rated " + rated.get().display() : "",
            Optional.empty()));
  }

  static Optional<LimitCheck.Allowed> rate(Job job, Component heater, Measurement measurement) {
    Optional<RatedInput> input = RatedInput.of(job.appliance(), heater);
    double volume = stated(heater, measurement, HeaterKinds.VOLUME.id());
    return input.isPresent() && input.get().hasBand() && volume > 0
        ? Optional.of(
            rate(
                power(input.get(), job, heater, measurement),
                volume * WATER_DENSITY,
                input.get().remark("machine and losses take up to 30 % of the heat")))
        : Optional.empty();
  }

  private static LimitCheck.Allowed rate(Limits power, double mass, String remark) {
    return new LimitCheck.Allowed(
        new Limits(HeatUp.rate(mass, power.low(), 0, STAYS), HeatUp.rate(mass, power.high(), 0, 1)),
        Source.commonPractice(
            "heat balance of the water by the power input band of IEC 60335-1, 70 % to 100 % of the"
                + " heat staying in it"),
        "rate of heating against rated power and volume",
        remark,
        Optional.empty());
  }

  static Optional<LimitCheck.Allowed> airRise(Job job, Component heater, Measurement measurement) {
    Optional<RatedInput> input = RatedInput.of(job.appliance(), heater);
    double airflow = stated(heater, measurement, HeaterKinds.AIRFLOW.id());
    return input.isPresent() && input.get().hasBand() && airflow > 0
        ? Optional.of(
            airRise(
                power(input.get(), job, heater, measurement),
                airflow * AIR_HEAT_CAPACITY,
                input
                    .get()
                    .remark("above: too little air; below: too little power, or too much air")))
        : Optional.empty();
  }

  private static LimitCheck.Allowed airRise(Limits power, double capacity, String remark) {
    return new LimitCheck.Allowed(
        new Limits(
            power.low() / (capacity * (1 + AIRFLOW)), power.high() / (capacity * (1 - AIRFLOW))),
        Source.commonPractice(
            "heat balance of the air by the power input band of IEC 60335-1, airflow within 20 %"),
        "temperature rise of the air against rated power and airflow",
        remark,
        Optional.empty());
  }

  /** The power input allowed at the voltage of the reading, W. */
  private static Limits power(
      RatedInput input, Job job, Component heater, Measurement measurement) {
    double volts = Stated.si(measurement.conditions().figure(Electrical.VOLTAGE.id()));
    if (volts > 0) {
      return input.power(volts, volts);
    }
    Limits mains = MainsRange.of(Stated.voltage(job.appliance(), heater).orElseThrow());
    return input.power(mains.low(), mains.high());
  }

  /** What the conditions of the reading say of the heater, else what its figures say. */
  private static double stated(Component heater, Measurement measurement, String name) {
    return Stated.si(measurement.conditions().figure(name), heater.figure(name));
  }
}

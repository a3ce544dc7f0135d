package kelter.electrical.check;

import java.util.Optional;
import kelter.core.check.Limits;
import kelter.core.job.Component;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.source.Source;
import kelter.electrical.component.Electrical;
import kelter.electrical.component.HeaterKinds;
import kelter.electrical.heater.HeatUp;
import kelter.electrical.heater.PowerInputBand;
import kelter.electrical.rating.Stated;

/**
 * What a heater does to its water or air against its rated power, and the voltage that reaches it.
 * Where no voltage is stated, the limits span the mains range of 10 % to either side.
 */
final class HeatingRule {

  /** Mains range, as a ratio: (EU) 2019/2014, Art. 2, and IEC 60038. */
  private static final double MAINS = 0.10;

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
    double rated = Stated.voltage(job.appliance(), heater);
    if (!(rated > 0)) {
      return Optional.empty();
    }
    return Optional.of(
        new LimitCheck.Allowed(
            new Limits(rated * (1 - MAINS), rated * (1 + MAINS)),
            Source.commonPractice("the mains range of 10 % to either side reaches the terminals"),
            "voltage at the terminals against rated voltage",
            "",
            Optional.empty()));
  }

  static Optional<LimitCheck.Allowed> rate(Job job, Component heater, Measurement measurement) {
    Optional<Limits> power = band(job, heater, measurement);
    double volume = stated(heater, measurement, HeaterKinds.VOLUME.id());
    return power.isPresent() && volume > 0
        ? Optional.of(rate(power.get(), volume * WATER_DENSITY))
        : Optional.empty();
  }

  private static LimitCheck.Allowed rate(Limits power, double mass) {
    return new LimitCheck.Allowed(
        new Limits(HeatUp.rate(mass, power.low(), 0, STAYS), HeatUp.rate(mass, power.high(), 0, 1)),
        Source.commonPractice(
            "heat balance of the water by the power input band of IEC 60335-1, 70 % to 100 % of the"
                + " heat staying in it"),
        "rate of heating against rated power and volume",
        "machine and losses take up to 30 % of the heat",
        Optional.empty());
  }

  static Optional<LimitCheck.Allowed> airRise(Job job, Component heater, Measurement measurement) {
    Optional<Limits> power = band(job, heater, measurement);
    double airflow = stated(heater, measurement, HeaterKinds.AIRFLOW.id());
    return power.isPresent() && airflow > 0
        ? Optional.of(airRise(power.get(), airflow * AIR_HEAT_CAPACITY))
        : Optional.empty();
  }

  private static LimitCheck.Allowed airRise(Limits power, double capacity) {
    return new LimitCheck.Allowed(
        new Limits(
            power.low() / (capacity * (1 + AIRFLOW)), power.high() / (capacity * (1 - AIRFLOW))),
        Source.commonPractice(
            "heat balance of the air by the power input band of IEC 60335-1, airflow within 20 %"),
        "temperature rise of the air against rated power and airflow",
        "above: too little air; below: too little power, or too much air",
        Optional.empty());
  }

  /** The power input allowed at the voltage of the reading, W. */
  private static Optional<Limits> band(Job job, Component heater, Measurement measurement) {
    double power = Stated.si(heater.nameplate().power());
    double rated = Stated.voltage(job.appliance(), heater);
    if (!(power > 25 && rated > 0)) {
      return Optional.empty();
    }
    double volts = Stated.si(measurement.conditions().figure(Electrical.VOLTAGE.id()));
    double least = (volts > 0 ? volts : rated * (1 - MAINS)) / rated;
    double most = (volts > 0 ? volts : rated * (1 + MAINS)) / rated;
    Limits band = PowerInputBand.heating(power);
    return Optional.of(new Limits(band.low() * least * least, band.high() * most * most));
  }

  /** What the conditions of the reading say of the heater, else what its figures say. */
  private static double stated(Component heater, Measurement measurement, String name) {
    return Stated.si(measurement.conditions().figure(name), heater.figure(name));
  }
}

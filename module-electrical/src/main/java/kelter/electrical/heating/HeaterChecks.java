package kelter.electrical.heating;

import java.util.Optional;
import kelter.core.check.Allowed;
import kelter.core.check.Limits;
import kelter.core.check.Measured;
import kelter.core.job.RatedRange;
import kelter.core.job.Reading;
import kelter.core.law.PowerInputBand;
import kelter.core.quantity.QuantityFormat;
import kelter.core.safety.Caution;
import kelter.core.safety.Caution.Signal;
import kelter.core.source.Source;
import kelter.core.vocabulary.Characteristic;
import kelter.electrical.caution.ElectricalCautions;
import kelter.electrical.component.Electrical;
import kelter.electrical.contact.SoundJoint;
import kelter.electrical.heater.HeatUp;
import kelter.electrical.heater.HeaterResistance;
import kelter.electrical.rating.HeaterRating;
import kelter.electrical.rating.MainsRange;
import kelter.electrical.rating.RatedInput;

/**
 * What a heater may measure, take and do against its rated power: the band of IEC 60335-1, clause
 * 10, brought to the voltage of the reading. Where no voltage is stated, the limits span the mains
 * ({@link MainsRange}). Where the nameplate has a range of voltages, {@link RatedInput} says to
 * which its power belongs.
 */
final class HeaterChecks {

  /** How much less a cold heater may measure; {@code AlloyResistance}, as a ratio. */
  private static final double COLD_ALLOWANCE = 0.03;

  /** How far a reading may lie from a service figure, as a ratio; common practice, no source. */
  private static final double FROM_FIGURE = 0.10;

  /** Above this many times the upper limit the element is as good as open. */
  private static final double OPEN = 20;

  /** Below this share of the lower limit it is a short. */
  private static final double SHORT = 0.2;

  /** Least share of the power that warms the water of a closed machine; common practice. */
  private static final double STAYS = 0.70;

  /** How far the flow of air may be off its figure, as a ratio; common practice, no source. */
  private static final double AIRFLOW = 0.20;

  /** Density of water, kg/m³, at 40 °C within 0.7 % from 10 °C to 60 °C: IAPWS R6-95. */
  private static final double WATER_DENSITY = 992.2;

  private static final Caution DO_NOT_CONNECT =
      new Caution(
          Signal.WARNING,
          "Do not put this heater under voltage again before the reading is explained: a short heats"
              + " wires and contacts within seconds.");

  private HeaterChecks() {}

  /**
   * Cold: at least the least resistance that the nameplate allows, less the 3 % by which heating
   * wire may measure less when cold, and at most the greatest. Without a rated power, the service
   * figure within 10 %.
   */
  static Optional<Allowed> resistance(Measured measured) {
    Optional<RatedInput> input = banded(measured);
    if (input.isPresent()) {
      Limits hot = input.get().resistance();
      return Optional.of(
          resistance(
              measured,
              Allowed.of(
                  "resistance against rated power and voltage",
                  input.get().source(HeaterResistance.SOURCE),
                  new Limits(hot.low() * (1 - COLD_ALLOWANCE), hot.high())),
              input
                  .get()
                  .remark("lower limit less 3 %, because heating wire measures less when cold")));
    }
    double figure = measured.component().si(HeaterRating.COLD_RESISTANCE);
    if (Double.isNaN(figure)) {
      return Optional.empty();
    }
    return Optional.of(
        resistance(
            measured,
            Allowed.of(
                "resistance against service figure",
                Source.commonPractice("service figure of the heater, within 10 %"),
                new Limits(figure * (1 - FROM_FIGURE), figure * (1 + FROM_FIGURE))),
            ""));
  }

  private static Allowed resistance(Measured measured, Allowed allowed, String basis) {
    Reading reading = measured.measurement().readings().get(0);
    Limits limits = allowed.limits().orElseThrow();
    String words = words(reading, limits);
    Allowed resting =
        allowed.resting(words.isEmpty() || basis.isEmpty() ? words + basis : words + "; " + basis);
    return reading.most() < limits.low() ? resting.butIfNot(DO_NOT_CONNECT) : resting;
  }

  /** What an extreme reading means. */
  private static String words(Reading reading, Limits limits) {
    if (reading.most() < SHORT * limits.low()) {
      return "a short: the current would be many times the rated one, or the leads touch each"
          + " other";
    }
    return reading.least() > OPEN * limits.high()
        ? "an open element: no current can flow through it, so it cannot heat"
        : "";
  }

  static Optional<Allowed> power(Measured measured) {
    Optional<RatedInput> input = banded(measured);
    return input.isPresent()
        ? Optional.of(
            ofInput(
                measured,
                input.get(),
                "power against rated power",
                power(input.get(), mains(measured))))
        : Optional.empty();
  }

  static Optional<Allowed> current(Measured measured) {
    Optional<RatedInput> input = banded(measured);
    if (input.isEmpty()) {
      return Optional.empty();
    }
    Limits mains = mains(measured);
    Limits power = power(input.get(), mains);
    return Optional.of(
        ofInput(
            measured,
            input.get(),
            "current against rated power and voltage",
            new Limits(power.low() / mains.low(), power.high() / mains.high())));
  }

  private static Allowed ofInput(Measured measured, RatedInput input, String title, Limits limits) {
    Limits mains = mains(measured);
    return Allowed.of(title, input.source(PowerInputBand.SOURCE), limits)
        .resting(
            input.remark(
                volts(measured) > 0
                    ? "brought to the voltage of the reading"
                    : "mains of "
                        + QuantityFormat.plain(mains.low())
                        + " V to "
                        + QuantityFormat.plain(mains.high())
                        + " V taken, because no voltage is stated"));
  }

  static Optional<Allowed> voltage(Measured measured) {
    Optional<RatedRange> rated = RatedInput.voltage(measured.appliance(), measured.component());
    Optional<MainsRange> mains = MainsRange.of(measured.appliance(), measured.component());
    if (mains.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        Allowed.of(
                "voltage at the terminals against rated voltage",
                mains.get().source(),
                mains.get().limits())
            .resting(rated.get().isRange() ? "rated " + rated.get().display() : ""));
  }

  static Optional<Allowed> jointDrop(Measured measured) {
    String title = "voltage across a joint against its heat";
    Optional<RatedInput> input = RatedInput.of(measured.appliance(), measured.component());
    double rated =
        input.isPresent()
            ? input.get().assumed().power() / input.get().assumed().voltage()
            : Double.NaN;
    double current = measured.conditions().si(Electrical.CURRENT, rated);
    if (!(current > 0)) {
      return Optional.of(Allowed.without(title, SoundJoint.SOURCE, SoundJoint.NO_CURRENT));
    }
    double volts = input.isPresent() ? input.get().assumed().voltage() : Double.NaN;
    return Optional.of(
        Allowed.of(title, SoundJoint.SOURCE, SoundJoint.limits(current, volts, 0))
            .resting("at " + QuantityFormat.plain(rounded(current)) + " A")
            .butIfNot(ElectricalCautions.HOT_JOINT));
  }

  private static double rounded(double amperes) {
    return Math.round(100 * amperes) / 100.0;
  }

  static Optional<Allowed> heatingRate(Measured measured) {
    Optional<RatedInput> input = banded(measured);
    double volume = stated(measured, HeaterWords.VOLUME);
    if (input.isEmpty() || !(volume > 0)) {
      return Optional.empty();
    }
    Limits power = power(input.get(), mains(measured));
    double mass = volume * WATER_DENSITY;
    return Optional.of(
        Allowed.of(
                "rate of heating against rated power and volume",
                Source.commonPractice(
                    "heat balance of the water by the power input band of IEC 60335-1, 70 % to 100 %"
                        + " of the heat staying in it"),
                new Limits(
                    HeatUp.rate(mass, power.low(), 0, STAYS),
                    HeatUp.rate(mass, power.high(), 0, 1)))
            .resting(input.get().remark("machine and losses take up to 30 % of the heat")));
  }

  static Optional<Allowed> airRise(Measured measured) {
    Optional<RatedInput> input = banded(measured);
    double airflow = stated(measured, HeaterWords.AIRFLOW);
    if (input.isEmpty() || !(airflow > 0)) {
      return Optional.empty();
    }
    Limits power = power(input.get(), mains(measured));
    double capacity = airflow * HeatUp.AIR_HEAT_CAPACITY;
    return Optional.of(
        Allowed.of(
                "temperature rise of the air against rated power and airflow",
                Source.commonPractice(
                    "heat balance of the air by the power input band of IEC 60335-1, airflow within"
                        + " 20 %"),
                new Limits(
                    power.low() / (capacity * (1 + AIRFLOW)),
                    power.high() / (capacity * (1 - AIRFLOW))))
            .resting(
                input
                    .get()
                    .remark("above: too little air; below: too little power, or too much air")));
  }

  /** What the nameplate says, where it has a power for which there is a band. */
  private static Optional<RatedInput> banded(Measured measured) {
    Optional<RatedInput> input = RatedInput.of(measured.appliance(), measured.component());
    return input.isPresent() && input.get().hasBand() ? input : Optional.empty();
  }

  /** The voltage stated with a reading, V; NaN if none is. */
  private static double volts(Measured measured) {
    return measured.conditions().si(Electrical.VOLTAGE, Double.NaN);
  }

  /** Between which voltages the reading was taken, V. */
  private static Limits mains(Measured measured) {
    double volts = volts(measured);
    return volts > 0
        ? new Limits(volts, volts)
        : MainsRange.of(measured.appliance(), measured.component()).orElseThrow().limits();
  }

  private static Limits power(RatedInput input, Limits mains) {
    return input.power(mains.low(), mains.high());
  }

  /** What the conditions of the reading say of the heater, else what its figures say. */
  private static double stated(Measured measured, Characteristic figure) {
    return measured.conditions().si(figure, measured.component().si(figure));
  }
}

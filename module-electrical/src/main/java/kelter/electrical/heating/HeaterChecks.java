package kelter.electrical.heating;

import java.util.Optional;
import kelter.core.check.Allowed;
import kelter.core.check.Limits;
import kelter.core.check.Measured;
import kelter.core.job.RatedRange;
import kelter.core.job.Reading;
import kelter.core.law.PowerInputBand;
import kelter.core.quantity.QuantityFormat;
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

  /** How far the flow of air may be off its figure, as a ratio; common practice, no source. */
  private static final double AIRFLOW = 0.20;

  private static final String NO_VOLTAGE =
      "neither the heater nor the machine in the job has a rated voltage: state it";

  private static final String BY_RATING = "resistance against rated power and voltage";

  private static final String RISE = "temperature rise of the air against rated power and airflow";

  private static final Source OF_AIR =
      Source.commonPractice(
          "heat balance of the air by the power input band of IEC 60335-1, airflow within 20 %");

  private static final String RATE = "rate of heating against rated power, water and load";

  private static final Source BALANCE =
      Source.fromMemory(
          "heat balance of water, machine and load by the power input band of IEC 60335-1, up to 10 %"
              + " lost; masses of the machine within 30 %");

  private static final String OF_MACHINE = "what of the machine gets warm is counted in";

  private static final String OF_UNKNOWN_KIND =
      "what is heated along is not known of this kind of appliance: between no load and that of a"
          + " dishwasher nothing is decided";

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
      if (isThreePhase(measured, input.get())) {
        return Optional.of(ofThree(measured, input.get(), hot));
      }
      return Optional.of(
          resistance(
              measured,
              Allowed.of(
                  BY_RATING,
                  input.get().source(HeaterResistance.SOURCE),
                  new Limits(hot.low() * (1 - COLD_ALLOWANCE), hot.high())),
              input
                  .get()
                  .remark("lower limit less 3 %, because heating wire measures less when cold")));
    }
    double figure = measured.component().si(HeaterRating.COLD_RESISTANCE);
    if (Double.isNaN(figure)) {
      return without(measured, BY_RATING);
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

  /** Held against the sound reading that it lies nearest to: nobody states where it was taken. */
  private static Allowed ofThree(Measured measured, RatedInput input, Limits hot) {
    double read = measured.measurement().readings().get(0).least();
    double rated = input.assumed().voltage() * input.assumed().voltage() / input.assumed().power();
    double times = ThreeElements.nearest(read, rated);
    return resistance(
        measured,
        Allowed.of(
            BY_RATING,
            input.source(HeaterResistance.SOURCE),
            new Limits(times * hot.low() * (1 - COLD_ALLOWANCE), times * hot.high())),
        ThreeElements.told(input));
  }

  private static boolean isThreePhase(Measured measured, RatedInput input) {
    return ThreeElements.are(input, HeaterRating.elements(measured.component()));
  }

  private static Allowed resistance(Measured measured, Allowed allowed, String basis) {
    Reading reading = measured.measurement().readings().get(0);
    Limits limits = allowed.limits().orElseThrow();
    String words = words(reading, limits);
    Allowed resting =
        allowed.resting(words.isEmpty() || basis.isEmpty() ? words + basis : words + "; " + basis);
    return reading.most() < limits.low()
        ? resting.butIfNot(ElectricalCautions.SHORTED_HEATER)
        : resting;
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
    String title = "power against rated power";
    return input.isPresent()
        ? Optional.of(ofInput(measured, input.get(), title, power(input.get(), mains(measured))))
        : without(measured, title);
  }

  static Optional<Allowed> current(Measured measured) {
    String title = "current against rated power and voltage";
    Optional<RatedInput> input = banded(measured);
    if (input.isEmpty()) {
      return without(measured, title);
    }
    Limits mains = mains(measured);
    Limits power = power(input.get(), mains);
    double phases = isThreePhase(measured, input.get()) ? Math.sqrt(3) : 1;
    return Optional.of(
        ofInput(
            measured,
            input.get(),
            title,
            new Limits(power.low() / mains.low() / phases, power.high() / mains.high() / phases)));
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
    String title = "voltage at the terminals against rated voltage";
    if (mains.isEmpty()) {
      return Optional.of(Allowed.without(title, MainsRange.RATED, NO_VOLTAGE));
    }
    return Optional.of(
        Allowed.of(title, mains.get().source(), mains.get().limits())
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
    if (input.isEmpty()) {
      return without(measured, RATE);
    }
    if (!(volume > 0)) {
      return Optional.of(
          Allowed.without(
              RATE, BALANCE, "state the volume of the water with the reading or the heater"));
    }
    Limits power = power(input.get(), mains(measured));
    HeatBalance balance = HeatBalance.of(measured.appliance().kind());
    double load = measured.conditions().si(HeaterWords.LOAD, Double.NaN);
    Limits rate = rate(power, balance.capacity(volume, load));
    return Optional.of(
        balance.isKnown()
            ? Allowed.of(RATE, BALANCE, rate)
                .resting(input.get().remark(balance.hasLoad() ? ofLoad(load) : OF_MACHINE))
            : Allowed.of(RATE, BALANCE, ofHeaviest(rate, power, volume))
                .orPerhaps(rate)
                .resting(input.get().remark(OF_UNKNOWN_KIND)));
  }

  private static Limits rate(Limits power, Limits capacity) {
    return new Limits(
        power.low() * HeatBalance.STAYS.low() / capacity.high(),
        power.high() * HeatBalance.STAYS.high() / capacity.low());
  }

  /** With the heaviest load in the least water that is known, which is that of a dishwasher. */
  private static Limits ofHeaviest(Limits rate, Limits power, double volume) {
    Limits heaviest = rate(power, HeatBalance.of("dishwasher").capacity(volume, Double.NaN));
    return new Limits(Math.min(rate.low(), heaviest.low()), rate.high());
  }

  private static String ofLoad(double load) {
    return OF_MACHINE
        + (load >= 0
            ? "; load of " + QuantityFormat.plain(load) + " kg"
            : "; from empty to full, because the load is not stated");
  }

  static Optional<Allowed> airRise(Measured measured) {
    Optional<RatedInput> input = banded(measured);
    double airflow = stated(measured, HeaterWords.AIRFLOW);
    if (input.isEmpty()) {
      return without(measured, RISE);
    }
    if (!(airflow > 0)) {
      return Optional.of(
          Allowed.without(
              RISE, OF_AIR, "state the flow rate of the air with the reading or the heater"));
    }
    Limits power = power(input.get(), mains(measured));
    Limits read = rise(power, airflow);
    double most = Math.min(read.high(), most(measured, power));
    return Optional.of(
        Allowed.of(RISE, OF_AIR, new Limits(Math.min(read.low(), most), most))
            .resting(
                input
                    .get()
                    .remark(
                        "above: too little air; below: too little power, or too much air"
                            + (volts(measured) > 0
                                ? ""
                                : "; the mains voltage, stated with the reading, narrows it")))
            .fearingAbove());
  }

  private static Limits rise(Limits power, double airflow) {
    double capacity = airflow * HeatUp.AIR_HEAT_CAPACITY;
    return new Limits(
        power.low() / (capacity * (1 + AIRFLOW)), power.high() / (capacity * (1 - AIRFLOW)));
  }

  /**
   * The most that the air may be warmed where it flows as the machine was made for, K: less air
   * that was read with the rise does not make a choked machine conform.
   */
  private static double most(Measured measured, Limits power) {
    double figure = measured.component().si(HeaterWords.AIRFLOW);
    return figure > 0 ? rise(power, figure).high() : Double.POSITIVE_INFINITY;
  }

  /** What the nameplate says, where it has a power for which there is a band. */
  private static Optional<RatedInput> banded(Measured measured) {
    Optional<RatedInput> input = RatedInput.of(measured.appliance(), measured.component());
    return input.isPresent() && input.get().hasBand() ? input : Optional.empty();
  }

  /** Why there is no band. */
  private static Optional<Allowed> without(Measured measured, String title) {
    Optional<RatedRange> power = measured.component().nameplate().power();
    String why;
    if (power.isEmpty()) {
      why = "the nameplate of the heater in the job has no power: state it";
    } else if (RatedInput.voltage(measured.appliance(), measured.component()).isEmpty()) {
      why = NO_VOLTAGE;
    } else {
      why =
          "the rated power is "
              + QuantityFormat.plain(power.get().low().si())
              + " W, and up to 25 W the table has no lower limit: read the nameplate again";
    }
    return Optional.of(Allowed.without(title, PowerInputBand.SOURCE, why));
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

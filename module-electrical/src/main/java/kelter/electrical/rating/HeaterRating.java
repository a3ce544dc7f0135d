package kelter.electrical.rating;

import java.util.Optional;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.RatedRange;
import kelter.core.quantity.QuantityKind;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.Span;

/**
 * What a heater in good order has.
 *
 * @param voltage the voltage to which its power belongs, V: by its own nameplate, else by that of
 *     the appliance
 * @param power its power at that voltage, W: of its own nameplate, else from its service figure of
 *     resistance
 * @param cold its resistance at 20 °C, Ohm
 * @param resistanceStated whether the cold resistance is a service figure
 * @param openness how far the cold resistance may be off because it had to be taken to which of a
 *     range of voltages the power belongs, a standard uncertainty as a ratio; 0 if nothing was
 *     taken
 * @param mains the usual voltage of the mains, V: the mean of the rated range
 * @param mainsOpenness how far it may be off because the mains of a house may be any of the range,
 *     a standard uncertainty as a ratio; 0 for one voltage
 * @param elements how many like elements lie in parallel, 1 or more
 */
public record HeaterRating(
    double voltage,
    double power,
    double cold,
    boolean resistanceStated,
    double openness,
    double mains,
    double mainsOpenness,
    int elements) {

  /** Its resistance as the maker states it, when cold. */
  public static final Characteristic COLD_RESISTANCE =
      new Characteristic("resistance", "resistance at 20 °C", QuantityKind.RESISTANCE)
          .within(new Span(0.05, 1e5));

  /** How many like elements lie in parallel. */
  public static final Characteristic ELEMENTS =
      new Characteristic("elements", "number of like elements in parallel", QuantityKind.COUNT)
          .within(new Span(1, 24));

  /**
   * Resistance at working temperature over the one at 20 °C of ordinary heating wire: 1.02, within
   * 0.03. Maker's alloy table (Cr20Ni80 below 600 °C) and other handbooks, from memory.
   */
  public static final double HOT_OVER_COLD = 1.02;

  /** Above this a rated voltage is one between two phases, V. */
  private static final double BETWEEN_PHASES = 300;

  /** 16 A at 440 V and some, W: more lies on three phases; common practice, no source. */
  private static final double MOST_ON_TWO_PHASES = 7300;

  /** The mains where nothing is stated, V; IEC 60038. */
  private static final double USUAL_VOLTAGE = 230;

  /** A factor of two either way holds nine of ten: ln 2 over the 0.95 quantile. */
  private static final double USUAL_OPENNESS = Math.log(2) / 1.645;

  /** Half-width over standard deviation of a rectangular distribution (JCGM 100:2008, 4.3.7). */
  private static final double RECTANGULAR = Math.sqrt(3);

  /**
   * Reads the rating of a heater.
   *
   * @param appliance the machine
   * @param heater one of its heaters
   * @return the rating, or empty if neither power nor resistance can be had together with a voltage
   */
  public static Optional<HeaterRating> of(Appliance appliance, Component heater) {
    Optional<RatedRange> voltage = RatedInput.voltage(appliance, heater);
    Optional<RatedInput> input = RatedInput.of(appliance, heater);
    double cold = heater.si(COLD_RESISTANCE);
    boolean coldStated = !Double.isNaN(cold);
    if (voltage.isEmpty() || !(coldStated ? cold > 0 : input.isPresent())) {
      return Optional.empty();
    }
    return Optional.of(
        coldStated
            ? byFigure(voltage.get(), input, cold, elements(heater))
            : byNameplate(voltage.get(), input.get(), elements(heater)));
  }

  /**
   * The rating of a heater of which nothing is stated: a usual one, of which 90 of 100 lie between
   * half its power and twice that; from memory.
   *
   * @param appliance the machine
   * @param heater one of its heaters
   * @param power a usual power of such heaters, W
   * @return the rating, whose resistance is open by as much
   */
  public static HeaterRating usual(Appliance appliance, Component heater, double power) {
    double voltage =
        RatedInput.voltage(appliance, heater).map(RatedRange::meanSi).orElse(USUAL_VOLTAGE);
    double cold = voltage * voltage / power / HOT_OVER_COLD;
    return new HeaterRating(
        voltage, power, cold, false, USUAL_OPENNESS, voltage, 0, elements(heater));
  }

  /**
   * Whether its power is that of three like elements between the lines of three phases.
   *
   * @return false where its resistance is a service figure, which is what one reads
   */
  public boolean isThreePhase() {
    return !resistanceStated && isThreePhase(voltage, power, elements);
  }

  /**
   * Whether a heater lies on three phases: between two of them, and of three elements or of more
   * than a circuit of two phases bears.
   *
   * @param voltage its rated voltage, V
   * @param power its power at that, W
   * @param elements how many like elements it has
   * @return whether it does
   */
  public static boolean isThreePhase(double voltage, double power, int elements) {
    return voltage > BETWEEN_PHASES && (elements % 3 == 0 || power > MOST_ON_TWO_PHASES);
  }

  /**
   * The current in one of its wires at its rated voltage.
   *
   * @return the current, A
   */
  public double lineCurrent() {
    return power / voltage / (isThreePhase() ? Math.sqrt(3) : 1);
  }

  /**
   * How many like elements a heater has.
   *
   * @param heater the heater
   * @return 1 or more
   */
  public static int elements(Component heater) {
    return (int) Math.max(1, Math.round(heater.si(ELEMENTS, 1)));
  }

  private static HeaterRating byNameplate(RatedRange voltage, RatedInput input, int elements) {
    double cold = input.assumed().resistance() / HOT_OVER_COLD;
    return new HeaterRating(
        input.assumed().voltage(),
        input.assumed().power(),
        cold,
        false,
        input.uncertainty(),
        voltage.meanSi(),
        openness(voltage),
        elements);
  }

  /** The resistance tells to which voltage of the range a power belongs, or the power itself. */
  private static HeaterRating byFigure(
      RatedRange voltage, Optional<RatedInput> input, double cold, int elements) {
    double hot = cold * HOT_OVER_COLD;
    double mean = voltage.meanSi();
    double power = input.isPresent() ? input.get().assumed().power() : mean * mean / hot;
    double volts = input.isPresent() ? voltage.nearestSi(Math.sqrt(power * hot)) : mean;
    return new HeaterRating(volts, power, cold, true, 0, mean, openness(voltage), elements);
  }

  private static double openness(RatedRange voltage) {
    return (voltage.high().si() - voltage.low().si()) / 2 / voltage.meanSi() / RECTANGULAR;
  }
}

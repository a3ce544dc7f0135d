package kelter.core.law;

import java.util.List;
import kelter.core.check.Limits;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;

/**
 * By how much the power input of an appliance may deviate from its rated power input, at rated
 * voltage and normal operating temperature (IEC 60335-1, clause 10, Table 1).
 *
 * <p>Heating and combined appliances: up to 25 W +20 %; above 25 W up to 200 W ±10 %; above 200 W
 * +5 % or 20 W, whichever is greater, and −10 %. Motor-operated appliances, and combined ones whose
 * motors take more than half of the input: up to 300 W +20 %; above 300 W +15 % or 60 W, whichever
 * is greater. Where the table gives no lower deviation, the lower end is 0 W.
 *
 * <p>The table holds for the whole appliance. For a heater by itself it is the nearest published
 * limit.
 */
public final class PowerInputBand {

  /** Where the table stands; this text of it was read. */
  public static final Source SOURCE =
      Source.published(
          "IEC 60335-1, clause 10, Table 1, in the text of IEC 335-1:1991 / GOST R MEK 335-1-94");

  /** Up to this rated input there is one row for all appliances, W. Table 1, first row. */
  private static final double SMALL = 25;

  /** Up to this rated input a heating appliance may deviate by ±10 %, W. Table 1. */
  private static final double HEATING_STEP = 200;

  /** Up to this rated input a motor-operated appliance may deviate by +20 %, W. Table 1. */
  private static final double MOTOR_STEP = 300;

  private static final double PLUS_20 = 0.20;
  private static final double PLUS_15 = 0.15;
  private static final double PLUS_OR_MINUS_10 = 0.10;
  private static final double PLUS_5 = 0.05;

  /** Least upper deviation of a heating appliance above 200 W, W. Table 1. */
  private static final double HEATING_LEAST = 20;

  /** Least upper deviation of a motor-operated appliance above 300 W, W. Table 1. */
  private static final double MOTOR_LEAST = 60;

  private PowerInputBand() {}

  /**
   * The band by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "power-input-band",
        "what power input the deviation table allows for a rated one",
        "power-low, power-high = power less and plus the deviation of the table",
        "rated power input above 0 W; where the table has no lower deviation the lower end is 0 W",
        SOURCE,
        List.of(
            Parameter.required("power", "rated power input", QuantityKind.POWER, 0.1, 1e5),
            Parameter.choice(
                "type", "what takes the power", List.of("heating", "motor"), "heating")),
        List.of(
            new Output("power-low", "least power input", QuantityKind.POWER),
            new Output("power-high", "greatest power input", QuantityKind.POWER)),
        List.of(),
        x -> {
          Limits band = x[1] < 0.5 ? heating(x[0]) : motor(x[0]);
          return new double[] {band.low(), band.high()};
        });
  }

  /**
   * The band of a heating or combined appliance.
   *
   * @param rated the rated power input, W, above 0
   * @return least and greatest power input, W; the least is 0 up to 25 W
   * @throws IllegalArgumentException if the rated power input is not finite and above 0 W
   */
  public static Limits heating(double rated) {
    Require.positive("rated power input", rated, "W");
    if (rated <= SMALL) {
      return new Limits(0, rated * (1 + PLUS_20));
    }
    double low = rated * (1 - PLUS_OR_MINUS_10);
    if (rated <= HEATING_STEP) {
      return new Limits(low, rated * (1 + PLUS_OR_MINUS_10));
    }
    return new Limits(low, rated + Math.max(rated * PLUS_5, HEATING_LEAST));
  }

  /**
   * The band of a motor-operated appliance, or of a combined one whose motors take more than half
   * of the input.
   *
   * @param rated the rated power input, W, above 0
   * @return 0 W, for want of a lower deviation, and the greatest power input, W
   * @throws IllegalArgumentException if the rated power input is not finite and above 0 W
   */
  public static Limits motor(double rated) {
    Require.positive("rated power input", rated, "W");
    if (rated <= MOTOR_STEP) {
      return new Limits(0, rated * (1 + PLUS_20));
    }
    return new Limits(0, rated + Math.max(rated * PLUS_15, MOTOR_LEAST));
  }
}

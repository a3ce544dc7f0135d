package kelter.electrical.sensor;

import java.util.List;
import kelter.core.law.Require;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;

/**
 * The curve of a thermistor of negative temperature coefficient by its resistance at 25 °C and one
 * constant: R = R₂₅ exp(β (1/T − 1/298.15 K)).
 *
 * <p>A single β holds within about 1 K near the two temperatures between which it was determined
 * (usually 25 °C and 50 °C or 85 °C) and worse farther away.
 *
 * @param r25 the resistance at 25 °C, Ohm, above 0
 * @param beta the constant, K, above 0
 */
public record BetaThermistor(double r25, double beta) {

  /** Where the formula comes from. */
  public static final Source SOURCE =
      Source.fromMemory("IEC 60539-1, definition of the B-value of a thermistor");

  /** 25 °C in K. */
  private static final double REFERENCE = 298.15;

  private static final QuantityKind KELVIN = QuantityKind.of("thermistor constant", "K");

  /**
   * Resistance by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "thermistor-resistance",
        "what a thermistor should measure at a temperature, by R25 and beta",
        "resistance = r25 exp(beta (1/temperature - 1/298.15 K)), temperature in K",
        "within about 1 K near the temperatures between which beta was determined",
        SOURCE,
        List.of(
            Parameter.required("r25", "resistance at 25 °C", QuantityKind.RESISTANCE, 1, 1e8),
            Parameter.required("beta", "constant beta", KELVIN, 500, 10000),
            Parameter.required(
                "temperature", "temperature", QuantityKind.TEMPERATURE, 223.15, 573.15)),
        List.of(new Output("resistance", "resistance", QuantityKind.RESISTANCE)),
        List.of(),
        x -> new double[] {new BetaThermistor(x[0], x[1]).resistance(x[2])});
  }

  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException if one is not finite and above zero
   */
  public BetaThermistor {
    Require.positive("resistance at 25 °C", r25, "ohm");
    Require.positive("constant beta", beta, "K");
  }

  /**
   * The constant that belongs to two points.
   *
   * @param r1 the resistance at t1, Ohm
   * @param t1 a temperature, K
   * @param r2 the resistance at t2, Ohm
   * @param t2 another temperature, K
   * @return the constant, K
   * @throws IllegalArgumentException if a figure is not above zero or the temperatures are the same
   */
  public static double betaOf(double r1, double t1, double r2, double t2) {
    Require.positive("first resistance", r1, "ohm");
    Require.positive("second resistance", r2, "ohm");
    Require.positive("first temperature", t1, "K");
    Require.positive("second temperature", t2, "K");
    if (t1 == t2) {
      throw new IllegalArgumentException("both points lie at " + t1 + " K; they must differ");
    }
    return Math.log(r1 / r2) / (1 / t1 - 1 / t2);
  }

  /**
   * The resistance at a temperature.
   *
   * @param temperature the temperature, K, above 0
   * @return the resistance, Ohm
   * @throws IllegalArgumentException if the temperature is not finite and above zero
   */
  public double resistance(double temperature) {
    Require.positive("temperature", temperature, "K");
    return r25 * Math.exp(beta * (1 / temperature - 1 / REFERENCE));
  }

  /**
   * The temperature of a resistance.
   *
   * @param resistance the resistance, Ohm, above 0
   * @return the temperature, K
   * @throws IllegalArgumentException if the resistance is not above zero or lies so far out that
   *     there is no temperature for it
   */
  public double temperature(double resistance) {
    double inverse =
        Math.log(Require.positive("resistance", resistance, "ohm") / r25) / beta + 1 / REFERENCE;
    return 1 / Require.positive("inverse temperature", inverse, "1/K");
  }
}

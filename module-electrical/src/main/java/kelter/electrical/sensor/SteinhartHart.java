package kelter.electrical.sensor;

import java.util.List;
import kelter.core.law.Require;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;

/**
 * The curve of a thermistor of negative temperature coefficient by three coefficients: 1/T = A + B
 * ln R + C (ln R)³, R in Ohm, T in K.
 *
 * <p>Holds between the outer points to which the coefficients were fitted, within some hundredths
 * of a kelvin; outside them the error grows quickly.
 *
 * @param a the coefficient A, 1/K
 * @param b the coefficient B, 1/K, above 0
 * @param c the coefficient C, 1/K, not below 0
 */
public record SteinhartHart(double a, double b, double c) {

  /** Where the equation stands. */
  public static final Source SOURCE =
      Source.fromMemory("Steinhart and Hart, Deep-Sea Research 15 (1968) 497");

  private static final QuantityKind CELSIUS = QuantityKind.TEMPERATURE;
  private static final double COLDEST = 223.15;
  private static final double HOTTEST = 573.15;

  /**
   * The temperature of a resistance by name, coefficients from three points.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "thermistor-temperature",
        "what temperature a thermistor reads by three points of its table",
        "1/T = A + B ln(resistance) + C ln(resistance)^3, A, B and C through the three points",
        "between the outer points; outside the error grows quickly",
        SOURCE,
        List.of(
            Parameter.required("resistance", "resistance read", QuantityKind.RESISTANCE, 1, 1e8),
            Parameter.required("r1", "resistance at t1", QuantityKind.RESISTANCE, 1, 1e8),
            Parameter.required("t1", "first temperature", CELSIUS, COLDEST, HOTTEST),
            Parameter.required("r2", "resistance at t2", QuantityKind.RESISTANCE, 1, 1e8),
            Parameter.required("t2", "second temperature", CELSIUS, COLDEST, HOTTEST),
            Parameter.required("r3", "resistance at t3", QuantityKind.RESISTANCE, 1, 1e8),
            Parameter.required("t3", "third temperature", CELSIUS, COLDEST, HOTTEST)),
        List.of(new Output("temperature", "temperature", CELSIUS)),
        List.of(),
        x -> new double[] {through(x[1], x[2], x[3], x[4], x[5], x[6]).temperature(x[0])});
  }

  /**
   * Checks that the resistance falls with temperature.
   *
   * @throws IllegalArgumentException if a coefficient is not finite, B is not above 0 or C below 0
   */
  public SteinhartHart {
    if (!Double.isFinite(a)) {
      throw new IllegalArgumentException("coefficient A is " + a + "; it must be finite");
    }
    Require.positive("coefficient B", b, "1/K");
    Require.notNegative("coefficient C", c, "1/K");
  }

  /**
   * The curve through three points.
   *
   * @param r1 the resistance at t1, Ohm
   * @param t1 the first temperature, K
   * @param r2 the resistance at t2, Ohm
   * @param t2 the second temperature, K
   * @param r3 the resistance at t3, Ohm
   * @param t3 the third temperature, K
   * @return the curve
   * @throws IllegalArgumentException if a figure is not above zero, two points are the same, or the
   *     points do not lie on a curve of this kind
   */
  public static SteinhartHart through(
      double r1, double t1, double r2, double t2, double r3, double t3) {
    double l1 = logarithm(r1);
    double l2 = logarithm(r2);
    double l3 = logarithm(r3);
    if (l1 == l2 || l2 == l3 || l1 == l3) {
      throw new IllegalArgumentException("the three points need three different resistances");
    }
    double y1 = 1 / Require.positive("first temperature", t1, "K");
    double y2 = 1 / Require.positive("second temperature", t2, "K");
    double y3 = 1 / Require.positive("third temperature", t3, "K");
    double slope2 = (y2 - y1) / (l2 - l1);
    double slope3 = (y3 - y1) / (l3 - l1);
    double c = (slope3 - slope2) / (l3 - l2) / (l1 + l2 + l3);
    double b = slope2 - c * (l1 * l1 + l1 * l2 + l2 * l2);
    double a = y1 - (b + l1 * l1 * c) * l1;
    return new SteinhartHart(a, b, Math.abs(c) < 1e-15 ? 0 : c);
  }

  /**
   * The temperature of a resistance.
   *
   * @param resistance the resistance, Ohm, above 0
   * @return the temperature, K
   * @throws IllegalArgumentException if the resistance is not above zero or lies so far out that
   *     the curve has no temperature there
   */
  public double temperature(double resistance) {
    double l = logarithm(resistance);
    double inverse = a + b * l + c * l * l * l;
    if (!(inverse > 0)) {
      throw new IllegalArgumentException(
          "the resistance is " + resistance + " ohm; the curve has no temperature there");
    }
    return 1 / inverse;
  }

  /**
   * The resistance at a temperature: the real root of the cubic in ln R, by Cardano's formula.
   *
   * @param temperature the temperature, K, above 0
   * @return the resistance, Ohm
   * @throws IllegalArgumentException if the temperature is not finite and above zero
   */
  public double resistance(double temperature) {
    double rest = a - 1 / Require.positive("temperature", temperature, "K");
    if (c == 0) {
      return Math.exp(-rest / b);
    }
    double half = rest / (2 * c);
    double third = b / (3 * c);
    double root = Math.sqrt(third * third * third + half * half);
    return Math.exp(Math.cbrt(root - half) - Math.cbrt(root + half));
  }

  private static double logarithm(double resistance) {
    return Math.log(Require.positive("resistance", resistance, "ohm"));
  }
}

package kelter.electrical.sensor;

import java.util.List;
import kelter.core.law.Require;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.numeric.Root;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.core.source.Standing;

/**
 * Resistance of an industrial platinum thermometer by temperature and back (IEC 60751:2008): R = R₀
 * (1 + A t + B t² + C (t − 100 °C) t³), the last term below 0 °C only, t in °C; with the tolerances
 * of classes A and B.
 *
 * <p>From −200 °C to 850 °C; other temperatures are refused.
 */
public final class PlatinumThermometer {

  /** Where the equation stands. */
  public static final Source SOURCE =
      new Source(
          "IEC 60751:2008, equations and table, as sensor makers print them", Standing.SECOND_HAND);

  /** Coefficient A, 1/°C. IEC 60751:2008. */
  private static final double A = 3.9083e-3;

  /** Coefficient B, 1/°C². IEC 60751:2008. */
  private static final double B = -5.775e-7;

  /** Coefficient C, 1/°C⁴. IEC 60751:2008. */
  private static final double C = -4.183e-12;

  private static final double KELVIN = 273.15;
  private static final double COLDEST = -200;
  private static final double HOTTEST = 850;
  private static final double CLOSE = 1e-9; // K

  private PlatinumThermometer() {}

  /**
   * Resistance by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation resistanceCalculation() {
    return new Calculation(
        "platinum-resistance",
        "what a platinum thermometer should measure at a temperature",
        "resistance = r0 (1 + A t + B t^2 + C (t - 100) t^3), last term below 0 °C only",
        "-200 °C to 850 °C; others are refused",
        SOURCE,
        List.of(
            Parameter.required(
                "temperature",
                "temperature",
                QuantityKind.TEMPERATURE,
                KELVIN + COLDEST,
                KELVIN + HOTTEST),
            Parameter.optional(
                "r0", "resistance at 0 °C", QuantityKind.RESISTANCE, 1, 1e4, "100 Ohm")),
        List.of(
            new Output("resistance", "resistance", QuantityKind.RESISTANCE),
            new Output("class-a", "tolerance of class A", QuantityKind.TEMPERATURE_DIFFERENCE),
            new Output("class-b", "tolerance of class B", QuantityKind.TEMPERATURE_DIFFERENCE)),
        List.of(),
        x -> new double[] {resistance(x[1], x[0]), toleranceA(x[0]), toleranceB(x[0])});
  }

  /**
   * Temperature by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation temperatureCalculation() {
    return new Calculation(
        "platinum-temperature",
        "what temperature a platinum thermometer reads",
        "the temperature at which r0 (1 + A t + B t^2 + C (t - 100) t^3) is the resistance",
        "-200 °C to 850 °C; others are refused",
        SOURCE,
        List.of(
            Parameter.required(
                "resistance", "resistance read", QuantityKind.RESISTANCE, 0.2, 39_000),
            Parameter.optional(
                "r0", "resistance at 0 °C", QuantityKind.RESISTANCE, 1, 1e4, "100 Ohm")),
        List.of(new Output("temperature", "temperature", QuantityKind.TEMPERATURE)),
        List.of(),
        x -> new double[] {temperature(x[1], x[0])});
  }

  /**
   * The resistance at a temperature.
   *
   * @param r0 the resistance at 0 °C, Ohm, above 0: 100 for PT100
   * @param temperature the temperature, K, from −200 °C to 850 °C
   * @return the resistance, Ohm
   * @throws IllegalArgumentException if a figure is out of its range
   */
  public static double resistance(double r0, double temperature) {
    double t = Require.within("temperature", temperature - KELVIN, COLDEST, HOTTEST, "°C");
    return Require.positive("resistance at 0 °C", r0, "ohm") * ratio(t);
  }

  private static double ratio(double t) {
    double above = 1 + t * (A + t * B);
    return t < 0 ? above + C * (t - 100) * t * t * t : above;
  }

  /**
   * The temperature of a resistance: above 0 °C in closed form, below as the root of the equation,
   * to 1e-9 K.
   *
   * @param r0 the resistance at 0 °C, Ohm, above 0
   * @param resistance the resistance, Ohm
   * @return the temperature, K
   * @throws IllegalArgumentException if the resistance belongs to a temperature out of range
   */
  public static double temperature(double r0, double resistance) {
    Require.positive("resistance at 0 °C", r0, "ohm");
    Require.within("resistance", resistance, r0 * ratio(COLDEST), r0 * ratio(HOTTEST), "ohm");
    double wanted = resistance / r0;
    if (wanted >= 1) {
      return KELVIN + (-A + Math.sqrt(A * A - 4 * B * (1 - wanted))) / (2 * B);
    }
    return KELVIN + Root.between(t -> ratio(t) - wanted, COLDEST, 0, CLOSE);
  }

  /**
   * The tolerance of class A.
   *
   * @param temperature the temperature, K
   * @return the tolerance to either side, K
   */
  public static double toleranceA(double temperature) {
    return 0.15 + 0.002 * Math.abs(temperature - KELVIN); // IEC 60751:2008, class A
  }

  /**
   * The tolerance of class B.
   *
   * @param temperature the temperature, K
   * @return the tolerance to either side, K
   */
  public static double toleranceB(double temperature) {
    return 0.3 + 0.005 * Math.abs(temperature - KELVIN); // IEC 60751:2008, class B
  }
}

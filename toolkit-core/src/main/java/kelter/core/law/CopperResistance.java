package kelter.core.law;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.core.source.Standing;

/**
 * How the resistance of copper changes with its temperature: R₂ = R₁ (k + t₂) / (k + t₁), t in °C,
 * with k = 234.45 K for annealed copper, that is 1/α₂₀ − 20 K with α₂₀ = 0.00393 1/K (IEC 60028).
 *
 * <p>From −50 °C to 200 °C; other temperatures are refused.
 */
public final class CopperResistance {

  /** Where the constants stand. */
  public static final Source SOURCE =
      new Source(
          "IEC 60028, resistivity 1/58 ohm mm²/m and coefficient 0.00393 1/K at 20 °C, as handbooks"
              + " of resistance meters and power engineering cite it",
          Standing.SECOND_HAND);

  /** Resistivity of annealed copper at 20 °C, Ohm m: 1/58 Ohm mm²/m. IEC 60028. */
  public static final double RESISTIVITY = 1e-6 / 58;

  /** Temperature coefficient of annealed copper at 20 °C, 1/K. IEC 60028. */
  public static final double COEFFICIENT = 0.00393;

  private static final double KELVIN = 273.15;
  private static final double REFERENCE = 20;
  private static final double COLDEST = -50;
  private static final double HOTTEST = 200;

  private CopperResistance() {}

  /**
   * The resistance by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "copper-resistance",
        "what copper that was measured at one temperature has at another",
        "at = resistance (1 + 0.00393 (to - 20)) / (1 + 0.00393 (temperature - 20)), °C",
        "annealed copper from -50 °C to 200 °C; other temperatures are refused",
        SOURCE,
        List.of(
            Parameter.required(
                "resistance", "resistance measured", QuantityKind.RESISTANCE, 1e-6, 1e6),
            temperature("temperature", "temperature when it was measured"),
            temperature("to", "temperature asked for").optional("20 Cel")),
        List.of(new Output("at", "resistance there", QuantityKind.RESISTANCE)),
        List.of(Caution.UNPLUG),
        x -> new double[] {at(x[0], x[1], x[2])});
  }

  /**
   * A temperature of copper, for which the law holds.
   *
   * @param id the word on the command line
   * @param title the words for a person
   * @return the parameter, from -50 °C to 200 °C
   */
  public static Parameter temperature(String id, String title) {
    return Parameter.required(
        id, title, QuantityKind.TEMPERATURE, KELVIN + COLDEST, KELVIN + HOTTEST);
  }

  /**
   * The resistance at another temperature.
   *
   * @param resistance the resistance measured, Ohm, above 0
   * @param temperature the temperature when it was measured, K, from −50 °C to 200 °C
   * @param to the temperature asked for, K, same range
   * @return the resistance there, Ohm
   * @throws IllegalArgumentException if a figure is out of its range
   */
  public static double at(double resistance, double temperature, double to) {
    return Require.positive("resistance", resistance, "ohm") * factor(to) / factor(temperature);
  }

  /**
   * The resistance at a temperature over the one at 20 °C.
   *
   * @param temperature the temperature, K, from −50 °C to 200 °C
   * @return the factor, 1 at 20 °C
   * @throws IllegalArgumentException if the temperature is out of its range
   */
  public static double factor(double temperature) {
    double celsius =
        Require.within("temperature of the copper", temperature - KELVIN, COLDEST, HOTTEST, "°C");
    return 1 + COEFFICIENT * (celsius - REFERENCE);
  }
}

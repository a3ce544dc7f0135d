package kelter.electrical.heater;

import java.util.List;
import kelter.core.law.Celsius;
import kelter.core.law.Require;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.core.source.Standing;

/**
 * How the resistance of a heating wire changes from 20 °C to working temperature: R_hot = C_t ·
 * R_cold, with the factor C_t of the alloy read from its table and interpolated linearly between
 * points.
 *
 * <p>From 20 °C to 1000 °C; other temperatures are refused. Handbooks differ: for Cr20Ni80 cooled
 * slowly up to 1.05 is told at 500 °C, so a few per cent must not decide a verdict.
 */
public final class AlloyResistance {

  /** Where the factors stand. */
  public static final Source SOURCE =
      new Source(
          "GB/T 1234, factors C_t, as a maker's alloy table prints them; handbooks differ by up to 3"
              + " %",
          Standing.SECOND_HAND);

  /** The alloys of the table. */
  public enum Alloy {
    /** Nickel-chromium with 20 % chromium and 80 % nickel. */
    CR20NI80(
        new double[] {20, 100, 200, 300, 400, 500, 600, 700, 800, 1000},
        new double[] {1, 1.006, 1.012, 1.018, 1.025, 1.026, 1.018, 1.010, 1.008, 1.014}),
    /** Nickel-chromium with 15 % chromium and 60 % nickel. */
    CR15NI60(
        new double[] {20, 100, 200, 300, 400, 500, 600, 800, 1000},
        new double[] {1, 1.011, 1.024, 1.038, 1.052, 1.064, 1.069, 1.078, 1.095}),
    /** Iron-chromium-aluminium with 25 % chromium and 5 % aluminium. */
    CR25AL5(
        new double[] {20, 100, 300, 500, 600, 800, 1000},
        new double[] {1, 1.002, 1.008, 1.021, 1.030, 1.040, 1.044});

    private final double[] celsius;
    private final double[] factor;

    Alloy(double[] celsius, double[] factor) {
      this.celsius = celsius;
      this.factor = factor;
    }
  }

  private static final double KELVIN = 273.15;

  private AlloyResistance() {}

  /**
   * The factor and the cold resistance by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "alloy-resistance",
        "what a heater that has a resistance when hot should measure at 20 °C",
        "cold = resistance / factor, factor C_t of the alloy at the temperature",
        "wire from 20 °C to 1000 °C; handbooks differ by up to 3 %",
        SOURCE,
        List.of(
            Parameter.required(
                "resistance", "resistance when hot", QuantityKind.RESISTANCE, 0.1, 1e5),
            Parameter.optional(
                "temperature",
                "temperature of the wire",
                QuantityKind.TEMPERATURE,
                Celsius.TWENTY,
                1273.15,
                "300 Cel"),
            Parameter.choice(
                "alloy",
                "alloy of the wire",
                List.of("cr20ni80", "cr15ni60", "cr25al5"),
                "cr20ni80")),
        List.of(
            new Output("cold", "resistance at 20 °C", QuantityKind.RESISTANCE),
            new Output("factor", "factor from cold to hot", QuantityKind.RATIO)),
        List.of(Caution.UNPLUG),
        x -> {
          double factor = factor(Alloy.values()[(int) Math.round(x[2])], x[1]);
          return new double[] {Require.positive("resistance", x[0], "ohm") / factor, factor};
        });
  }

  /**
   * The factor from 20 °C to a temperature.
   *
   * @param alloy the alloy
   * @param temperature the temperature of the wire, K, from 293.15 to 1273.15
   * @return the resistance at that temperature over the one at 20 °C
   * @throws IllegalArgumentException if the temperature lies outside the table
   */
  public static double factor(Alloy alloy, double temperature) {
    double celsius =
        Require.within("temperature of the wire", temperature - KELVIN, 20, 1000, "°C");
    int i = 1;
    while (celsius > alloy.celsius[i] && i < alloy.celsius.length - 1) {
      i++;
    }
    double share = (celsius - alloy.celsius[i - 1]) / (alloy.celsius[i] - alloy.celsius[i - 1]);
    return alloy.factor[i - 1] + share * (alloy.factor[i] - alloy.factor[i - 1]);
  }
}

package kelter.electrical.conductor;

import java.util.List;
import kelter.core.law.Require;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.core.source.Standing;

/**
 * Diameter, section and resistance of solid copper wire by American wire gauge n: d = 0.127 mm ·
 * 92^((36 − n)/39), resistance of annealed copper at 20 °C.
 *
 * <p>Gauges 0 to 40; others are refused.
 */
public final class WireGauge {

  /** Where the table stands. */
  public static final Source SOURCE =
      new Source(
          "ASTM B258 for the diameters; NBS Handbook 100 (1966) for the resistances, as wire makers"
              + " print them",
          Standing.SECOND_HAND);

  /** Diameter of gauge 36, m: 0.005 inch. */
  private static final double GAUGE_36 = 0.127e-3;

  /** Ratio of the diameters of gauges 0000 and 36, which lie 39 steps apart. */
  private static final double RATIO = 92;

  private static final double STEPS = 39;
  private static final double FINEST = 40;

  /** Resistivity of the tables at 20 °C, Ohm m. NBS Handbook 100. */
  private static final double RESISTIVITY = 1.7241e-8;

  private static final QuantityKind PER_LENGTH = QuantityKind.of("resistance per length", "Ohm/km");

  private WireGauge() {}

  /**
   * Diameter, section and resistance by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "wire-gauge",
        "what wire of an American gauge measures",
        "diameter = 0.127 mm * 92^((36 - gauge)/39); resistance = 17.241 nOhm m / section",
        "solid annealed copper at 20 °C, gauges 0 to 40; others are refused",
        SOURCE,
        List.of(
            Parameter.required("gauge", "gauge, a whole number", QuantityKind.COUNT, 0, FINEST)),
        List.of(
            new Output("diameter", "diameter", QuantityKind.LENGTH),
            new Output("section", "section", QuantityKind.AREA),
            new Output("per-length", "resistance per length", PER_LENGTH)),
        List.of(),
        x -> {
          double diameter = diameter(x[0]);
          double section = Math.PI / 4 * diameter * diameter;
          return new double[] {diameter, section, RESISTIVITY / section};
        });
  }

  /**
   * The diameter.
   *
   * @param gauge the gauge, a whole number from 0 to 40
   * @return the diameter, m
   * @throws IllegalArgumentException if the gauge is out of its range or not a whole number
   */
  public static double diameter(double gauge) {
    Require.within("gauge", gauge, 0, FINEST, "AWG");
    Require.whole("gauge", gauge);
    return GAUGE_36 * Math.pow(RATIO, (36 - gauge) / STEPS);
  }

  /**
   * The resistance per length of solid copper at 20 °C.
   *
   * @param gauge the gauge, a whole number from 0 to 40
   * @return the resistance per length, Ohm/m
   * @throws IllegalArgumentException if the gauge is out of its range or not a whole number
   */
  public static double resistancePerLength(double gauge) {
    double diameter = diameter(gauge);
    return RESISTIVITY / (Math.PI / 4 * diameter * diameter);
  }
}

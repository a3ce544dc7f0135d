package kelter.electrical.drive;

import java.util.List;
import kelter.core.law.Require;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.electrical.caution.ElectricalCautions;

/**
 * How long carbon brushes last: t = (l − l_least) / rate.
 *
 * <p>A smooth commutator and springs in order. Small motors wear 0.02 mm to 0.06 mm in an hour
 * (from memory), a burnt commutator many times that. Below the least length there is nothing left:
 * 0.
 */
public final class BrushLife {

  /** What small motors wear, m/s: 0.04 mm in an hour; from memory. */
  public static final double USUAL_RATE = 0.04e-3 / 3600;

  /** Where the formula and the usual rate come from. */
  public static final Source SOURCE =
      Source.fromMemory("even wear of carbon brushes, 0.02 mm/h to 0.06 mm/h");

  private BrushLife() {}

  /**
   * The hours left by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "brush-life",
        "how many hours of running carbon brushes have left",
        "left = (length - least) / rate, 0 below the least length",
        "smooth commutator, 0.02 mm/h to 0.06 mm/h",
        SOURCE,
        List.of(
            Parameter.required("length", "length of the brush", QuantityKind.LENGTH, 0, 0.2),
            Parameter.optional(
                "least", "length at which it is changed", QuantityKind.LENGTH, 0, 0.2, "12 mm"),
            Parameter.optional(
                "rate",
                "wear in an hour of running",
                QuantityKind.of("wear", "mm/h"),
                1e-10,
                1e-6,
                "0.04 mm/h")),
        List.of(new Output("left", "running time left", QuantityKind.of("running time", "h"))),
        List.of(ElectricalCautions.TURNING),
        x -> new double[] {left(x[0], x[1], x[2])});
  }

  /**
   * The running time left.
   *
   * @param length the length of the brush, m, 0 or more
   * @param least the length at which it is changed, m, 0 or more
   * @param rate the wear, m/s, above 0
   * @return the running time, s; 0 below the least length
   * @throws IllegalArgumentException if a figure is out of its range
   */
  public static double left(double length, double least, double rate) {
    double over =
        Require.notNegative("length", length, "m") - Require.notNegative("least", least, "m");
    return Math.max(0, over) / Require.positive("wear", rate, "m/s");
  }
}

package kelter.electrical.winding;

import java.util.List;
import kelter.core.law.Require;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityFormat;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.core.source.Standing;
import kelter.electrical.caution.ElectricalCautions;

/**
 * How unequal three phases are, and how much load a motor then bears: 100 % · greatest deviation
 * from the mean / mean (NEMA MG-1, 12.45), derating by the curve of NEMA MG-1, 14.36.
 *
 * <p>The derating is read off a curve at whole per cents and interpolated: ±0.02. Above 5 % a motor
 * should not run, so there is no factor: such voltages are refused. The same measure serves for the
 * three resistances of a winding, without derating.
 */
public final class PhaseUnbalance {

  /** Where measure and curve stand. */
  public static final Source SOURCE =
      new Source(
          "NEMA MG-1, 12.45 and 14.36, as motor handbooks and tables cite it",
          Standing.SECOND_HAND);

  /** Unbalance above which a motor should not run, as a ratio. NEMA MG-1, 14.36. */
  private static final double MOST = 0.05;

  /** Derating factor at 0, 1, 2, 3, 4 and 5 % of unbalance. NEMA MG-1, figure 14-1. */
  private static final double[] FACTOR = {1, 1, 0.95, 0.90, 0.82, 0.75};

  private static final String RANGE =
      "derating within 0.02; above 5 % a motor should not run, and its share is 0";

  private PhaseUnbalance() {}

  /**
   * Unbalance of voltages by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation voltagesCalculation() {
    return new Calculation(
        "voltage-unbalance",
        "how unequal three line voltages are, and how much load a motor then bears",
        "unbalance = 100 % * greatest deviation from the mean / mean; derating off the curve",
        RANGE,
        SOURCE,
        List.of(
            Parameter.required("v1", "first line voltage", QuantityKind.VOLTAGE, 1, 1000),
            Parameter.required("v2", "second line voltage", QuantityKind.VOLTAGE, 1, 1000),
            Parameter.required("v3", "third line voltage", QuantityKind.VOLTAGE, 1, 1000)),
        List.of(
            new Output("unbalance", "unbalance", QuantityKind.PERCENT),
            new Output("derating", "share of the rated load", QuantityKind.RATIO)),
        List.of(ElectricalCautions.LIVE_PARTS),
        x -> {
          double unbalance = unbalance(x[0], x[1], x[2]);
          return new double[] {unbalance, unbalance > MOST ? 0 : derating(unbalance)};
        });
  }

  /**
   * Balance of windings by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation windingsCalculation() {
    return new Calculation(
        "winding-balance",
        "how unequal the three resistances of a winding are",
        "unbalance = 100 % * greatest deviation from the mean / mean",
        "all three at one temperature; 2 % to 5 % is usual (common practice, no source)",
        Source.commonPractice("measure of NEMA MG-1, 12.45, applied to resistances"),
        List.of(
            Parameter.required("r1", "first resistance", QuantityKind.RESISTANCE, 1e-3, 1e6),
            Parameter.required("r2", "second resistance", QuantityKind.RESISTANCE, 1e-3, 1e6),
            Parameter.required("r3", "third resistance", QuantityKind.RESISTANCE, 1e-3, 1e6)),
        List.of(new Output("unbalance", "unbalance", QuantityKind.PERCENT)),
        List.of(Caution.UNPLUG),
        x -> new double[] {unbalance(x[0], x[1], x[2])});
  }

  /**
   * The unbalance of three figures.
   *
   * @param a the first, above 0
   * @param b the second, same unit, above 0
   * @param c the third, same unit, above 0
   * @return the greatest deviation from the mean over the mean, as a ratio
   * @throws IllegalArgumentException if a figure is not finite and above zero
   */
  public static double unbalance(double a, double b, double c) {
    Require.positive("first figure", a, "");
    Require.positive("second figure", b, "");
    Require.positive("third figure", c, "");
    double mean = (a + b + c) / 3;
    double most = Math.max(Math.abs(a - mean), Math.max(Math.abs(b - mean), Math.abs(c - mean)));
    return most / mean;
  }

  /**
   * The share of its rated load that a motor bears.
   *
   * @param unbalance the unbalance of the voltages, as a ratio, from 0 to 0.05
   * @return the factor, from 0.75 to 1
   * @throws IllegalArgumentException if the unbalance is out of its range
   */
  public static double derating(double unbalance) {
    if (unbalance > MOST) {
      throw new IllegalArgumentException(
          "the unbalance is %s %%; above 5 %% a motor should not run"
              .formatted(QuantityFormat.fixed(100 * unbalance, 1)));
    }
    double percent = 100 * Require.notNegative("unbalance", unbalance, "");
    int i = (int) Math.min(FACTOR.length - 2.0, Math.floor(percent));
    return FACTOR[i] + (percent - i) * (FACTOR[i + 1] - FACTOR[i]);
  }
}

package kelter.electrical.winding;

import java.util.List;
import kelter.core.law.Require;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityFormat;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.electrical.caution.ElectricalCautions;

/**
 * Which share of the apparent power is real: λ = P / (U I).
 *
 * <p>Single phase, true effective readings. A power above U · I by more than 5 % contradicts the
 * other readings and is refused; a little above is rounding of instruments and told as it is.
 */
public final class PowerFactor {

  /** Where the definition is believed to stand. */
  public static final Source SOURCE =
      Source.fromMemory("definition of the power factor, IEC 60050-131:2002");

  /** By how much rounding of instruments may lift it above 1; common practice, no source. */
  private static final double ROUNDING = 0.05;

  private PowerFactor() {}

  /**
   * The power factor by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "power-factor",
        "which share of the apparent power is real",
        "factor = power / (voltage current)",
        "single phase, true effective readings; above 1.05 the readings contradict each other",
        SOURCE,
        List.of(
            Parameter.required("power", "real power", QuantityKind.POWER, 0.01, 1e5),
            Parameter.required("voltage", "voltage", QuantityKind.VOLTAGE, 0.1, 1000),
            Parameter.required("current", "current", QuantityKind.CURRENT, 1e-3, 200)),
        List.of(new Output("factor", "power factor", QuantityKind.RATIO)),
        List.of(ElectricalCautions.LIVE_PARTS),
        x -> new double[] {factor(x[0], x[1], x[2])});
  }

  /**
   * The power factor.
   *
   * @param power the real power, W, above 0
   * @param voltage the voltage, V, above 0
   * @param current the current, A, above 0
   * @return the power factor, as a ratio, up to 1.05
   * @throws IllegalArgumentException if a figure is not above zero or the three contradict each
   *     other
   */
  public static double factor(double power, double voltage, double current) {
    Require.positive("power", power, "W");
    double apparent =
        Require.positive("voltage", voltage, "V") * Require.positive("current", current, "A");
    if (power > (1 + ROUNDING) * apparent) {
      throw new IllegalArgumentException(
          "the power is %s W, but voltage times current only %s VA: read all three again"
              .formatted(QuantityFormat.plain(power), QuantityFormat.plain(apparent)));
    }
    return power / apparent;
  }
}

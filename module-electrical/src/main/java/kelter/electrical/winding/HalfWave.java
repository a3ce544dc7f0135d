package kelter.electrical.winding;

import java.util.List;
import kelter.core.law.Require;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.electrical.caution.ElectricalCautions;

/**
 * What a meter should show behind a single diode: mean value √2/π · U, effective value U/√2.
 *
 * <p>Sine supply, resistive load, an ideal diode. Behind an inductive coil with a free-wheeling
 * diode the mean is the same and the effective value lower. A meter shows the mean on its direct
 * voltage range; on alternating ranges only a true effective reading is right.
 */
public final class HalfWave {

  /** Where the formula comes from. */
  public static final Source SOURCE =
      Source.fromMemory("mean and effective value of a half sine, handbooks of electronics");

  private HalfWave() {}

  /**
   * The voltages by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "half-wave",
        "what a meter should show behind a single diode",
        "mean = sqrt(2)/pi * voltage; effective = voltage / sqrt(2)",
        "sine supply, resistive load, an ideal diode",
        SOURCE,
        List.of(
            Parameter.required(
                "voltage", "effective voltage before the diode", QuantityKind.VOLTAGE, 1, 1000)),
        List.of(
            new Output("mean", "mean voltage", QuantityKind.VOLTAGE),
            new Output("effective", "effective voltage", QuantityKind.VOLTAGE)),
        List.of(ElectricalCautions.LIVE_PARTS),
        x -> new double[] {mean(x[0]), x[0] / Math.sqrt(2)});
  }

  /**
   * The mean voltage.
   *
   * @param voltage the effective voltage before the diode, V, above 0
   * @return the mean voltage behind it, V
   * @throws IllegalArgumentException if the voltage is not finite and above zero
   */
  public static double mean(double voltage) {
    return Math.sqrt(2) / Math.PI * Require.positive("voltage", voltage, "V");
  }
}

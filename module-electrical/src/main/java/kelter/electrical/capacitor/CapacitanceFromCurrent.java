package kelter.electrical.capacitor;

import java.util.List;
import kelter.core.law.Require;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.electrical.caution.ElectricalCautions;

/**
 * The capacitance of a motor capacitor by voltage and current while it works: C = I / (2π f U).
 *
 * <p>Sine voltage at the capacitor's own terminals, losses left out: they raise the result by less
 * than 0.1 % for a capacitor in order.
 */
public final class CapacitanceFromCurrent {

  /** Where the formula comes from. */
  public static final Source SOURCE =
      Source.fromMemory("reactance of a capacitor, IEC 60050-131:2002");

  private CapacitanceFromCurrent() {}

  /**
   * The capacitance by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "capacitance-from-current",
        "what capacitance a capacitor has by the current that it takes",
        "capacitance = current / (2 pi frequency voltage)",
        "sine voltage at the capacitor's own terminals, losses left out",
        SOURCE,
        List.of(
            Parameter.required("current", "current", QuantityKind.CURRENT, 1e-4, 100),
            Parameter.required("voltage", "voltage", QuantityKind.VOLTAGE, 1, 1000),
            Parameter.optional(
                "frequency", "frequency", QuantityKind.FREQUENCY, 10, 1000, "50 Hz")),
        List.of(new Output("capacitance", "capacitance", QuantityKind.CAPACITANCE)),
        List.of(ElectricalCautions.LIVE_PARTS, ElectricalCautions.CHARGED_CAPACITOR),
        x -> new double[] {capacitance(x[0], x[1], x[2])});
  }

  /**
   * The capacitance.
   *
   * @param current the current, A, above 0
   * @param voltage the voltage, V, above 0
   * @param frequency the frequency, Hz, above 0
   * @return the capacitance, F
   * @throws IllegalArgumentException if a figure is not finite and above zero
   */
  public static double capacitance(double current, double voltage, double frequency) {
    Require.positive("current", current, "A");
    Require.positive("voltage", voltage, "V");
    return current / (2 * Math.PI * Require.positive("frequency", frequency, "Hz") * voltage);
  }
}

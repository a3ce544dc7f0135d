package kelter.electrical.supply;

import java.util.List;
import kelter.core.law.Require;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.electrical.caution.ElectricalCautions;

/**
 * How much of its circuit's protective device an appliance takes: I = P / (U λ), share = I / I_n.
 *
 * <p>For information only: what else hangs on the circuit, how it is laid and what local code
 * allows is for a licensed electrician to judge. In North America a load that lasts three hours may
 * take 80 % (NFPA 70, 210.20, from memory).
 */
public final class CircuitLoad {

  /** Where formula and rule come from. */
  public static final Source SOURCE =
      Source.fromMemory("power in a circuit; continuous load of 80 % in NFPA 70:2023, 210.20");

  private CircuitLoad() {}

  /**
   * The share by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "circuit-load",
        "how much of its circuit's protective device an appliance takes",
        "current = power / (voltage factor); share = current / device",
        "information only: the circuit is judged by a licensed electrician",
        SOURCE,
        List.of(
            Parameter.required("power", "power of the appliance", QuantityKind.POWER, 0.1, 1e5),
            Parameter.required("voltage", "voltage", QuantityKind.VOLTAGE, 1, 1000),
            Parameter.optional(
                "device", "rated current of the device", QuantityKind.CURRENT, 0.1, 1000, "16 A"),
            Parameter.optional("factor", "power factor", QuantityKind.RATIO, 0.05, 1, "1")),
        List.of(
            new Output("current", "current of the appliance", QuantityKind.CURRENT),
            new Output("share", "share of the device", QuantityKind.PERCENT)),
        List.of(ElectricalCautions.FIXED_WIRING),
        x -> {
          double current = current(x[0], x[1], x[3]);
          return new double[] {current, current / Require.positive("rated current", x[2], "A")};
        });
  }

  /**
   * The current of an appliance on one phase.
   *
   * @param power the power, W, above 0
   * @param voltage the voltage, V, above 0
   * @param factor the power factor, as a ratio, above 0
   * @return the current, A
   * @throws IllegalArgumentException if a figure is not finite and above zero
   */
  public static double current(double power, double voltage, double factor) {
    Require.positive("power", power, "W");
    Require.positive("voltage", voltage, "V");
    return power / (voltage * Require.positive("power factor", factor, ""));
  }
}

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
 * What energy and charge a capacitor holds: W = ½ C U², Q = C U.
 *
 * <p>The voltage is that of the moment; for alternating voltage the peak, √2 times the effective
 * value, is the worst case.
 */
public final class StoredEnergy {

  /** Where the formula comes from. */
  public static final Source SOURCE =
      Source.fromMemory("definition of capacitance, IEC 60050-131:2002");

  private static final QuantityKind JOULE = QuantityKind.of("energy", "J");
  private static final QuantityKind CHARGE = QuantityKind.of("electric charge", "mC");

  private StoredEnergy() {}

  /**
   * The energy by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "stored-energy",
        "what energy and charge a capacitor holds",
        "energy = capacitance voltage^2 / 2; charge = capacitance voltage",
        "the voltage of the moment; alternating voltage: the peak",
        SOURCE,
        List.of(
            Parameter.required("capacitance", "capacitance", QuantityKind.CAPACITANCE, 1e-12, 1),
            Parameter.required("voltage", "voltage (peak)", QuantityKind.VOLTAGE, 0.1, 10000)),
        List.of(new Output("energy", "energy", JOULE), new Output("charge", "charge", CHARGE)),
        List.of(ElectricalCautions.CHARGED_CAPACITOR, ElectricalCautions.HIGH_VOLTAGE),
        x -> new double[] {energy(x[0], x[1]), x[0] * x[1]});
  }

  /**
   * The energy.
   *
   * @param capacitance the capacitance, F, above 0
   * @param voltage the voltage, V, above 0
   * @return the energy, J
   * @throws IllegalArgumentException if a figure is not finite and above zero
   */
  public static double energy(double capacitance, double voltage) {
    Require.positive("capacitance", capacitance, "F");
    Require.positive("voltage", voltage, "V");
    return capacitance * voltage * voltage / 2;
  }
}

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
 * What leaks through a capacitor's own dielectric, I = U/R, and how long its charge lasts where
 * nothing else discharges it: time constant τ = R C, and the time down to 34 V.
 *
 * <p>R is the resistance between the terminals at direct voltage, read after a minute. It falls by
 * half for each 10 K or so of warming, and a moist case shunts it: the time is a caution, never a
 * promise.
 */
public final class CapacitorLeakage {

  /** Where the formulas come from. */
  public static final Source SOURCE =
      new Source(
          "Ohm's law; discharge to 34 V: " + CapacitorDischarge.SOURCE.document(),
          CapacitorDischarge.SOURCE.standing());

  private static final QuantityKind MICROAMPERE = QuantityKind.of("current", "uA");

  private CapacitorLeakage() {}

  /**
   * The leakage by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "capacitor-leakage",
        "what leaks through a capacitor, and how long its charge lasts by itself",
        "current = voltage / insulation; time-constant = insulation capacitance;"
            + " lasts = time-constant ln(voltage / 34 V)",
        "direct voltage, resistance between the terminals after a minute; warm and moist"
            + " capacitors leak more",
        SOURCE,
        List.of(
            Parameter.required("capacitance", "capacitance", QuantityKind.CAPACITANCE, 1e-12, 1),
            Parameter.required(
                "insulation",
                "resistance between its terminals",
                QuantityKind.INSULATION_RESISTANCE,
                1,
                1e15),
            Parameter.optional(
                "voltage", "direct voltage", QuantityKind.VOLTAGE, 0.1, 10000, "325 V")),
        List.of(
            new Output("current", "leakage current", MICROAMPERE),
            new Output("time-constant", "time constant", QuantityKind.TIME),
            new Output("lasts", "time until 34 V are left", QuantityKind.TIME)),
        List.of(ElectricalCautions.CHARGED_CAPACITOR, ElectricalCautions.HIGH_VOLTAGE),
        x ->
            new double[] {
              current(x[2], x[1]),
              x[1] * x[0],
              CapacitorDischarge.time(x[0], x[1], x[2], CapacitorDischarge.EXTRA_LOW)
            });
  }

  /**
   * The leakage current.
   *
   * @param voltage the direct voltage, V, above 0
   * @param insulation the resistance between the terminals, Ohm, above 0
   * @return the current, A
   * @throws IllegalArgumentException if a figure is not finite and above zero
   */
  public static double current(double voltage, double insulation) {
    return Require.positive("voltage", voltage, "V")
        / Require.positive("resistance between the terminals", insulation, "ohm");
  }
}

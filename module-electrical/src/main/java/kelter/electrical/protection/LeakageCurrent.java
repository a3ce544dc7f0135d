package kelter.electrical.protection;

import java.util.List;
import kelter.core.law.Require;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.electrical.caution.ElectricalCautions;

/**
 * What current flows to earth through insulation and filter capacitors, and how much of what a
 * residual-current device bears that is: I = √((U/R)² + (2π f C U)²).
 *
 * <p>A device of rated residual current I_Δn must not act up to half of it and must act at it (IEC
 * 61008-1, from memory), so that a share below 0.5 should not trip it and one above 1 must. Heaters
 * leak several times more when hot and wet than their cold insulation tells.
 */
public final class LeakageCurrent {

  /** Where the formula comes from. */
  public static final Source SOURCE =
      Source.fromMemory("circuit theory; range of residual-current devices in IEC 61008-1");

  private static final QuantityKind MILLIAMPERE = QuantityKind.of("current", "mA");

  private LeakageCurrent() {}

  /**
   * The current by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "leakage-current",
        "what flows to earth through insulation and filter, and whether a device may trip",
        "current = sqrt((voltage/insulation)^2 + (2 pi frequency filter voltage)^2);"
            + " share = current / device",
        "share below 0.5: should not trip; above 1: must trip; hot and wet heaters leak more",
        SOURCE,
        List.of(
            Parameter.required(
                "insulation", "insulation resistance", QuantityKind.INSULATION_RESISTANCE, 1, 1e12),
            Parameter.optional(
                "filter", "filter capacitance to earth", QuantityKind.CAPACITANCE, 0, 1e-5, "0 uF"),
            Parameter.optional(
                "voltage", "voltage to earth", QuantityKind.VOLTAGE, 1, 1000, "230 V"),
            Parameter.optional("frequency", "frequency", QuantityKind.FREQUENCY, 1, 1000, "50 Hz"),
            Parameter.optional(
                "device", "rated residual current", QuantityKind.CURRENT, 1e-3, 1, "30 mA")),
        List.of(
            new Output("current", "leakage current", MILLIAMPERE),
            new Output("share", "share of the rated residual current", QuantityKind.PERCENT)),
        List.of(Caution.UNPLUG, ElectricalCautions.TEST_VOLTAGE),
        x -> {
          double current = current(x[0], x[1], x[2], x[3]);
          return new double[] {current, current / x[4]};
        });
  }

  /**
   * The leakage current.
   *
   * @param insulation the insulation resistance, Ohm, above 0
   * @param filter the filter capacitance to earth, F, 0 or above
   * @param voltage the voltage to earth, V, above 0
   * @param frequency the frequency, Hz, above 0
   * @return the current, A
   * @throws IllegalArgumentException if a figure is out of its range
   */
  public static double current(double insulation, double filter, double voltage, double frequency) {
    Require.positive("voltage to earth", voltage, "V");
    Require.positive("frequency", frequency, "Hz");
    double resistive = voltage / Require.positive("insulation resistance", insulation, "ohm");
    double capacitive =
        2 * Math.PI * frequency * Require.notNegative("filter capacitance", filter, "F") * voltage;
    return Math.hypot(resistive, capacitive);
  }
}

package kelter.electrical.capacitor;

import java.util.List;
import kelter.core.law.Require;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.DischargeWait;
import kelter.core.source.Source;
import kelter.core.source.Standing;
import kelter.electrical.caution.ElectricalCautions;

/**
 * How long a capacitor takes to discharge through a resistor: t = R C ln(U₀/U), from the law u = U₀
 * exp(−t/RC).
 *
 * <p>Holds while the resistor is whole and connected. A bleed resistor that has failed open leaves
 * the capacitor charged for days: the time computed never replaces proving dead.
 */
public final class CapacitorDischarge {

  /** Where the law and the usual end voltage come from. */
  public static final Source SOURCE =
      new Source(
          "discharge of a capacitor through a resistor (Kirchhoff's laws); 34 V is the limit between"
              + " the pins of a plug in IEC 60335-1, 22.5, as others cite it",
          Standing.SECOND_HAND);

  /** What may be left between the pins of a plug, V: IEC 60335-1, 22.5. */
  public static final double EXTRA_LOW = 34;

  /** The highest nominal voltage of a net that appliances have, V. */
  private static final double HIGHEST_NET = 400;

  /** An ordinary discharge tool, Ohm; common practice, no source. */
  private static final double TOOL = 20e3;

  private CapacitorDischarge() {}

  /**
   * The time by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "capacitor-discharge",
        "how long a capacitor takes to discharge through a resistor",
        "time = resistance capacitance ln(voltage / to)",
        "a resistor that is whole; a broken one leaves the charge where it is",
        SOURCE,
        List.of(
            Parameter.required("capacitance", "capacitance", QuantityKind.CAPACITANCE, 1e-12, 1),
            Parameter.required(
                "resistance", "resistance it discharges through", QuantityKind.RESISTANCE, 1, 1e9),
            Parameter.required(
                "voltage", "voltage at the start (peak)", QuantityKind.VOLTAGE, 0.1, 10000),
            Parameter.optional(
                "to", "voltage at the end", QuantityKind.VOLTAGE, 0.01, 10000, "34 V")),
        List.of(new Output("time", "time", QuantityKind.TIME)),
        List.of(ElectricalCautions.CHARGED_CAPACITOR, ElectricalCautions.HIGH_VOLTAGE),
        x -> new double[] {time(x[0], x[1], x[2], x[3])});
  }

  /**
   * The time to discharge.
   *
   * @param capacitance the capacitance, F, above 0
   * @param resistance the resistance, Ohm, above 0
   * @param from the voltage at the start, V, above 0; for alternating voltage its peak
   * @param to the voltage at the end, V, above 0
   * @return the time, s; 0 if the capacitor starts at or below the end voltage
   * @throws IllegalArgumentException if a figure is not finite and above zero
   */
  public static double time(double capacitance, double resistance, double from, double to) {
    Require.positive("capacitance", capacitance, "F");
    Require.positive("resistance", resistance, "ohm");
    Require.positive("voltage at the start", from, "V");
    Require.positive("voltage at the end", to, "V");
    return from <= to ? 0 : resistance * capacitance * Math.log(from / to);
  }

  /**
   * How long to hold an ordinary discharge tool of 20 kOhm across a capacitor, at worst.
   *
   * @param capacitance the capacitance, F, above 0
   * @return the time, s, rounded up and never short
   * @throws IllegalArgumentException if the capacitance is not finite and above zero
   */
  public static long throughTool(double capacitance) {
    Require.positive("capacitance", capacitance, "F");
    return DischargeWait.told(
        DischargeWait.seconds(
            capacitance, TOOL, DischargeWait.start(HIGHEST_NET, 0), DischargeWait.PLUG));
  }

  /**
   * The voltage that is left.
   *
   * @param capacitance the capacitance, F, above 0
   * @param resistance the resistance, Ohm, above 0
   * @param from the voltage at the start, V, above 0
   * @param time the time since then, s, 0 or above
   * @return the voltage, V
   * @throws IllegalArgumentException if a figure is out of its range
   */
  public static double voltageAfter(
      double capacitance, double resistance, double from, double time) {
    Require.positive("capacitance", capacitance, "F");
    Require.positive("resistance", resistance, "ohm");
    Require.positive("voltage at the start", from, "V");
    Require.notNegative("time", time, "s");
    return from * Math.exp(-time / (resistance * capacitance));
  }
}

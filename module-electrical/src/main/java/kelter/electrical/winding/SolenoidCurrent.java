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
 * What a solenoid on alternating current draws while its plunger is out (inrush) and once it is
 * seated (hold), and the heat in its wire at both: I = U / √(R² + (2π f L)²), P = I² R, with the
 * inductance L of either position.
 *
 * <p>All three figures of the coil can be read with the plug out: resistance with a meter,
 * inductance with an LCR meter at the frequency of the mains or near it, the plunger moved by hand.
 * Effective values in the steady state of a linear coil: the first half-wave can be higher, iron
 * that saturates draws more, and losses in the iron add to the heat. A seated plunger that has the
 * lower inductance contradicts itself and is refused.
 */
public final class SolenoidCurrent {

  /** Where the formula comes from. */
  public static final Source SOURCE =
      Source.published("alternating-current circuit theory; worked in JCGM 100:2008, H.2");

  private static final QuantityKind INDUCTANCE = QuantityKind.of("inductance", "H");

  private static final QuantityKind MILLIAMPERE = QuantityKind.of("current", "mA");

  private SolenoidCurrent() {}

  /**
   * The currents by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "solenoid-current",
        "what a solenoid on alternating current draws with its plunger out, and seated",
        "current = voltage / sqrt(resistance^2 + (2 pi frequency inductance)^2);"
            + " heat = current^2 resistance; each with inductance out and seated",
        "steady state, linear iron without losses; a seated inductance below the one out is"
            + " refused",
        SOURCE,
        List.of(
            Parameter.required("voltage", "voltage", QuantityKind.VOLTAGE, 0.1, 1000),
            Parameter.required(
                "resistance", "resistance with direct current", QuantityKind.RESISTANCE, 1e-2, 1e6),
            Parameter.required("out", "inductance with the plunger out", INDUCTANCE, 0, 1e3),
            Parameter.required("seated", "inductance with the plunger seated", INDUCTANCE, 0, 1e3),
            Parameter.optional(
                "frequency", "frequency", QuantityKind.FREQUENCY, 10, 1000, "50 Hz")),
        List.of(
            new Output("inrush", "current with the plunger out", MILLIAMPERE),
            new Output("hold", "current with the plunger seated", MILLIAMPERE),
            new Output("ratio", "inrush over hold", QuantityKind.RATIO),
            new Output("stuck-heat", "heat while the plunger sticks out", QuantityKind.POWER),
            new Output("hold-heat", "heat while it holds", QuantityKind.POWER)),
        List.of(ElectricalCautions.LIVE_PARTS, ElectricalCautions.HOT_PART),
        x -> {
          requireSeatedAbove(x[3], x[2]);
          double inrush = current(x[0], x[1], x[2], x[4]);
          double hold = current(x[0], x[1], x[3], x[4]);
          return new double[] {
            inrush, hold, inrush / hold, inrush * inrush * x[1], hold * hold * x[1]
          };
        });
  }

  /**
   * The current at one position of the plunger.
   *
   * @param voltage the effective voltage, V, above 0
   * @param resistance the resistance with direct current, Ohm, above 0
   * @param inductance the inductance, H, 0 or above
   * @param frequency the frequency, Hz, above 0
   * @return the effective current, A
   * @throws IllegalArgumentException if a figure is out of its range
   */
  public static double current(
      double voltage, double resistance, double inductance, double frequency) {
    Require.positive("voltage", voltage, "V");
    Require.positive("resistance", resistance, "ohm");
    double reactance =
        2
            * Math.PI
            * Require.positive("frequency", frequency, "Hz")
            * Require.notNegative("inductance", inductance, "H");
    return voltage / Math.hypot(resistance, reactance);
  }

  private static void requireSeatedAbove(double seated, double out) {
    if (!(seated >= out)) {
      throw new IllegalArgumentException(
          "the inductance is %s H seated and %s H out: a seated plunger closes the iron, so that it"
                  .formatted(QuantityFormat.plain(seated), QuantityFormat.plain(out))
              + " must have the higher one");
    }
  }
}

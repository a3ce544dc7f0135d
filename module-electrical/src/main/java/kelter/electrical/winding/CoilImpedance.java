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
 * What a coil or winding opposes to alternating current: Z = U / I, X = √(Z² − R²), power factor
 * R/Z, with its resistance R read with direct current.
 *
 * <p>A turn that is shorted lowers X much more than R; an armature that does not pull in lowers X
 * too. Losses in the iron count as resistance, so that X is a little overstated. A resistance
 * greater than Z contradicts the other readings and is refused.
 */
public final class CoilImpedance {

  /** Where the formula comes from. */
  public static final Source SOURCE =
      Source.published("alternating-current circuit theory; worked in JCGM 100:2008, H.2");

  private CoilImpedance() {}

  /**
   * The impedance by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "coil-impedance",
        "what a coil opposes to alternating current, and how much of it is resistance",
        "impedance = voltage / current; reactance = sqrt(impedance^2 - resistance^2);"
            + " power-factor = resistance / impedance",
        "losses in the iron count as resistance; a resistance above the impedance is refused",
        SOURCE,
        List.of(
            Parameter.required("voltage", "voltage", QuantityKind.VOLTAGE, 0.01, 1000),
            Parameter.required("current", "current", QuantityKind.CURRENT, 1e-4, 100),
            Parameter.required(
                "resistance",
                "resistance with direct current",
                QuantityKind.RESISTANCE,
                1e-3,
                1e6)),
        List.of(
            new Output("impedance", "impedance", QuantityKind.RESISTANCE),
            new Output("reactance", "reactance", QuantityKind.RESISTANCE),
            new Output("power-factor", "power factor", QuantityKind.RATIO)),
        List.of(ElectricalCautions.LIVE_PARTS),
        x -> {
          double impedance = impedance(x[0], x[1]);
          return new double[] {impedance, reactance(impedance, x[2]), x[2] / impedance};
        });
  }

  /**
   * The impedance.
   *
   * @param voltage the voltage, V, above 0
   * @param current the current, A, above 0
   * @return the impedance, Ohm
   * @throws IllegalArgumentException if a figure is not finite and above zero
   */
  public static double impedance(double voltage, double current) {
    return Require.positive("voltage", voltage, "V") / Require.positive("current", current, "A");
  }

  /**
   * The reactance.
   *
   * @param impedance the impedance, Ohm, above 0
   * @param resistance the resistance, Ohm, from 0 to the impedance
   * @return the reactance, Ohm
   * @throws IllegalArgumentException if the resistance is above the impedance
   */
  public static double reactance(double impedance, double resistance) {
    Require.positive("impedance", impedance, "ohm");
    Require.notNegative("resistance", resistance, "ohm");
    if (resistance > impedance) {
      throw new IllegalArgumentException(
          "the resistance is %s ohm, but the impedance only %s ohm: read all three again"
              .formatted(QuantityFormat.plain(resistance), QuantityFormat.plain(impedance)));
    }
    return Math.sqrt(impedance * impedance - resistance * resistance);
  }
}

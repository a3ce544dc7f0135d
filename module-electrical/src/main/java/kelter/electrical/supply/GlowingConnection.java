package kelter.electrical.supply;

import java.util.List;
import kelter.core.law.Require;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.core.source.Standing;
import kelter.electrical.caution.ElectricalCautions;

/**
 * How much heat a joint makes that glows, by the current: P = 35 W (I / 15 A)^n, the power through
 * the two greatest figures that were measured at loose screws on copper and aluminium wire, 35 W at
 * 15 A and 5 W at 0.8 A, so that n = ln(35/5) / ln(15/0.8) = 0.664.
 *
 * <p>From 0.8 A to 20 A. Below, the voltage across it stays as at 0.8 A, and above, the heat as at
 * 20 A; neither was measured. A joint on the way there makes less, and one that arcs more. No fuse,
 * circuit-breaker or residual-current device acts on it.
 */
public final class GlowingConnection {

  /** Where the figures stand. */
  public static final Source SOURCE =
      new Source(
          "Meese and Beausoliel, Exploratory Study of Glowing Electrical Connections, NBSIR 76-1011"
              + " (1976), abstract: 35 W at 15 A, 5 W at 0.8 A",
          Standing.SECOND_HAND);

  /** Heat at the greater current, W. NBSIR 76-1011. */
  private static final double MOST_HEAT = 35;

  /** The greater current, A. NBSIR 76-1011. */
  private static final double MOST_CURRENT = 15;

  /** Heat at the smaller current, W. NBSIR 76-1011. */
  private static final double LEAST_HEAT = 5;

  /** The smaller current, A. NBSIR 76-1011. */
  private static final double LEAST_CURRENT = 0.8;

  /** Current of the circuits in which it was seen, A. NBSIR 76-1011. */
  private static final double CIRCUIT = 20;

  private static final double EXPONENT =
      Math.log(MOST_HEAT / LEAST_HEAT) / Math.log(MOST_CURRENT / LEAST_CURRENT);

  private GlowingConnection() {}

  /**
   * The heat by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "glowing-connection",
        "what heat a glowing joint makes, and what voltage it takes for that",
        "heat = 35 W (current / 15 A)^0.664; drop = heat / current",
        "loose screws on copper or aluminium, 0.8 A to 20 A; joints on the way there make less",
        SOURCE,
        List.of(
            Parameter.required(
                "current", "current through it", QuantityKind.CURRENT, LEAST_CURRENT, CIRCUIT)),
        List.of(
            new Output("heat", "heat in the joint", QuantityKind.POWER),
            new Output("drop", "voltage across the joint", QuantityKind.VOLTAGE)),
        List.of(ElectricalCautions.HOT_PLUG, ElectricalCautions.FIXED_WIRING),
        x -> new double[] {heat(x[0]), heat(x[0]) / x[0]});
  }

  /**
   * The heat.
   *
   * @param current the current through the joint, A, above 0
   * @return the heat, W
   * @throws IllegalArgumentException if the current is not finite and above zero
   */
  public static double heat(double current) {
    Require.positive("current", current, "A");
    if (current < LEAST_CURRENT) {
      return LEAST_HEAT / LEAST_CURRENT * current;
    }
    return MOST_HEAT * Math.pow(Math.min(current, CIRCUIT) / MOST_CURRENT, EXPONENT);
  }
}

package kelter.electrical.protection;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.core.source.Standing;

/**
 * What North American product standards allow an appliance with a cord, beside the limits of IEC
 * and EN: leakage current 0.5 mA for two-wire cords and for portable appliances with a grounded
 * cord, 0.75 mA for stationary ones; 0.1 Ohm from touchable metal to the grounding blade.
 *
 * <p>Type tests, read with the network of UL 101, whose readings are printed as "MIU" and equal
 * milliamperes at the frequency of the mains. No rule for the test after a repair is known to this
 * class: shops use the figures of the type test. Sheathed heaters, some cooking appliances and
 * medical equipment (NFPA 99) have limits of their own, which are not covered. Most product
 * standards let the resistance of the cord count apart; 0.1 Ohm with the cord is the stricter
 * reading.
 */
public final class NorthAmericanLimit {

  /** Where the limits of leakage are cited. */
  public static final Source LEAKAGE_SOURCE =
      new Source("UL 101:2019, with the limits as UL 8750, 8.7.1, has them", Standing.SECOND_HAND);

  /** Where the limit of the grounding path is cited. */
  public static final Source BONDING_SOURCE =
      new Source(
          "UL 859, 57.1 (to the grounding blade), and UL 507, 42.1 (0.1 ohm), as test reports cite"
              + " them",
          Standing.SECOND_HAND);

  /** How an appliance is connected. */
  public enum Build {
    /** Two-wire cord. */
    TWO_WIRE,
    /** Grounded cord, portable. */
    GROUNDED_PORTABLE,
    /** Grounded cord, stationary or fixed. */
    GROUNDED_STATIONARY
  }

  /** Two-wire and portable appliances, A. UL 101. */
  private static final double PORTABLE = 0.5e-3;

  /** Stationary appliances with a grounded cord, A. UL 101. */
  private static final double STATIONARY = 0.75e-3;

  /** The grounding path, Ohm. UL 859, 57.1. */
  private static final double BONDING = 0.1;

  private static final QuantityKind MILLIAMPERE = QuantityKind.of("current", "mA");

  private NorthAmericanLimit() {}

  /**
   * The limits by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "north-american-limit",
        "what leakage current and grounding resistance North American standards allow",
        "leakage 0.5 mA for two-wire and for portable, 0.75 mA for stationary grounded appliances;"
            + " grounding 0.1 ohm",
        "type tests of appliances with a cord; product standards may differ; local code comes"
            + " first",
        new Source(
            LEAKAGE_SOURCE.document() + "; grounding " + BONDING_SOURCE.document(),
            Standing.SECOND_HAND),
        List.of(
            Parameter.choice(
                "build",
                "how it is connected",
                List.of("two-wire", "grounded-portable", "grounded-stationary"),
                "grounded-stationary")),
        List.of(
            new Output("leakage", "greatest leakage current", MILLIAMPERE),
            new Output(
                "grounding",
                "greatest resistance of the grounding path of a grounded appliance",
                QuantityKind.RESISTANCE)),
        List.of(Caution.UNPLUG),
        x -> new double[] {leakage(Build.values()[(int) Math.round(x[0])]), bonding()});
  }

  /**
   * The limit of the leakage current.
   *
   * @param build how the appliance is connected
   * @return the greatest leakage current, A
   */
  public static double leakage(Build build) {
    return build == Build.GROUNDED_STATIONARY ? STATIONARY : PORTABLE;
  }

  /**
   * The limit of the resistance from touchable metal to the grounding blade.
   *
   * @return the greatest resistance, Ohm
   */
  public static double bonding() {
    return BONDING;
  }
}

package kelter.electrical.protection;

import java.util.List;
import kelter.core.law.Require;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;

/**
 * The greatest resistance of the protective conductor after repair, from the plug's earth contact
 * to touchable metal (EN 50678, from memory): 0.3 Ohm for cords up to 5 m, 0.1 Ohm more for each
 * full further 7.5 m, at most 1 Ohm, for sections up to 1.5 mm².
 *
 * <p>A part of 7.5 m adds nothing here, which is the stricter reading. For larger sections the
 * document wants a computation from the resistance of the conductor: those are refused.
 */
public final class ProtectiveConductorLimit {

  /** Where the limit is believed to stand. */
  public static final Source SOURCE =
      Source.fromMemory("EN 50678:2020 and EN 50699:2020, protective conductor resistance");

  /** Limit up to {@link #FIRST_LENGTH}, Ohm. EN 50678, from memory. */
  private static final double FIRST = 0.3;

  /** Length of cord that the first limit covers, m. EN 50678, from memory. */
  private static final double FIRST_LENGTH = 5;

  /** What each step adds, Ohm. EN 50678, from memory. */
  private static final double STEP = 0.1;

  /** Length of a step, m. EN 50678, from memory. */
  private static final double STEP_LENGTH = 7.5;

  /** Greatest limit whatever the length, Ohm. EN 50678, from memory. */
  private static final double MOST = 1;

  /** Greatest section for which the rule is made, m². EN 50678, from memory. */
  private static final double LARGEST_SECTION = 1.5e-6;

  private ProtectiveConductorLimit() {}

  /**
   * The limit by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "protective-conductor-limit",
        "what the protective conductor of an appliance may have at most after repair",
        "limit = 0.3 ohm + 0.1 ohm for each full 7.5 m that length exceeds 5 m, at most 1 ohm",
        "cords up to 1.5 mm2; larger sections are refused; local code comes first",
        SOURCE,
        List.of(
            Parameter.required("length", "length of the cord", QuantityKind.DISTANCE, 0.1, 200),
            Parameter.optional(
                "section",
                "section of its conductors",
                QuantityKind.AREA,
                0.1e-6,
                1.5e-6,
                "1.5 mm2")),
        List.of(new Output("limit", "greatest resistance", QuantityKind.RESISTANCE)),
        List.of(Caution.UNPLUG),
        x -> new double[] {limit(x[0], x[1])});
  }

  /**
   * The limit.
   *
   * @param length the length of the cord, m, above 0
   * @param section the section of its conductors, m², up to 1.5 mm²
   * @return the greatest resistance, Ohm
   * @throws IllegalArgumentException if the length is not above zero or the section too large
   */
  public static double limit(double length, double section) {
    Require.positive("length of the cord", length, "m");
    Require.within("section", section * 1e6, 0, LARGEST_SECTION * 1e6, "mm2");
    double steps = Math.max(0, Math.floor((length - FIRST_LENGTH) / STEP_LENGTH + 1e-9));
    return Math.min(MOST, FIRST + STEP * steps);
  }
}

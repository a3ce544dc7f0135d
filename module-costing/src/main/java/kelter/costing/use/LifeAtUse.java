package kelter.costing.use;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;

/**
 * How many years a machine lasts where it is used more or less than in a household: {@code years at
 * this use = years in a household * cycles of a household / cycles here}.
 *
 * <p>It counts wear in cycles and not in years, which is right for pumps, bearings and hoses that
 * move and wrong for rubber and plastic that age by themselves: take it as an upper limit where the
 * use is light, and do not stretch it beyond a factor of ten either way. Common practice, no
 * source.
 */
public final class LifeAtUse {

  private static final double YEAR = QuantityKind.AGE.unit().factor();
  private static final double LONGEST = 200 * YEAR;
  private static final double LEAST_CYCLES = 0.1;
  private static final double MOST_CYCLES = 1000;

  private LifeAtUse() {}

  /**
   * This law by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "life-at-use",
        "How long a machine lasts that is used more or less than in a household",
        "life-here = life * household / cycles",
        "Wear counted in cycles: an upper limit where the use is light. The 220 cycles a"
            + " year of a household, 4.2 a week, are those of Regulation (EU) 1061/2010 for"
            + " washing machines (from memory).",
        Source.commonPractice("wear counted in cycles and not in years"),
        List.of(
            Parameter.required("life", "life in a household", QuantityKind.AGE, 0, LONGEST),
            Parameter.required(
                "cycles", "cycles a week here", QuantityKind.RATIO, LEAST_CYCLES, MOST_CYCLES),
            Parameter.optional(
                "household",
                "cycles a week in a household",
                QuantityKind.RATIO,
                LEAST_CYCLES,
                MOST_CYCLES,
                "4.2")),
        List.of(new Output("life-here", "life at this use", QuantityKind.AGE)),
        List.of(),
        x -> new double[] {years(Math.max(0, x[0]), x[2], x[1])});
  }

  /**
   * The life at another use.
   *
   * @param life the life in a household, in any unit of time, not negative
   * @param household how often a household uses the machine, in any unit of frequency, above zero
   * @param here how often it is used here, same unit, above zero
   * @return the life here, in the unit of the life
   * @throws IllegalArgumentException if a figure is outside its range
   */
  public static double years(double life, double household, double here) {
    if (!(life >= 0 && household > 0 && here > 0) || !Double.isFinite(life * household / here)) {
      throw new IllegalArgumentException(
          ("a life of %s at %s cycles in a household and %s here; all must be finite, the"
                  + " cycles above zero")
              .formatted(life, household, here));
    }
    return life * household / here;
  }
}

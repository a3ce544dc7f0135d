package kelter.hydraulics.limit;

import kelter.core.module.Parameter;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;

/**
 * What a figure may be.
 *
 * @param id the word of the parameter
 * @param title the words for a person
 * @param kind what it measures
 * @param low the least value that a person may give, in the coherent SI unit
 * @param high the greatest value that a person may give, in the coherent SI unit
 */
public record Range(String id, String title, QuantityKind kind, double low, double high) {

  /**
   * The share of the width of the range that a law still takes beyond an end, so that an uncertain
   * figure can be varied there; dimensionless, own choice.
   */
  private static final double MARGIN = 0.1;

  /** The share of a lower limit above zero below which a law takes nothing; own choice. */
  private static final double LEAST_SHARE = 0.5;

  /**
   * The figure as a parameter that must be given.
   *
   * @return the parameter
   */
  public Parameter required() {
    return Parameter.required(id, title, kind, low, high);
  }

  /**
   * The figure as a parameter that may be left out.
   *
   * @param usual what is taken then, as one would write it
   * @return the parameter
   */
  public Parameter optional(String usual) {
    return Parameter.optional(id, title, kind, low, high, usual);
  }

  /**
   * Checks a figure. A tenth of the width of the range beyond either end is let through, where the
   * laws run on smoothly, but nothing that changes the sign of a figure which is above zero.
   *
   * @param si the figure in the coherent SI unit
   * @return the figure
   * @throws IllegalArgumentException if it is not a finite number or farther outside
   */
  public double check(double si) {
    double slack = MARGIN * (high - low);
    double least = low > 0 ? Math.max(low - slack, LEAST_SHARE * low) : low - slack;
    if (!(si >= least && si <= high + slack)) {
      throw new IllegalArgumentException(
          "%s: %s is outside %s to %s".formatted(id, told(si), told(low), told(high)));
    }
    return si;
  }

  private String told(double si) {
    boolean belowZero = kind.equals(QuantityKind.TEMPERATURE) && si < 0;
    return Double.isFinite(si) && !belowZero
        ? Quantity.ofSi(si, 0, kind).display()
        : si + " (not a possible value)";
  }
}

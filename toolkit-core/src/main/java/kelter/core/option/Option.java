package kelter.core.option;

import java.util.List;
import java.util.Objects;

/**
 * Remedies, or replacement, as put to the owner. Money is in units of the currency of the weighing.
 *
 * @param id the word for it
 * @param title what is done, for a person
 * @param remedies the remedies, {@code component.remedy}; empty for a replacement
 * @param probabilityOfCure the chance that the machine works afterwards, from 0 to 1
 * @param outlay what is paid now, on average
 * @param years how long it lasts, in years, on average
 * @param annualCost the equivalent annual cost
 * @param probabilityCheapest the chance that it costs least a year, from 0 to 1; where options cost
 *     the same, that of the one which is cheaper on average
 */
public record Option(
    String id,
    String title,
    List<String> remedies,
    double probabilityOfCure,
    double outlay,
    double years,
    Spread annualCost,
    double probabilityCheapest) {

  /** How far a sum of chances may lie above 1. */
  private static final double ROUNDING = 1e-9;

  /** The id of the option to buy a new machine. */
  public static final String REPLACE = "replace";

  /** The id of the option to leave the machine as it is. */
  public static final String NOTHING = "do-nothing";

  /**
   * Checks that it can be told.
   *
   * @throws NullPointerException if anything is null
   * @throws IllegalArgumentException if a figure is not finite or a chance does not lie between 0
   *     and 1
   */
  public Option {
    Objects.requireNonNull(id);
    Objects.requireNonNull(title);
    Objects.requireNonNull(annualCost);
    remedies = List.copyOf(remedies);
    requireFinite("outlay", outlay);
    requireFinite("years", years);
    requireChance("chance of a cure", probabilityOfCure);
    requireChance("chance that it is cheapest", probabilityCheapest);
  }

  private static void requireFinite(String what, double figure) {
    if (!Double.isFinite(figure)) {
      throw new IllegalArgumentException("the " + what + " of an option is " + figure);
    }
  }

  private static void requireChance(String what, double chance) {
    if (!(chance >= 0 && chance <= 1 + ROUNDING)) {
      throw new IllegalArgumentException("the " + what + " of an option is " + chance);
    }
  }

  /**
   * Whether it is the option to buy a new machine.
   *
   * @return true if it is
   */
  public boolean replaces() {
    return id.equals(REPLACE);
  }

  /**
   * A figure that is not known for sure.
   *
   * @param mean its mean
   * @param low what it falls below with a chance of 5 %
   * @param median what it falls below with a chance of 50 %
   * @param high what it falls below with a chance of 95 %
   */
  public record Spread(double mean, double low, double median, double high) {

    /**
     * Checks that it can be told.
     *
     * @throws IllegalArgumentException if a figure is not finite
     */
    public Spread {
      requireFinite("mean", mean);
      requireFinite("low end", low);
      requireFinite("median", median);
      requireFinite("high end", high);
    }
  }
}

package kelter.costing.money;

import java.util.List;
import kelter.core.module.Calculation;

/**
 * A repaired machine against a new one when both lives are known: the equivalent annual cost of
 * each, and the repair bill at which they are equal.
 *
 * <p>{@code break-even = (annual cost of the new machine - running cost of the old one) * UPV(rate,
 * years left)}. Below it repairing costs less. When the repaired machine has come to its end it is
 * followed by a new one on today's terms, so that the years saved are worth the annual cost of the
 * new machine.
 *
 * <p>Years left and life above zero. Source: as {@link AnnualCost}; the break-even is arithmetic on
 * it.
 */
public final class RepairOrReplace {

  private RepairOrReplace() {}

  /**
   * This law by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "repair-or-replace",
        "What a repaired and a new machine cost a year, and the bill at which they are equal",
        "annual-repair = repair * recovery(left) + running; annual-new = price * recovery(life) +"
            + " running-new; break-even = (annual-new - running) / recovery(left)",
        "Lives known, from one day; the repair cures for sure. A negative break-even: the new"
            + " machine costs less even if the repair is free.",
        AnnualCost.SOURCE,
        List.of(
            Amount.required("repair", "bill for the repair"),
            PriceTerms.lasting("left", "how long the repaired machine lasts"),
            Amount.yearly("running", "running cost of the old machine"),
            Amount.required("price", "price of a new machine, installed"),
            PriceTerms.lasting("life", "how long a new machine lasts"),
            Amount.yearly("running-new", "running cost of the new machine"),
            PriceTerms.rate()),
        List.of(
            Amount.yearlyOutput("annual-repair", "annual cost of repairing"),
            Amount.yearlyOutput("annual-new", "annual cost of replacing"),
            Amount.output("break-even", "bill at which both cost the same")),
        List.of(),
        x -> {
          double left = PriceTerms.years(x[1]);
          double running = x[2] * Amount.YEAR;
          double runningNew = x[5] * Amount.YEAR;
          double annualNew = AnnualCost.of(x[3], runningNew, 0, x[6], PriceTerms.years(x[4]));
          return new double[] {
            AnnualCost.of(x[0], running, 0, x[6], left) / Amount.YEAR,
            annualNew / Amount.YEAR,
            breakEven(annualNew, running, x[6], left)
          };
        });
  }

  /**
   * The bill up to which repairing costs less than replacing.
   *
   * @param annualNew the equivalent annual cost of a new machine, in units of a currency
   * @param running the running cost a year of the old machine, same currency
   * @param rate the discount rate a year, as a ratio (3 % is 0.03), above -1
   * @param yearsLeft how long the repaired machine lasts, in years, not negative
   * @return the bill, same currency; below zero if replacing costs less in any case
   * @throws IllegalArgumentException if an amount is not finite, or the rate or the time is outside
   *     its range
   */
  public static double breakEven(double annualNew, double running, double rate, double yearsLeft) {
    PriceTerms.requireAmount("the annual cost of a new machine", annualNew);
    PriceTerms.requireAmount("the running cost", running);
    return (annualNew - running) * UniformPresentValue.factor(rate, yearsLeft);
  }
}

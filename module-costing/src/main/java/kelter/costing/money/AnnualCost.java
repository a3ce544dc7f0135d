package kelter.costing.money;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.source.Source;

/**
 * The equivalent annual cost of something that is bought, runs and is sold: what one would pay each
 * year, at the end of the year, to be as well off. {@code EAC = (outlay - salvage * SPV) / UPV +
 * running}.
 *
 * <p>It makes options comparable that last for different times, if each could be had again on the
 * same terms. Time above zero; any rate above -100 % a year.
 *
 * <p>Source: NIST Handbook 135 (1995 edition) for the factors; the measure is that of any text on
 * engineering economy.
 */
public final class AnnualCost {

  static final Source SOURCE =
      Source.published(
          "Equivalent uniform annual cost as in texts on engineering economy, with the factors of"
              + " NIST Handbook 135 (1995 edition)");

  private AnnualCost() {}

  /**
   * This law by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "annual-cost",
        "What something that is bought, runs and is sold costs a year, all told",
        "annual-cost = (outlay - salvage / (1 + rate)^life) * recovery + running",
        "A life from one day; running cost at the end of each year; rates from -50 % to 100 %"
            + " a year.",
        SOURCE,
        List.of(
            Amount.required("outlay", "paid today"),
            Amount.yearly("running", "paid each year"),
            Amount.optional("salvage", "got back at the end"),
            PriceTerms.lasting("life", "how long it lasts"),
            PriceTerms.rate()),
        List.of(
            Amount.yearlyOutput("annual-cost", "equivalent annual cost"),
            Amount.output("present-cost", "present value of all costs")),
        List.of(),
        x -> {
          double years = PriceTerms.years(x[3]);
          double annual = of(x[0], x[1] * Amount.YEAR, x[2], x[4], years);
          return new double[] {
            annual / Amount.YEAR, annual * UniformPresentValue.factor(x[4], years)
          };
        });
  }

  /**
   * The equivalent annual cost.
   *
   * @param outlay what is paid today, in units of a currency
   * @param running what is paid at the end of each year, same currency
   * @param salvage what is got back at the end, same currency
   * @param rate the discount rate a year, as a ratio (3 % is 0.03), above -1
   * @param years how long it lasts, in years, above zero
   * @return the cost a year, same currency
   * @throws IllegalArgumentException if an amount is not finite, or the rate or the time is outside
   *     its range
   */
  public static double of(
      double outlay, double running, double salvage, double rate, double years) {
    PriceTerms.requireAmount("the outlay", outlay);
    PriceTerms.requireAmount("the running cost", running);
    PriceTerms.requireAmount("the salvage", salvage);
    double recovered = salvage * SinglePresentValue.factor(rate, years);
    return (outlay - recovered) * UniformPresentValue.capitalRecovery(rate, years) + running;
  }
}

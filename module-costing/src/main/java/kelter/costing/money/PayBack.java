package kelter.costing.money;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;

/**
 * After how many years a saving has paid for what it cost, interest counted: the years n with
 * {@code saving * UPV(rate, n) = outlay}, that is {@code n = -ln(1 - outlay * rate / saving) / ln(1
 * + rate)}.
 *
 * <p>It says nothing of what comes after; compare annual costs to choose. Source: NIST Handbook 135
 * (1995 edition), discounted payback.
 */
public final class PayBack {

  private PayBack() {}

  /**
   * This law by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "pay-back",
        "After how many years a yearly saving has paid for what it cost",
        "years = -ln(1 - outlay * rate / saving) / ln(1 + rate); at 0 % outlay / saving",
        "Rates from 0 % to 100 % a year. A saving below the interest on the outlay never pays"
            + " back and is refused.",
        SinglePresentValue.SOURCE,
        List.of(
            Amount.required("outlay", "paid today, more than for the other choice"),
            Amount.requiredYearly("saving", "saved each year"),
            Parameter.optional("rate", "discount rate a year", QuantityKind.PERCENT, 0, 1, "3 %")),
        List.of(new Output("years", "time until it has paid back", QuantityKind.AGE)),
        List.of(),
        x -> new double[] {years(x[0], x[1] * Amount.YEAR, x[2]) * PriceTerms.SECONDS_PER_YEAR});
  }

  /**
   * The discounted pay-back time.
   *
   * @param outlay what is paid today, in units of a currency, not negative
   * @param saving what is saved each year, same currency, above zero
   * @param rate the discount rate a year, as a ratio, above -1
   * @return the time, in years
   * @throws IllegalArgumentException if a figure is outside its range, or the saving never pays
   *     back
   */
  public static double years(double outlay, double saving, double rate) {
    PriceTerms.requireRate(rate);
    PriceTerms.requireAmount("the outlay", outlay);
    PriceTerms.requireAmount("the saving", saving);
    double share = outlay * rate / saving;
    if (!(outlay >= 0 && saving > 0 && share < 1)) {
      throw new IllegalArgumentException(
          ("an outlay of %s and a saving of %s a year at %s a year never pay back; the saving must"
                  + " exceed the interest on the outlay")
              .formatted(outlay, saving, rate));
    }
    return rate == 0 ? outlay / saving : -Math.log1p(-share) / Math.log1p(rate);
  }
}

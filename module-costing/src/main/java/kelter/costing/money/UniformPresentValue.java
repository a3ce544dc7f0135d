package kelter.costing.money;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.quantity.QuantityKind;

/**
 * What equal amounts, one at the end of each year, are worth today: {@code UPV = (1 - (1 +
 * rate)^-years) / rate}, and its inverse, the capital recovery factor, which spreads an amount paid
 * today over the years.
 *
 * <p>Holds for any rate above -100 % a year; at a rate of zero the factor is the number of years.
 * For part-years the same formula is continued.
 *
 * <p>Source: NIST Handbook 135 (1995 edition), uniform present value factor; ASTM E917.
 */
public final class UniformPresentValue {

  private UniformPresentValue() {}

  /**
   * This law by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "annuity",
        "What equal yearly amounts are worth today, and what an amount today is worth a year",
        "present-value = amount * (1 - (1 + rate)^-time) / rate; recovery = rate / (1 - (1 +"
            + " rate)^-time)",
        "Amounts at the end of each year, rates from -50 % to 100 % a year; at 0 % the factor is"
            + " the number of years. A time from one day.",
        SinglePresentValue.SOURCE,
        List.of(
            Amount.requiredYearly("amount", "amount paid each year"),
            PriceTerms.lasting("time", "time"),
            PriceTerms.rate()),
        List.of(
            Amount.output("present-value", "worth of all amounts today"),
            new Output("recovery", "capital recovery factor, for each year", QuantityKind.RATIO)),
        List.of(),
        x -> {
          double years = PriceTerms.years(x[1]);
          return new double[] {
            x[0] * Amount.YEAR * factor(x[2], years), capitalRecovery(x[2], years)
          };
        });
  }

  /**
   * The worth today of one unit of money a year.
   *
   * @param rate the discount rate a year, as a ratio (3 % is 0.03), above -1
   * @param years over how many years it is paid, not negative
   * @return the uniform present value factor, in years
   * @throws IllegalArgumentException if the rate or the time is outside its range
   */
  public static double factor(double rate, double years) {
    PriceTerms.requireRate(rate);
    PriceTerms.requireYears(years);
    return rate == 0 ? years : -Math.expm1(-years * Math.log1p(rate)) / rate;
  }

  /**
   * The yearly amount that is worth one unit of money today.
   *
   * @param rate the discount rate a year, as a ratio (3 % is 0.03), above -1
   * @param years over how many years it is paid, above zero
   * @return the capital recovery factor, for each year
   * @throws IllegalArgumentException if the rate or the time is outside its range
   */
  public static double capitalRecovery(double rate, double years) {
    double factor = factor(rate, years);
    if (!(factor > 0)) {
      throw new IllegalArgumentException(
          "a time of %s a; money cannot be recovered in no time".formatted(years));
    }
    return 1 / factor;
  }
}

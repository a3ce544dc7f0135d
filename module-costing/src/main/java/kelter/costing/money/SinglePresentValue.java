package kelter.costing.money;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.source.Source;

/**
 * What one amount paid later is worth today: {@code PV = amount / (1 + rate)^years}.
 *
 * <p>Holds for any rate above -100 % a year, compounded once a year; years need not be whole. If
 * the amount is told in today's prices the rate is real (inflation taken out), if in the prices of
 * its day the rate is nominal; the two must not be mixed.
 *
 * <p>Source: NIST Handbook 135 (1995 edition), single present value factor; ASTM E917.
 */
public final class SinglePresentValue {

  /** Where the present value factors come from. */
  public static final Source SOURCE =
      Source.published(
          "NIST Handbook 135, Life-Cycle Costing Manual for the Federal Energy Management Program"
              + " (1995 edition), single and uniform present value factors");

  private SinglePresentValue() {}

  /**
   * This law by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "present-value",
        "What an amount that is paid later is worth today",
        "present-value = amount / (1 + rate)^time",
        "Rates from -50 % to 100 % a year, compounded yearly; part-years are interpolated by the"
            + " same formula. The rate is real if the amount is in today's prices, otherwise"
            + " nominal.",
        SOURCE,
        List.of(
            Amount.required("amount", "amount paid later"), PriceTerms.time(), PriceTerms.rate()),
        List.of(Amount.output("present-value", "worth today")),
        List.of(),
        x -> new double[] {x[0] * factor(x[2], PriceTerms.years(x[1]))});
  }

  /**
   * The factor by which an amount is less worth because it is paid later.
   *
   * @param rate the discount rate a year, as a ratio (3 % is 0.03), above -1
   * @param years the time until it is paid, in years, not negative
   * @return the single present value factor
   * @throws IllegalArgumentException if the rate or the time is outside its range
   */
  public static double factor(double rate, double years) {
    PriceTerms.requireRate(rate);
    PriceTerms.requireYears(years);
    return Math.exp(-years * Math.log1p(rate));
  }
}

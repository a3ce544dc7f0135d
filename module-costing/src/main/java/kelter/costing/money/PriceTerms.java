package kelter.costing.money;

import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;

/** The words and limits that the calculations with money share. */
final class PriceTerms {

  /** One year of 365.25 days (UCUM {@code a}), in s. */
  static final double SECONDS_PER_YEAR = Amount.YEAR;

  private static final double SECONDS_PER_DAY = 86_400;
  private static final double LEAST_RATE = -0.5;
  private static final double LONGEST = 200;

  private PriceTerms() {}

  /** The discount rate a year. */
  static Parameter rate() {
    return Parameter.optional(
        "rate", "discount rate a year", QuantityKind.PERCENT, LEAST_RATE, 1, "3 %");
  }

  /** The time until an amount is paid. */
  static Parameter time() {
    return Parameter.required("time", "time", QuantityKind.AGE, 0, LONGEST * SECONDS_PER_YEAR);
  }

  /** How long something lasts or is paid for: from a day, since nothing is paid in no time. */
  static Parameter lasting(String id, String title) {
    return Parameter.required(
        id, title, QuantityKind.AGE, SECONDS_PER_DAY, LONGEST * SECONDS_PER_YEAR);
  }

  static double years(double seconds) {
    return Math.max(0, seconds) / SECONDS_PER_YEAR;
  }

  static void requireRate(double rate) {
    if (!(rate > -1) || Double.isInfinite(rate)) {
      throw new IllegalArgumentException(
          "a discount rate of %s a year; it must be above -1 (-100 %%) and finite".formatted(rate));
    }
  }

  static void requireYears(double years) {
    if (!(years >= 0) || Double.isInfinite(years)) {
      throw new IllegalArgumentException(
          "a time of %s a; it must not be negative and must be finite".formatted(years));
    }
  }

  static void requireAmount(String what, double amount) {
    if (!Double.isFinite(amount)) {
      throw new IllegalArgumentException(
          "%s is %s; it must be a finite amount".formatted(what, amount));
    }
  }
}

package kelter.core.shop;

import java.util.Optional;
import kelter.core.job.Market;
import kelter.core.problem.Required;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;

/**
 * On which terms a shop offers its work.
 *
 * @param repairer who offers it
 * @param quoteValid for how long a quotation stands, 30 days to 2 years
 * @param guarantee for how long the shop stands for its work, not negative
 * @param market where its machines stand, if a job does not say
 */
public record Offering(
    Repairer repairer,
    Optional<Quantity> quoteValid,
    Optional<Quantity> guarantee,
    Optional<Market> market) {

  /**
   * The terms of a shop that does not tell where its machines stand.
   *
   * @param repairer who offers it
   * @param quoteValid for how long a quotation stands, 30 days to 2 years
   * @param guarantee for how long the shop stands for its work, not negative
   * @throws IllegalArgumentException if a time is not allowed
   */
  public Offering(Repairer repairer, Optional<Quantity> quoteValid, Optional<Quantity> guarantee) {
    this(repairer, quoteValid, guarantee, Optional.empty());
  }

  /**
   * For so many days an offer on the European Repair Information Form stands at least (Directive
   * (EU) 2024/1799, Article 4; cited second-hand).
   */
  public static final int LEAST_DAYS = 30;

  /** More than two years is a slip of the pen; own choice. */
  private static final double MOST_DAYS = 731;

  private static final double SECONDS_PER_DAY = 86_400;

  /** A shop that tells nothing of it. */
  public static final Offering UNKNOWN =
      new Offering(Repairer.UNKNOWN, Optional.empty(), Optional.empty());

  /**
   * Checks the times.
   *
   * @throws IllegalArgumentException if a quotation stands less than 30 days or more than 2 years,
   *     or the guarantee is negative
   */
  public Offering {
    Required.value(repairer, "repairer");
    Required.optional(quoteValid, "validity of a quotation");
    Required.optional(guarantee, "guarantee");
    Required.optional(market, "market of a shop");
    if (quoteValid.isPresent() && !isLongEnough(quoteValid.get())) {
      throw new IllegalArgumentException(
          "a quotation that stands %s; it stands from %s days to 2 years"
              .formatted(quoteValid.get().display(), LEAST_DAYS));
    }
    if (guarantee.isPresent()
        && !(guarantee.get().kind() == QuantityKind.AGE && guarantee.get().si() >= 0)) {
      throw new IllegalArgumentException("a guarantee lasts a time that is not negative");
    }
  }

  private static boolean isLongEnough(Quantity time) {
    double days = days(time);
    return time.kind() == QuantityKind.AGE && days >= LEAST_DAYS && days <= MOST_DAYS;
  }

  /**
   * For how long a quotation stands.
   *
   * @return whole calendar days, 30 where nothing is stated
   */
  public int validDays() {
    return quoteValid.map(time -> (int) Math.floor(days(time))).orElse(LEAST_DAYS);
  }

  /** A time in days; that it was told as 30 d must not be lost in the rounding. */
  private static double days(Quantity time) {
    return Math.round(time.si() / SECONDS_PER_DAY * 1e6) / 1e6;
  }
}

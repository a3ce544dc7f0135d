package kelter.core.book.learning;

import java.io.Serializable;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import kelter.core.diagnosis.learning.BetaDistribution;
import kelter.core.diagnosis.learning.DirichletPrior;
import kelter.core.diagnosis.learning.Strength;
import kelter.core.problem.Required;

/**
 * How entries count.
 *
 * @param asOf the day for which is learned; entries of later days are left out
 * @param keptPerYear what a job still counts for after each year, above 0 and up to 1; 1 forgets
 *     nothing
 */
public record LearningRule(LocalDate asOf, double keptPerYear) implements Serializable {

  /** What a job still counts for after each year, where nothing else is stated. */
  public static final double USUALLY_KEPT = DirichletPrior.KEPT_PER_YEAR;

  /**
   * How often a table of shares is right, so that what strays from it is chance; own choice, and
   * the rest from the book. It is high so that few jobs hardly move a table.
   */
  static final BetaDistribution RIGHT = new BetaDistribution(9, 1);

  /**
   * As how many jobs a table of shares counts that is not right; own choice, and the rest from the
   * book.
   */
  static final Strength.Guess SHARES = new Strength.Guess(60, 0.7, 20, 4000);

  /** As how many answers a table of chances counts; own choice, and the rest from the book. */
  static final Strength.Guess CHANCES = new Strength.Guess(30, 0.7, 12, 400);

  /** As how many jobs the shares of a kind count for one model or age; own choice. */
  static final Strength.Guess GROUPS = new Strength.Guess(300, 0.7, 60, 10_000);

  /** As how many cases the rate of all counts for one; own choice. */
  static final Strength.Guess RATES = new Strength.Guess(10, 0.7, 4, 200);

  /** A model or an age with fewer jobs than this is not told apart; own choice. */
  static final double LEAST_OF_GROUP = 40;

  /** A complaint has had its time to come back after so many days; common practice, no source. */
  public static final int DAYS_TO_COME_BACK = 90;

  private static final double DAYS_PER_YEAR = 365.25;

  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException if what is kept is not above 0 and up to 1
   */
  public LearningRule {
    Required.value(asOf, "day of learning");
    if (!(keptPerYear > 0 && keptPerYear <= 1)) {
      throw new IllegalArgumentException(
          keptPerYear + " kept per year; above 0 and up to 1 is allowed");
    }
  }

  double weight(LocalDate closed) {
    return keptPerYear == 1 ? 1 : Math.pow(keptPerYear, years(closed, asOf));
  }

  static double years(LocalDate from, LocalDate to) {
    return Math.max(0, ChronoUnit.DAYS.between(from, to)) / DAYS_PER_YEAR;
  }
}

package kelter.core.book.figures;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalInt;
import kelter.core.quantity.Money;

/**
 * A part that work needs, and how many of it to carry.
 *
 * @param key the work that it is for, {@code component-kind.remedy}
 * @param demand how often it was used
 * @param carry how many to carry; empty where it was used too seldom to tell
 * @param met the chance that these meet what is asked for until more come, 0 to 1; 0 where {@code
 *     carry} is empty
 * @param carried how many are carried now, 0 or more
 * @param price of one of them; empty if neither the shop's prices nor the book tell it
 * @param priced of how many parts of the book the price is the median; 0 where it is the shop's own
 */
public record Spare(
    String key,
    Demand demand,
    OptionalInt carry,
    double met,
    int carried,
    Optional<Money> price,
    int priced) {

  /** Fewer uses than this tell no number to carry; own choice. */
  public static final int LEAST_USES = 3;

  /**
   * What those to carry cost.
   *
   * @return price times number; empty where one of them is not known
   */
  public Optional<Money> capital() {
    return carry.isEmpty()
        ? Optional.empty()
        : price.map(
            each ->
                new Money(
                    each.amount().multiply(BigDecimal.valueOf(carry.getAsInt())), each.currency()));
  }
}

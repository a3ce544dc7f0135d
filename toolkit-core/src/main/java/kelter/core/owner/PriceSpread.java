package kelter.core.owner;

import java.util.Optional;
import kelter.core.quantity.Quantity;

/**
 * How far prices may turn out otherwise, as relative standard deviations. Nothing has to be stated.
 *
 * @param repair of work and parts, as a ratio from 0 to 1 (10 % is 0.1)
 * @param replacement of a new machine, likewise
 * @param running of energy, water and detergent, likewise
 */
public record PriceSpread(
    Optional<Quantity> repair, Optional<Quantity> replacement, Optional<Quantity> running) {

  /** Prices that are sure. */
  public static final PriceSpread NONE =
      new PriceSpread(Optional.empty(), Optional.empty(), Optional.empty());

  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException if one is not between 0 and 100 %
   */
  public PriceSpread {
    require("repair", repair);
    require("replacement", replacement);
    require("running", running);
  }

  private static void require(String what, Optional<Quantity> spread) {
    if (spread.isPresent() && !(spread.get().si() >= 0 && spread.get().si() <= 1)) {
      throw new IllegalArgumentException(
          "a spread of %s of the prices of '%s'; it must lie from 0 to 100 %%"
              .formatted(spread.get().format(), what));
    }
  }
}

package kelter.core.book.learned;

import java.util.Map;

/**
 * How the shares of causes in some machines of a kind differ from those of all.
 *
 * @param jobs how many jobs were of such machines
 * @param weight how much they count against those of all, 0 to below 1
 * @param factors by the key of a cause, or one of the words for no cause and another one, the
 *     factor on its share, above 0
 */
public record LearnedGroup(int jobs, double weight, Map<String, Double> factors) {

  /** Copies the factors. */
  public LearnedGroup {
    factors = Map.copyOf(factors);
  }
}

package kelter.core.safety.lockout.table;

import java.util.Map;
import java.util.Objects;
import kelter.core.job.Market;

/**
 * Words for a person, those of a market where they differ.
 *
 * @param usual the words everywhere else
 * @param own the words of single markets
 */
public record MarketText(String usual, Map<Market, String> own) {

  /** Nothing to say. */
  public static final MarketText NONE = new MarketText("", Map.of());

  public MarketText {
    Objects.requireNonNull(usual);
    own = Map.copyOf(own);
  }

  /**
   * The words of a market.
   *
   * @param market where the machine stands
   * @return its words
   */
  public String in(Market market) {
    return own.getOrDefault(market, usual);
  }
}

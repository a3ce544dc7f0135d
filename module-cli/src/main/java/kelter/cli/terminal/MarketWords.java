package kelter.cli.terminal;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import kelter.core.job.Market;

/**
 * The words of a market. Texts are written in the words of Europe; where a machine stands in North
 * America those of its trade take their place. Words with a hyphen or a full stop beside them are
 * words of files and stay. Common practice, no source.
 */
public final class MarketWords implements UnaryOperator<String> {

  private static final Map<String, String> NORTH_AMERICA = northAmerica();

  private final Map<Pattern, String> words = new LinkedHashMap<>();

  private MarketWords(Map<String, String> words) {
    words.forEach(
        (word, other) -> {
          put(word, other);
          put(capital(word), capital(other));
        });
  }

  private static Map<String, String> northAmerica() {
    Map<String, String> words = new LinkedHashMap<>();
    words.put("residual-current device (RCD, GFCI)", "ground-fault interrupter (GFCI)");
    words.put("residual-current device", "ground-fault interrupter (GFCI)");
    words.put("residual current device", "ground-fault interrupter (GFCI)");
    words.put("RCD", "GFCI");
    words.put("protective conductor", "grounding conductor");
    words.put("earth contact", "ground pin");
    words.put("earthing", "grounding");
    words.put("earthed", "grounded");
    words.put("earth", "ground");
    words.put("renewed", "replaced");
    words.put("renewing", "replacing");
    words.put("renew", "replace");
    return words;
  }

  /**
   * The words of a market.
   *
   * @param market where the machine stands
   * @return what puts them into a text
   */
  public static UnaryOperator<String> of(Market market) {
    return market == Market.NA ? new MarketWords(NORTH_AMERICA) : UnaryOperator.identity();
  }

  private void put(String word, String other) {
    words.put(Pattern.compile("(?<![\\w.-])" + Pattern.quote(word) + "(?![\\w-])"), other);
  }

  private static String capital(String word) {
    return Character.toUpperCase(word.charAt(0)) + word.substring(1);
  }

  @Override
  public String apply(String text) {
    String told = text;
    for (Map.Entry<Pattern, String> word : words.entrySet()) {
      told = word.getKey().matcher(told).replaceAll(word.getValue());
    }
    return told;
  }
}

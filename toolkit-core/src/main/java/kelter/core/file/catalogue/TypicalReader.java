package kelter.core.file.catalogue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kelter.core.catalogue.TypicalFigure;
import kelter.core.file.json.JsonNode;
import kelter.core.job.Market;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Vocabulary;

/** Reads typical figures of parts by market. */
final class TypicalReader {

  private static final String ALL = "all";
  static final Set<String> MARKETS = markets();
  static final Map<String, QuantityKind> NAMEPLATE = nameplate();

  private final Vocabulary vocabulary;

  TypicalReader(Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
  }

  private static Set<String> markets() {
    Set<String> markets = new LinkedHashSet<>();
    markets.add(ALL);
    for (Market market : Market.values()) {
      markets.add(market.name());
    }
    return markets;
  }

  private static Map<String, QuantityKind> nameplate() {
    Map<String, QuantityKind> words = new LinkedHashMap<>();
    words.put("voltage", QuantityKind.VOLTAGE);
    words.put("frequency", QuantityKind.FREQUENCY);
    words.put("power", QuantityKind.POWER);
    words.put("current", QuantityKind.CURRENT);
    return words;
  }

  /**
   * The figures of a part, on its nameplate or its own. Those of a kind that no module knows are
   * left unread.
   */
  Map<Market, List<TypicalFigure>> figures(JsonNode part, String kind) {
    Map<Market, List<TypicalFigure>> figures = new EnumMap<>(Market.class);
    read(part, "nameplate", NAMEPLATE, true, figures);
    Optional<ComponentKind> known = vocabulary.kind(kind);
    if (known.isPresent()) {
      Map<String, QuantityKind> words = new LinkedHashMap<>();
      for (Characteristic word : known.get().figures()) {
        words.put(word.id(), word.kind());
      }
      read(part, "figures", words, false, figures);
    }
    return figures;
  }

  private static void read(
      JsonNode part,
      String member,
      Map<String, QuantityKind> words,
      boolean onNameplate,
      Map<Market, List<TypicalFigure>> figures) {
    Optional<JsonNode> node = part.optional(member);
    Map<String, JsonNode> byMarket = node.isPresent() ? node.get().members(MARKETS) : Map.of();
    for (String market : MARKETS) {
      JsonNode told = byMarket.get(market);
      Map<String, JsonNode> members = told == null ? Map.of() : told.members(words.keySet());
      for (Map.Entry<String, JsonNode> figure : members.entrySet()) {
        String word = figure.getKey();
        three(figure.getValue(), word, words.get(word), onNameplate)
            .ifPresent(typical -> add(figures, market, typical));
      }
    }
  }

  private static void add(
      Map<Market, List<TypicalFigure>> figures, String told, TypicalFigure typical) {
    for (Market market : Market.values()) {
      boolean own = told.equals(market.name());
      boolean lent = market == Market.UK && told.equals(Market.EU.name());
      if (own || lent || told.equals(ALL)) {
        List<TypicalFigure> known = figures.computeIfAbsent(market, any -> new ArrayList<>());
        known.removeIf(
            other ->
                other.word().equals(typical.word())
                    && other.onNameplate() == typical.onNameplate());
        known.add(typical);
      }
    }
  }

  /** Low, usual and high. */
  private static Optional<TypicalFigure> three(
      JsonNode node, String word, QuantityKind kind, boolean onNameplate) {
    List<Quantity> values = new ArrayList<>();
    List<JsonNode> items = node.items();
    for (JsonNode item : items) {
      item.quantity(kind).ifPresent(values::add);
    }
    if (items.size() != 3) {
      node.problem("has " + items.size() + " figures", "write low, usual and high");
    }
    return values.size() == 3 && items.size() == 3
        ? node.make(
            () -> new TypicalFigure(word, onNameplate, values.get(0), values.get(1), values.get(2)))
        : Optional.empty();
  }
}

package kelter.core.file.shop;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kelter.core.check.DecisionRule;
import kelter.core.file.field.InstrumentReader;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonNode;
import kelter.core.job.Market;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.QuantityParser;
import kelter.core.shop.LogColumn;
import kelter.core.shop.Offering;
import kelter.core.shop.Repairer;
import kelter.core.shop.Shop;
import kelter.core.shop.ShopInstrument;
import kelter.core.vocabulary.Ids;

/** Makes a shop out of the content of a shop profile and notes every mistake on the way. */
final class ShopReader {

  static final String FORMAT = "kelter-shop/1";

  static final Set<String> SHOP =
      JsonNode.names(
          "format",
          "id",
          "decision-level",
          "competent-for-live-work",
          "instruments",
          "columns",
          "plugins",
          "repairer",
          "quote-valid",
          "guarantee",
          "market",
          "note");
  static final Set<String> INSTRUMENT =
      JsonNode.names("id", "title", "functions", "calibrated", "interval");
  static final Set<String> COLUMN =
      JsonNode.names("column", "of", "observable", "condition", "unit", "instrument");

  static final Set<String> REPAIRER =
      JsonNode.names("name", "address", "telephone", "e-mail", "online", "vat-number", "register");

  private static final Map<String, Market> MARKETS = markets();

  private static Map<String, Market> markets() {
    Map<String, Market> markets = new LinkedHashMap<>();
    for (Market each : Market.values()) {
      markets.put(each.name(), each);
    }
    return markets;
  }

  private final List<Problem> problems = new ArrayList<>();

  private ShopReader() {}

  static ShopDocument read(Json content) {
    ShopReader reader = new ShopReader();
    Shop shop = reader.shop(new JsonNode(content, "", reader.problems));
    if (!reader.problems.isEmpty()) {
      throw new InputException(reader.problems);
    }
    return new ShopDocument(shop, (Json.Obj) content);
  }

  private Shop shop(JsonNode root) {
    root.object(SHOP);
    root.required("format").ifPresent(node -> node.word(Set.of(FORMAT), "format"));
    root.optional("id").ifPresent(node -> node.read(Ids::require));
    DecisionRule rule =
        root.optional("decision-level")
            .flatMap(node -> node.read(ShopReader::rule))
            .orElse(DecisionRule.USUAL);
    boolean competent = root.yesNo("competent-for-live-work").orElse(false);
    List<ShopInstrument> instruments =
        InstrumentReader.each(root, INSTRUMENT, ShopReader::instrument);
    List<LogColumn> columns = columns(root);
    root.optional("plugins").ifPresent(node -> node.read(folder -> Path.of(folder)));
    Offering offering = offering(root);
    root.text("note");
    return new Shop(instruments, rule, competent, columns).with(offering);
  }

  private static Offering offering(JsonNode root) {
    Repairer repairer =
        root.optional("repairer").map(ShopReader::repairer).orElse(Repairer.UNKNOWN);
    Optional<Quantity> valid =
        root.optional("quote-valid")
            .flatMap(
                node ->
                    node.quantity(QuantityKind.AGE)
                        .filter(time -> node.make(() -> standing(time)).isPresent()));
    Optional<Quantity> guarantee = root.notNegative("guarantee", QuantityKind.AGE);
    Optional<Market> market =
        root.optional("market")
            .flatMap(node -> node.word(MARKETS.keySet(), "market"))
            .map(MARKETS::get);
    return new Offering(repairer, valid, guarantee, market);
  }

  private static Offering standing(Quantity valid) {
    return new Offering(Repairer.UNKNOWN, Optional.of(valid), Optional.empty());
  }

  private static Repairer repairer(JsonNode node) {
    node.object(REPAIRER);
    return new Repairer(
        node.text("name").orElse(""),
        node.text("address").orElse(""),
        node.text("telephone").orElse(""),
        node.text("e-mail").orElse(""),
        node.text("online").orElse(""),
        node.text("vat-number").orElse(""),
        node.text("register").orElse(""));
  }

  private static DecisionRule rule(String text) {
    return new DecisionRule(QuantityParser.parse(text, QuantityKind.PERCENT).si());
  }

  private static Optional<ShopInstrument> instrument(JsonNode node) {
    Optional<LocalDate> calibrated = node.date("calibrated");
    Optional<Quantity> interval = node.quantity("interval", QuantityKind.AGE);
    return InstrumentReader.instrument(node)
        .flatMap(one -> node.make(() -> new ShopInstrument(one, calibrated, interval)));
  }

  private static List<LogColumn> columns(JsonNode root) {
    List<LogColumn> columns = new ArrayList<>();
    Set<LogColumn> known = new LinkedHashSet<>();
    for (JsonNode node : root.items("columns")) {
      Optional<LogColumn> column = column(node);
      if (column.isPresent() && !known.add(column.get())) {
        node.problem("column '" + column.get().column() + "' is said twice", "keep one of them");
      } else {
        column.ifPresent(columns::add);
      }
    }
    return columns;
  }

  private static Optional<LogColumn> column(JsonNode node) {
    node.object(COLUMN);
    Optional<String> heading = node.required("column").flatMap(JsonNode::text);
    Optional<String> of = node.required("of").flatMap(JsonNode::text);
    Optional<String> observable = node.required("observable").flatMap(JsonNode::text);
    Optional<String> condition = node.text("condition");
    Optional<String> unit = node.text("unit");
    Optional<String> instrument = node.text("instrument");
    if (heading.isEmpty() || of.isEmpty() || observable.isEmpty()) {
      return Optional.empty();
    }
    return node.make(
        () ->
            new LogColumn(heading.get(), of.get(), observable.get(), condition, unit, instrument));
  }

  /** A column as it stands in a profile. */
  static Json content(LogColumn column) {
    Json.Obj content =
        new Json.Obj(Map.of())
            .with("column", new Json.Str(column.column()))
            .with("of", new Json.Str(column.component()))
            .with("observable", new Json.Str(column.observable()));
    content = with(content, "condition", column.condition());
    content = with(content, "unit", column.unit());
    return with(content, "instrument", column.instrument());
  }

  private static Json.Obj with(Json.Obj content, String name, Optional<String> text) {
    return text.map(value -> content.with(name, new Json.Str(value))).orElse(content);
  }
}

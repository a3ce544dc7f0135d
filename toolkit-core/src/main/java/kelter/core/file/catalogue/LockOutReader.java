package kelter.core.file.catalogue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import kelter.core.file.field.IdField;
import kelter.core.file.field.SourceField;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonNode;
import kelter.core.job.Market;
import kelter.core.job.rule.EntryRules;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.safety.LockState;
import kelter.core.safety.Taken;
import kelter.core.safety.lockout.table.LockOutRow;
import kelter.core.safety.lockout.table.LockOutTable;
import kelter.core.safety.lockout.table.MarketText;
import kelter.core.safety.lockout.table.SafetyStep;
import kelter.core.safety.lockout.table.Suspect;
import kelter.core.source.Source;

/** Makes the lock-out table out of the content of its file and notes every mistake on the way. */
final class LockOutReader {

  static final String FORMAT = "kelter-lock-out/1";

  private static final Set<String> SUPPLIES = JsonNode.names("plug", "fixed");
  static final Set<String> TABLE =
      JsonNode.names("format", "title", "note", "rows", "isolation", "back-to-power");
  static final Set<String> ROW =
      JsonNode.names(
          "id",
          "number",
          "state",
          "when",
          "allowed",
          "only",
          "held",
          "first",
          "until",
          "supervised",
          "suspect",
          "text",
          "source");
  static final Set<String> SUSPECT = JsonNode.names("faults", "of", "not-of", "tests");
  static final Set<String> SUPERVISED = JsonNode.names("after", "text");
  static final Set<String> HELD = JsonNode.names("but");
  static final Set<String> STEP =
      JsonNode.names(
          "id",
          "title",
          "order",
          "kinds",
          "parts",
          "rows",
          "supply",
          "read",
          "rules-out",
          "powered",
          "text");
  private static final Set<String> TEXTS = JsonNode.names("all", "EU", "UK", "NA");
  private static final Set<String> STATES = JsonNode.names("A", "B", "C", "D");

  private final List<Problem> problems = new ArrayList<>();
  private final Set<String> rows = new LinkedHashSet<>();

  private LockOutReader() {}

  static LockOutTable read(Json content) {
    LockOutReader reader = new LockOutReader();
    JsonNode root = new JsonNode(content, "", reader.problems);
    root.object(TABLE);
    root.required("format").ifPresent(node -> node.word(Set.of(FORMAT), "format"));
    root.text("title");
    root.text("note");
    LockOutTable table =
        new LockOutTable(
            each(root, "rows", reader::row),
            each(root, "isolation", reader::step),
            each(root, "back-to-power", reader::step));
    if (!reader.problems.isEmpty()) {
      throw new InputException(reader.problems);
    }
    return table;
  }

  static <T> List<T> each(JsonNode root, String name, Function<JsonNode, Optional<T>> reader) {
    List<T> all = new ArrayList<>();
    for (JsonNode node : root.items(name)) {
      reader.apply(node).ifPresent(all::add);
    }
    return all;
  }

  static Set<String> words(JsonNode node, String name) {
    return new LinkedHashSet<>(each(node, name, JsonNode::text));
  }

  /** Whether a supply without a plug is meant; empty for any. */
  static Optional<Boolean> fixed(JsonNode node) {
    return node.optional("supply")
        .flatMap(told -> told.word(SUPPLIES, "supply"))
        .map("fixed"::equals);
  }

  private Optional<LockOutRow> row(JsonNode node) {
    node.object(ROW);
    Optional<String> id = IdField.required(node, "id");
    int number = whole(node, "number");
    Optional<LockState> state =
        node.required("state").flatMap(told -> told.word(STATES, "state")).map(LockState::valueOf);
    Optional<Set<Taken>> allowed = allowed(node);
    Optional<MarketText> text = node.required("text").flatMap(LockOutReader::text);
    Optional<Source> source = node.required("source").flatMap(SourceField::stated);
    LockOutConditions conditions = LockOutConditions.of(node);
    Optional<Set<String>> held =
        node.optional("held")
            .map(
                told -> {
                  told.object(HELD);
                  return words(told, "but");
                });
    Optional<LockOutRow.Supervised> supervised =
        node.optional("supervised").flatMap(LockOutReader::supervised);
    Optional<Suspect> suspect = node.optional("suspect").flatMap(LockOutReader::suspect);
    boolean whole = id.isPresent() && state.isPresent() && text.isPresent() && source.isPresent();
    if (!whole || !EntryRules.once(rows, "row", id.get(), node)) {
      return Optional.empty();
    }
    return node.make(
        () ->
            new LockOutRow(
                id.get(),
                number,
                conditions.when(),
                state.get(),
                allowed.orElse(state.get().allowed()),
                words(node, "only"),
                held,
                node.text("first").orElse(""),
                conditions.until(),
                supervised,
                suspect,
                text.get(),
                source.get()));
  }

  private static int whole(JsonNode node, String name) {
    return node.required(name).map(told -> (int) told.number().orElse(0)).orElse(0);
  }

  private static Optional<Set<Taken>> allowed(JsonNode node) {
    Optional<JsonNode> told = node.optional("allowed");
    Optional<String> letters = told.flatMap(JsonNode::text);
    Optional<Set<Taken>> allowed = letters.flatMap(Taken::of);
    if (letters.isPresent() && allowed.isEmpty()) {
      told.get().problem("'" + letters.get() + "' has a letter of no test", "known: l k d p r v");
    }
    return allowed;
  }

  private static Optional<MarketText> text(JsonNode node) {
    Map<Market, String> own = new EnumMap<>(Market.class);
    String usual = "";
    for (Map.Entry<String, JsonNode> each : node.members(TEXTS).entrySet()) {
      String words = each.getValue().text().orElse("");
      if (each.getKey().equals("all")) {
        usual = words;
      } else {
        own.put(Market.valueOf(each.getKey()), words);
      }
    }
    String all = usual;
    return node.make(() -> new MarketText(all, own));
  }

  private static Optional<LockOutRow.Supervised> supervised(JsonNode node) {
    node.object(SUPERVISED);
    Optional<MarketText> text = node.required("text").flatMap(LockOutReader::text);
    return text.map(
        words -> new LockOutRow.Supervised(each(node, "after", LockOutConditions::retest), words));
  }

  private static Optional<Suspect> suspect(JsonNode node) {
    node.object(SUSPECT);
    return node.make(
        () ->
            new Suspect(
                each(node, "faults", JsonNode::text),
                words(node, "of"),
                words(node, "not-of"),
                each(node, "tests", JsonNode::text)));
  }

  private Optional<SafetyStep> step(JsonNode node) {
    node.object(STEP);
    Optional<String> id = IdField.required(node, "id");
    int order = whole(node, "order");
    Optional<MarketText> text = node.required("text").flatMap(LockOutReader::text);
    for (JsonNode row : node.items("rows")) {
      row.text().ifPresent(word -> row.isKnown(word, rows, "row of this table"));
    }
    return id.isEmpty() || text.isEmpty()
        ? Optional.empty()
        : node.make(
            () ->
                new SafetyStep(
                    id.get(),
                    node.text("title").orElse(""),
                    order,
                    words(node, "kinds"),
                    words(node, "parts"),
                    words(node, "rows"),
                    fixed(node),
                    each(node, "read", LockOutConditions::retest),
                    each(node, "rules-out", JsonNode::text),
                    node.yesNo("powered").orElse(false),
                    text.get()));
  }
}

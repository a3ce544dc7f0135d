package kelter.core.file.job;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kelter.core.file.json.JsonNode;
import kelter.core.job.Progress;
import kelter.core.job.SymptomReport;
import kelter.core.job.work.Accepted;
import kelter.core.job.work.Closing;
import kelter.core.job.work.Outcome;
import kelter.core.job.work.PartUsed;
import kelter.core.job.work.TestDone;
import kelter.core.job.work.WorkDone;
import kelter.core.quantity.Money;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.vocabulary.Ids;

/** Reads what was done in a job and how it ended; mistakes are noted where they stand. */
final class ProgressReader {

  /** The members of a job that it reads. */
  static final Set<String> MEMBERS =
      JsonNode.names("work", "tests", "symptoms-left", "closed", "call-back-of", "accepted");

  /** The members of a piece of work. */
  static final Set<String> WORK =
      JsonNode.names("remedy", "title", "time", "parts", "found", "by", "date", "note");

  /** The members of a part that was put in. */
  static final Set<String> PART = JsonNode.names("title", "count", "price", "condition");

  /** The members of a test. */
  static final Set<String> TEST = JsonNode.names("result", "note");

  /** The members of a closing. */
  static final Set<String> CLOSED =
      JsonNode.names(
          "date", "outcome", "causes", "charged", "old-parts", "guarantee", "by", "note");

  /** The members of an accepted offer. */
  static final Set<String> ACCEPTED = JsonNode.names("option", "title", "most", "date");

  /** How a test came out. */
  static final Set<String> RESULTS = JsonNode.names("met", "not met");

  private static final String MET = "met";
  private static final int MOST_PARTS = 1000;
  private static final int MOST_OPTIONS = 1000;
  private static final Map<String, Outcome> OUTCOMES = new LinkedHashMap<>();
  private static final Map<String, PartUsed.Condition> CONDITIONS = new LinkedHashMap<>();

  static {
    for (Outcome outcome : Outcome.values()) {
      OUTCOMES.put(outcome.id(), outcome);
    }
    for (PartUsed.Condition condition : PartUsed.Condition.values()) {
      CONDITIONS.put(condition.id(), condition);
    }
  }

  private final JsonNode root;
  private final Set<String> steps;

  private ProgressReader(JsonNode root, Set<String> steps) {
    this.root = root;
    this.steps = steps;
  }

  /**
   * Reads it.
   *
   * @param root the content of the job file
   * @param steps the ids of the steps back to power
   * @param left what the machine does after the work
   * @return what was done; what cannot be read is left out
   */
  static Progress progress(JsonNode root, Set<String> steps, List<SymptomReport> left) {
    ProgressReader reader = new ProgressReader(root, steps);
    return new Progress(
        reader.work(),
        reader.tests(),
        left,
        root.optional("closed").flatMap(reader::closing),
        root.optional("call-back-of").flatMap(ProgressReader::id),
        root.optional("accepted").flatMap(ProgressReader::accepted));
  }

  private List<WorkDone> work() {
    List<WorkDone> work = new ArrayList<>();
    for (JsonNode node : root.items("work")) {
      piece(node).ifPresent(work::add);
    }
    return work;
  }

  private Optional<WorkDone> piece(JsonNode node) {
    node.object(WORK);
    Optional<JsonNode> named = node.optional("remedy");
    Optional<String> remedy = named.flatMap(ProgressReader::key);
    List<PartUsed> parts = new ArrayList<>();
    for (JsonNode part : node.items("parts")) {
      part(part).ifPresent(parts::add);
    }
    List<String> found = keys(node, "found");
    Optional<Quantity> time = node.notNegative("time", QuantityKind.TIME);
    String title = node.text("title").orElse("");
    String by = node.text("by").orElse("");
    String date = node.date("date").map(LocalDate::toString).orElse("");
    String note = node.text("note").orElse("");
    return named.isPresent() && remedy.isEmpty()
        ? Optional.empty()
        : node.make(() -> new WorkDone(remedy, title, time, parts, found, by, date, note));
  }

  private static Optional<PartUsed> part(JsonNode node) {
    node.object(PART);
    Optional<String> title = node.required("title").flatMap(JsonNode::text);
    int count = node.optional("count").flatMap(each -> each.count(MOST_PARTS)).orElse(1);
    Optional<Money> price = node.optional("price").flatMap(ProgressReader::price);
    PartUsed.Condition condition =
        node.optional("condition")
            .flatMap(each -> each.word(CONDITIONS.keySet(), "condition of a part"))
            .map(CONDITIONS::get)
            .orElse(PartUsed.Condition.NEW);
    return title.flatMap(words -> node.make(() -> new PartUsed(words, count, price, condition)));
  }

  private static Optional<Money> price(JsonNode node) {
    return node.read(
        text -> {
          Money money = Money.parse(text);
          if (money.amount().signum() < 0) {
            throw new IllegalArgumentException("'" + text + "' is negative; a price is not");
          }
          return money;
        });
  }

  private List<TestDone> tests() {
    List<TestDone> tests = new ArrayList<>();
    Map<String, JsonNode> members =
        root.optional("tests").map(each -> each.members(steps)).orElse(Map.of());
    members.forEach((step, node) -> test(step, node).ifPresent(tests::add));
    return tests;
  }

  private static Optional<TestDone> test(String step, JsonNode node) {
    Optional<JsonNode> result = Optional.of(node);
    String note = "";
    if (node.isObject()) {
      node.object(TEST);
      result = node.required("result");
      note = node.text("note").orElse("");
    }
    String seen = note;
    return result
        .flatMap(each -> each.word(RESULTS, "result of a test"))
        .map(word -> new TestDone(step, word.equals(MET), seen));
  }

  private Optional<Closing> closing(JsonNode node) {
    node.object(CLOSED);
    boolean dated = node.required("date").isPresent();
    Optional<LocalDate> date = dated ? node.date("date") : Optional.empty();
    Optional<Outcome> outcome =
        node.required("outcome")
            .flatMap(each -> each.word(OUTCOMES.keySet(), "outcome"))
            .map(OUTCOMES::get);
    List<String> causes = keys(node, "causes");
    Optional<Money> charged = node.optional("charged").flatMap(ProgressReader::price);
    Optional<Quantity> guarantee = node.notNegative("guarantee", QuantityKind.AGE);
    String old = node.text("old-parts").orElse("");
    String by = node.text("by").orElse("");
    String note = node.text("note").orElse("");
    return date.isEmpty() || outcome.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Closing(
                date.get().toString(), outcome.get(), causes, charged, old, guarantee, by, note));
  }

  private static Optional<Accepted> accepted(JsonNode node) {
    node.object(ACCEPTED);
    Optional<Integer> option = node.required("option").flatMap(each -> each.count(MOST_OPTIONS));
    Optional<String> title = node.required("title").flatMap(JsonNode::text);
    Optional<Money> most = node.optional("most").flatMap(ProgressReader::price);
    boolean dated = node.required("date").isPresent();
    Optional<LocalDate> date = dated ? node.date("date") : Optional.empty();
    return option.isEmpty() || title.isEmpty() || date.isEmpty()
        ? Optional.empty()
        : node.make(() -> new Accepted(option.get(), title.get(), most, date.get().toString()));
  }

  private static List<String> keys(JsonNode node, String name) {
    List<String> keys = new ArrayList<>();
    for (JsonNode item : node.items(name)) {
      key(item).ifPresent(keys::add);
    }
    return keys;
  }

  /** Two ids with a full stop between them. */
  private static Optional<String> key(JsonNode node) {
    return node.read(
        text -> {
          int dot = text.indexOf('.');
          if (dot < 0) {
            throw new IllegalArgumentException(
                "'" + text + "' is not of the form 'part.word', such as 'heater.open'");
          }
          Ids.require(text.substring(0, dot));
          Ids.require(text.substring(dot + 1));
          return text;
        });
  }

  private static Optional<String> id(JsonNode node) {
    return node.read(Ids::require);
  }
}

package kelter.core.file.book;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kelter.core.book.BookEntry;
import kelter.core.book.BookedMachine;
import kelter.core.book.ConfirmedCause;
import kelter.core.book.Outcome;
import kelter.core.book.ReadingTaken;
import kelter.core.book.WorkDone;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonNode;
import kelter.core.file.json.JsonText;
import kelter.core.file.json.SchemaText;
import kelter.core.job.Market;
import kelter.core.job.SymptomReport.Answer;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.quantity.Money;

/** An entry of a job book as a line of JSON, {@code "format": "kelter-book-entry/1"}. */
public final class EntryLine {

  static final String FORMAT = "kelter-book-entry/1";

  /** What a line is called where it is no JSON. */
  static final String NAME = "the line";

  private static final Set<String> ENTRY =
      JsonNode.names(
          "format",
          "job",
          "called",
          "closed",
          "machine",
          "market",
          "complaint",
          "notes",
          "symptoms",
          "displayed",
          "outcome",
          "causes",
          "work",
          "readings",
          "predictions",
          "charged",
          "call-back-of");
  private static final Set<String> MACHINE =
      JsonNode.names("kind", "maker", "model", "serial", "age", "cycles", "hours");
  private static final Set<String> CAUSE = JsonNode.names("component", "kind", "fault");
  private static final Set<String> WORK =
      JsonNode.names("component", "remedy", "minutes", "parts", "cured");
  private static final Set<String> READING =
      JsonNode.names("component", "observable", "instrument", "minutes", "misled");

  private static final Set<String> PREDICTION = JsonNode.names("fault", "probability");

  private static final double GREATEST = 1e9;

  private EntryLine() {}

  /**
   * The JSON Schema (2020-12) of a line, for other programs.
   *
   * @return JSON
   */
  public static String schema() {
    return SchemaText.of(EntryLine.class, "kelter-book-entry-1.schema.json");
  }

  /**
   * Writes an entry; the same entry gives the same line.
   *
   * @param entry the entry
   * @return the line without its end
   */
  public static String write(BookEntry entry) {
    return JsonText.line(json(entry));
  }

  /**
   * An entry as JSON.
   *
   * @param entry the entry
   * @return an object with what is told
   */
  public static Json.Obj json(BookEntry entry) {
    return new Members()
        .text("format", FORMAT)
        .text("job", entry.job())
        .text("called", entry.called().map(Object::toString))
        .text("closed", entry.closed().toString())
        .object("machine", machine(entry.machine()))
        .text("market", entry.market().map(Enum::name))
        .text("complaint", entry.complaint())
        .text("notes", entry.notes())
        .each("symptoms", entry.symptoms(), answer -> new Json.Str(answer.id()))
        .each("displayed", entry.displayed(), Json.Str::new)
        .text("outcome", entry.outcome().id())
        .each("causes", entry.causes(), EntryLine::cause)
        .each("work", entry.work(), EntryLine::work)
        .each("readings", entry.readings(), EntryLine::reading)
        .each("predictions", List.copyOf(entry.predictions().entrySet()), EntryLine::prediction)
        .text("charged", entry.charged().map(Money::format))
        .text("call-back-of", entry.callBackOf())
        .object();
  }

  private static Json prediction(Map.Entry<String, Double> told) {
    return new Members()
        .text("fault", told.getKey())
        .number("probability", told.getValue())
        .object();
  }

  private static Json.Obj machine(BookedMachine machine) {
    return new Members()
        .text("kind", machine.kind())
        .text("maker", machine.maker())
        .text("model", machine.model())
        .text("serial", machine.serial())
        .number("age", machine.age())
        .number("cycles", machine.cycles())
        .number("hours", machine.hours())
        .object();
  }

  private static Json cause(ConfirmedCause cause) {
    return new Members()
        .text("component", cause.component())
        .text("kind", cause.kind())
        .text("fault", cause.fault())
        .object();
  }

  private static Json work(WorkDone work) {
    Members members =
        new Members()
            .text("component", work.component())
            .text("remedy", work.remedy())
            .number("minutes", work.minutes())
            .text("parts", work.parts().map(Money::format));
    work.cured().ifPresent(cured -> members.yesNo("cured", cured));
    return members.object();
  }

  private static Json reading(ReadingTaken reading) {
    return new Members()
        .text("component", reading.component())
        .text("observable", reading.observable())
        .text("instrument", reading.instrument())
        .number("minutes", reading.minutes())
        .yesNo("misled", reading.misled())
        .object();
  }

  /**
   * Reads a line.
   *
   * @param line the text
   * @return the entry
   * @throws InputException with every mistake of the line, each with its place in it
   */
  public static BookEntry read(String line) {
    return read(JsonText.read(line.getBytes(StandardCharsets.UTF_8), NAME, ""));
  }

  private static BookEntry read(Json content) {
    List<Problem> problems = new ArrayList<>();
    JsonNode node = new JsonNode(content, "", problems);
    Fields fields = new Fields(node, ENTRY);
    node.required("format").ifPresent(each -> each.word(Set.of(FORMAT), "format"));
    Optional<String> job = fields.required("job");
    var called = node.date("called");
    node.required("closed");
    var closed = node.date("closed");
    Optional<BookedMachine> machine = node.required("machine").flatMap(EntryLine::machine);
    Optional<Market> market =
        node.optional("market").flatMap(each -> word(each, Market.values(), "market"));
    Map<String, Answer> symptoms = answers(node);
    List<String> displayed = new ArrayList<>();
    node.items("displayed").forEach(each -> each.text().ifPresent(displayed::add));
    Optional<Outcome> outcome =
        node.required("outcome").flatMap(each -> word(each, Outcome.values(), "outcome"));
    List<ConfirmedCause> causes = new ArrayList<>();
    node.items("causes").forEach(each -> cause(each).ifPresent(causes::add));
    List<WorkDone> work = new ArrayList<>();
    node.items("work").forEach(each -> work(each).ifPresent(work::add));
    List<ReadingTaken> readings = new ArrayList<>();
    node.items("readings").forEach(each -> reading(each).ifPresent(readings::add));
    Map<String, Double> predictions = new LinkedHashMap<>();
    node.items("predictions").forEach(each -> prediction(each, predictions));
    Optional<Money> charged = node.optional("charged").flatMap(each -> each.read(Money::parse));
    Optional<String> callBackOf = node.text("call-back-of");
    String complaint = fields.text("complaint");
    String notes = fields.text("notes");
    Optional<BookEntry> entry = Optional.empty();
    if (problems.isEmpty()) {
      entry =
          node.make(
              () ->
                  new BookEntry(
                      job.orElseThrow(),
                      called,
                      closed.orElseThrow(),
                      machine.orElseThrow(),
                      market,
                      complaint,
                      notes,
                      symptoms,
                      displayed,
                      outcome.orElseThrow(),
                      causes,
                      work,
                      readings,
                      predictions,
                      charged,
                      callBackOf));
    }
    return entry.orElseThrow(() -> new InputException(problems));
  }

  private static Optional<BookedMachine> machine(JsonNode node) {
    Fields fields = new Fields(node, MACHINE);
    Optional<String> kind = fields.required("kind");
    var age = fields.number("age", 0, GREATEST);
    var cycles = fields.number("cycles", 0, GREATEST);
    var hours = fields.number("hours", 0, GREATEST);
    return kind.flatMap(
        id ->
            node.make(
                () ->
                    new BookedMachine(
                        id,
                        fields.text("maker"),
                        fields.text("model"),
                        fields.text("serial"),
                        age,
                        cycles,
                        hours)));
  }

  private static void prediction(JsonNode node, Map<String, Double> told) {
    Fields fields = new Fields(node, PREDICTION);
    Optional<String> fault = fields.required("fault");
    double probability = fields.figure("probability", 0, 1);
    if (fault.isPresent() && told.putIfAbsent(fault.get(), probability) != null) {
      node.problem("'" + fault.get() + "' occurs twice", "keep one of them");
    }
  }

  private static Map<String, Answer> answers(JsonNode node) {
    Map<String, Answer> answers = new LinkedHashMap<>();
    node.optional("symptoms")
        .ifPresent(
            all ->
                all.members()
                    .forEach(
                        (symptom, each) ->
                            word(each, Answer.values(), "answer")
                                .ifPresent(answer -> answers.put(symptom, answer))));
    return answers;
  }

  private static Optional<ConfirmedCause> cause(JsonNode node) {
    Fields fields = new Fields(node, CAUSE);
    Optional<String> component = fields.required("component");
    Optional<String> kind = fields.required("kind");
    Optional<String> fault = fields.required("fault");
    return component.isPresent() && kind.isPresent() && fault.isPresent()
        ? node.make(() -> new ConfirmedCause(component.get(), kind.get(), fault.get()))
        : Optional.empty();
  }

  private static Optional<WorkDone> work(JsonNode node) {
    Fields fields = new Fields(node, WORK);
    Optional<String> component = fields.required("component");
    Optional<String> remedy = fields.required("remedy");
    var minutes = fields.number("minutes", 0, GREATEST);
    Optional<Money> parts = node.optional("parts").flatMap(each -> each.read(Money::parse));
    Optional<Boolean> cured = node.yesNo("cured");
    return component.isPresent() && remedy.isPresent()
        ? node.make(() -> new WorkDone(component.get(), remedy.get(), minutes, parts, cured))
        : Optional.empty();
  }

  private static Optional<ReadingTaken> reading(JsonNode node) {
    Fields fields = new Fields(node, READING);
    Optional<String> component = fields.required("component");
    Optional<String> observable = fields.required("observable");
    var minutes = fields.number("minutes", 0, GREATEST);
    boolean misled = node.yesNo("misled").orElse(false);
    return component.isPresent() && observable.isPresent()
        ? node.make(
            () ->
                new ReadingTaken(
                    component.get(), observable.get(), fields.text("instrument"), minutes, misled))
        : Optional.empty();
  }

  private static <T extends Enum<T>> Optional<T> word(JsonNode node, T[] values, String what) {
    Map<String, T> words = new LinkedHashMap<>();
    for (T value : values) {
      words.put(id(value), value);
    }
    return node.word(words.keySet(), what).map(words::get);
  }

  /** The word in a file. */
  private static String id(Enum<?> value) {
    if (value instanceof Answer answer) {
      return answer.id();
    }
    return value instanceof Outcome outcome ? outcome.id() : value.name();
  }
}

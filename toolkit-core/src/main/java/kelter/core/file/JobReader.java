package kelter.core.file;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kelter.core.instrument.InstrumentLibrary;
import kelter.core.job.Appliance;
import kelter.core.job.Complaint;
import kelter.core.job.Instrument;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Prices;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.QuantityParser;
import kelter.core.quantity.Scale;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Ids;
import kelter.core.vocabulary.Vocabulary;

/** Makes a job out of the content of a job file and notes every mistake on the way. */
final class JobReader {

  static final String FORMAT = "kelter-job/1";

  static final Set<String> JOB =
      JsonNode.names(
          "format",
          "id",
          "date",
          "appliance",
          "complaint",
          "instruments",
          "measurements",
          "prices",
          "note");
  static final Set<String> COMPLAINT = JsonNode.names("said", "displayed");
  static final Set<String> INSTRUMENT = JsonNode.names("id", "title", "functions");
  static final Set<String> FUNCTION = JsonNode.names("measures", "accuracy", "resolution", "range");

  private final Vocabulary vocabulary;
  private final List<Problem> problems = new ArrayList<>();

  private JobReader(Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
  }

  static JobDocument read(Json content, Vocabulary vocabulary) {
    JobReader reader = new JobReader(vocabulary);
    JsonNode root = new JsonNode(content, "", reader.problems);
    Optional<Job> job = reader.job(root);
    if (!reader.problems.isEmpty() || job.isEmpty()) {
      throw new InputException(reader.problems);
    }
    return new JobDocument(job.get(), (Json.Obj) content);
  }

  private Optional<Job> job(JsonNode root) {
    root.object(JOB);
    root.required("format").ifPresent(node -> node.word(Set.of(FORMAT), "format"));
    Optional<String> id = root.required("id").flatMap(node -> node.read(Ids::require));
    Optional<String> date = root.optional("date").flatMap(node -> node.read(JobReader::date));
    Optional<Appliance> appliance =
        root.required("appliance").flatMap(new ApplianceReader(vocabulary)::appliance);
    Complaint complaint = root.optional("complaint").map(this::complaint).orElse(Complaint.NONE);
    List<Instrument> instruments = instruments(root);
    List<Measurement> measurements = List.of();
    if (appliance.isPresent()) {
      Set<String> instrumentIds = new LinkedHashSet<>();
      instruments.forEach(instrument -> instrumentIds.add(instrument.id()));
      measurements =
          new MeasurementReader(vocabulary, appliance.get(), instrumentIds).measurements(root);
      addTypical(instruments, instrumentIds, measurements);
    }
    List<Measurement> read = measurements;
    Optional<Prices> prices = root.optional("prices").flatMap(PricesReader::prices);
    root.optional("note").ifPresent(JsonNode::text);
    if (id.isEmpty() || appliance.isEmpty() || !problems.isEmpty()) {
      return Optional.empty();
    }
    return root.make(
        () ->
            new Job(
                id.get(), date.orElse(""), appliance.get(), complaint, instruments, read, prices));
  }

  /** Adds the instruments of the library that readings name without the job defining them. */
  private static void addTypical(
      List<Instrument> instruments, Set<String> ids, List<Measurement> measurements) {
    for (Measurement measurement : measurements) {
      measurement
          .instrument()
          .filter(ids::add)
          .flatMap(InstrumentLibrary::find)
          .ifPresent(instruments::add);
    }
  }

  private static String date(String text) {
    if (!text.matches("\\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\\d|3[01])")) {
      throw new IllegalArgumentException("'" + text + "' is not a date; write yyyy-mm-dd");
    }
    return text;
  }

  private Complaint complaint(JsonNode node) {
    node.object(COMPLAINT);
    return new Complaint(
        node.optional("said").flatMap(JsonNode::text).orElse(""),
        node.optional("displayed").flatMap(JsonNode::text).orElse(""));
  }

  private List<Instrument> instruments(JsonNode root) {
    List<Instrument> instruments = new ArrayList<>();
    Set<String> ids = new LinkedHashSet<>();
    for (JsonNode node : root.optional("instruments").map(JsonNode::items).orElse(List.of())) {
      node.object(INSTRUMENT);
      Optional<String> id = node.required("id").flatMap(field -> field.read(Ids::require));
      String title = node.optional("title").flatMap(JsonNode::text).orElse("");
      List<Instrument.Function> functions = functions(node);
      if (id.isPresent() && !ids.add(id.get())) {
        node.problem("instrument '" + id.get() + "' occurs twice", "give each its own id");
      } else if (id.isPresent()) {
        instruments.add(new Instrument(id.get(), title, functions));
      }
    }
    return instruments;
  }

  /** The size of a count is a difference, also of a thermometer. */
  private static double difference(String text, QuantityKind kind) {
    boolean temperature = kind.scale() == Scale.TEMPERATURE;
    return QuantityParser.parse(text, temperature ? QuantityKind.TEMPERATURE_DIFFERENCE : kind)
        .si();
  }

  private List<Instrument.Function> functions(JsonNode instrument) {
    List<Instrument.Function> functions = new ArrayList<>();
    for (JsonNode node : instrument.optional("functions").map(JsonNode::items).orElse(List.of())) {
      node.object(FUNCTION);
      Optional<QuantityKind> kind =
          node.required("measures")
              .flatMap(field -> field.word(Instrument.MEASURES.keySet(), "thing to measure"))
              .map(Instrument.MEASURES::get);
      if (kind.isEmpty()) {
        continue;
      }
      Optional<Double> resolution =
          node.optional("resolution")
              .flatMap(field -> field.read(text -> difference(text, kind.get())));
      Optional<Double> range =
          node.optional("range")
              .flatMap(field -> field.read(text -> QuantityParser.parse(text, kind.get()).si()));
      node.required("accuracy")
          .flatMap(
              field ->
                  field.read(
                      text -> Accuracy.parse(text, kind.get(), resolution.orElse(Double.NaN))))
          .flatMap(
              accuracy ->
                  node.make(
                      () ->
                          new Instrument.Function(
                              kind.get(),
                              accuracy,
                              resolution.orElse(0.0),
                              range.orElse(Double.POSITIVE_INFINITY))))
          .ifPresent(functions::add);
    }
    return functions;
  }
}

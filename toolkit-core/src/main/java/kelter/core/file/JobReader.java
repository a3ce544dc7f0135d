package kelter.core.file;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonNode;
import kelter.core.file.price.PricesReader;
import kelter.core.file.price.UseReader;
import kelter.core.instrument.InstrumentLibrary;
import kelter.core.job.Appliance;
import kelter.core.job.Complaint;
import kelter.core.job.Instrument;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Prices;
import kelter.core.owner.Use;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
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
          "use",
          "note");
  static final Set<String> COMPLAINT = JsonNode.names("said", "displayed");

  private final Vocabulary vocabulary;
  private final List<Instrument> shop;
  private final List<Problem> problems = new ArrayList<>();

  private JobReader(Vocabulary vocabulary, List<Instrument> shop) {
    this.vocabulary = vocabulary;
    this.shop = shop;
  }

  static JobDocument read(Json content, Vocabulary vocabulary, List<Instrument> shop) {
    JobReader reader = new JobReader(vocabulary, shop);
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
    List<Instrument> own = InstrumentReader.instruments(root);
    List<Measurement> measurements = List.of();
    if (appliance.isPresent()) {
      Set<String> instrumentIds = new LinkedHashSet<>();
      own.forEach(instrument -> instrumentIds.add(instrument.id()));
      shop.forEach(instrument -> instrumentIds.add(instrument.id()));
      measurements =
          new MeasurementReader(vocabulary, appliance.get(), instrumentIds).measurements(root);
    }
    List<Measurement> read = measurements;
    List<Instrument> used = used(own, read);
    Optional<Prices> prices = root.optional("prices").flatMap(PricesReader::prices);
    Use use = root.optional("use").map(UseReader::use).orElse(Use.UNKNOWN);
    root.optional("note").ifPresent(JsonNode::text);
    if (id.isEmpty() || appliance.isEmpty() || !problems.isEmpty()) {
      return Optional.empty();
    }
    return root.make(
        () ->
            new Job(
                id.get(), date.orElse(""), appliance.get(), complaint, used, read, prices, use));
  }

  private static String date(String text) {
    if (!text.matches("\\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\\d|3[01])")) {
      throw new IllegalArgumentException("'" + text + "' is not a date; write yyyy-mm-dd");
    }
    return text;
  }

  /** The job's own instruments, and those of the shop or the library that its readings name. */
  private List<Instrument> used(List<Instrument> own, List<Measurement> measurements) {
    Set<String> named = new LinkedHashSet<>();
    measurements.forEach(measurement -> measurement.instrument().ifPresent(named::add));
    own.forEach(instrument -> named.remove(instrument.id()));
    List<Instrument> used = new ArrayList<>(own);
    for (String id : named) {
      shop.stream()
          .filter(instrument -> instrument.id().equals(id))
          .findFirst()
          .or(() -> InstrumentLibrary.find(id))
          .ifPresent(used::add);
    }
    return used;
  }

  private Complaint complaint(JsonNode node) {
    node.object(COMPLAINT);
    return new Complaint(
        node.optional("said").flatMap(JsonNode::text).orElse(""),
        node.optional("displayed").flatMap(JsonNode::text).orElse(""));
  }
}

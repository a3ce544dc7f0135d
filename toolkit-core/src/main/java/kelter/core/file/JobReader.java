package kelter.core.file;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonNode;
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
    Optional<JsonNode> format = root.required("format");
    if (format.isPresent()) {
      format.get().word(Set.of(FORMAT), "format");
    }
    Optional<String> id = IdField.required(root, "id");
    Optional<LocalDate> day = root.date("date");
    String date = day.isPresent() ? day.get().toString() : "";
    Optional<Appliance> appliance = appliance(root);
    Complaint complaint = complaint(root);
    int before = problems.size();
    List<Instrument> own = InstrumentReader.instruments(root);
    boolean sound = problems.size() == before;
    List<Measurement> measurements =
        appliance.isPresent() ? measurements(root, appliance.get(), own, sound) : List.of();
    List<Instrument> used = used(own, measurements);
    Optional<Prices> prices = prices(root);
    Optional<JsonNode> useNode = root.optional("use");
    Use use = useNode.isPresent() ? UseReader.use(useNode.get()) : Use.UNKNOWN;
    root.text("note");
    if (id.isEmpty() || appliance.isEmpty() || !problems.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          new Job(id.get(), date, appliance.get(), complaint, used, measurements, prices, use));
    } catch (IllegalArgumentException refused) {
      return root.refuse(refused);
    }
  }

  private Optional<Appliance> appliance(JsonNode root) {
    Optional<JsonNode> node = root.required("appliance");
    return node.isPresent()
        ? new ApplianceReader(vocabulary).appliance(node.get())
        : Optional.empty();
  }

  private List<Measurement> measurements(
      JsonNode root, Appliance appliance, List<Instrument> own, boolean sound) {
    List<Instrument> instruments = new ArrayList<>(own);
    instruments.addAll(shop);
    return new MeasurementReader(vocabulary, appliance, instruments, sound).measurements(root);
  }

  private static Optional<Prices> prices(JsonNode root) {
    Optional<JsonNode> node = root.optional("prices");
    return node.isPresent() ? PricesReader.prices(node.get()) : Optional.empty();
  }

  /** The job's own instruments, and those of the shop or the library that its readings name. */
  private List<Instrument> used(List<Instrument> own, List<Measurement> measurements) {
    Set<String> named = new LinkedHashSet<>();
    for (Measurement measurement : measurements) {
      if (measurement.instrument().isPresent()) {
        named.add(measurement.instrument().get());
      }
    }
    for (Instrument instrument : own) {
      named.remove(instrument.id());
    }
    List<Instrument> used = new ArrayList<>(own);
    for (String id : named) {
      Optional<Instrument> known = ofTheShop(id);
      if (known.isEmpty()) {
        known = InstrumentLibrary.find(id);
      }
      if (known.isPresent()) {
        used.add(known.get());
      }
    }
    return used;
  }

  private Optional<Instrument> ofTheShop(String id) {
    for (Instrument instrument : shop) {
      if (instrument.id().equals(id)) {
        return Optional.of(instrument);
      }
    }
    return Optional.empty();
  }

  private static Complaint complaint(JsonNode root) {
    Optional<JsonNode> node = root.optional("complaint");
    if (node.isEmpty()) {
      return Complaint.NONE;
    }
    node.get().object(COMPLAINT);
    return new Complaint(
        node.get().text("said").orElse(""), node.get().text("displayed").orElse(""));
  }
}

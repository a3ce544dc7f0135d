package kelter.core.file.job;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import kelter.core.catalogue.Completed;
import kelter.core.catalogue.Completion;
import kelter.core.file.catalogue.LockOutFile;
import kelter.core.file.field.ApplianceReader;
import kelter.core.file.field.IdField;
import kelter.core.file.field.InstrumentReader;
import kelter.core.file.field.TaxFields;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonNode;
import kelter.core.instrument.InstrumentLibrary;
import kelter.core.job.Appliance;
import kelter.core.job.Complaint;
import kelter.core.job.Instrument;
import kelter.core.job.Job;
import kelter.core.job.Market;
import kelter.core.job.Measurement;
import kelter.core.job.Prices;
import kelter.core.job.Progress;
import kelter.core.job.SymptomReport;
import kelter.core.owner.Use;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.safety.lockout.table.SafetyStep;
import kelter.core.vocabulary.Vocabulary;

/** Makes a job out of the content of a job file and notes every mistake on the way. */
final class JobReader {

  static final String FORMAT = "kelter-job/2";

  private static final Set<String> FORMATS = JsonNode.names(FORMAT, VersionOne.FORMAT);

  /** What version 1 has not. */
  static final Set<String> SINCE_TWO =
      JsonNode.names(
          "symptoms",
          "displayed",
          "market",
          "reason",
          "records",
          "work",
          "tests",
          "symptoms-left",
          "closed",
          "call-back-of",
          "accepted");

  static final Set<String> JOB =
      JsonNode.names(
          "format",
          "id",
          "date",
          "market",
          "appliance",
          "reason",
          "complaint",
          "symptoms",
          "displayed",
          "instruments",
          "measurements",
          "prices",
          "use",
          "records",
          "work",
          "tests",
          "symptoms-left",
          "closed",
          "call-back-of",
          "accepted",
          "note");
  static final Set<String> COMPLAINT = JsonNode.names("said", "displayed");

  private static final Set<String> STEPS_BACK =
      LockOutFile.shipped().backToPower().stream()
          .map(SafetyStep::id)
          .collect(Collectors.toCollection(LinkedHashSet::new));
  private static final Map<String, Market> MARKETS = new LinkedHashMap<>();
  private static final Map<String, Complaint.Reason> REASONS = new LinkedHashMap<>();

  static {
    for (Market market : Market.values()) {
      MARKETS.put(market.name(), market);
    }
    for (Complaint.Reason reason : Complaint.Reason.values()) {
      REASONS.put(reason.id(), reason);
    }
  }

  private final Vocabulary vocabulary;
  private final List<Instrument> shop;
  private final Completion completion;
  private final List<Problem> problems = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();
  private Optional<Appliance> stated = Optional.empty();

  private JobReader(Vocabulary vocabulary, List<Instrument> shop, Completion completion) {
    this.vocabulary = vocabulary;
    this.shop = shop;
    this.completion = completion;
  }

  static JobDocument read(
      Json content, Vocabulary vocabulary, List<Instrument> shop, Completion completion) {
    JobReader reader = new JobReader(vocabulary, shop, completion);
    JsonNode root = new JsonNode(content, "", reader.problems);
    Optional<Job> job = reader.job(root);
    if (!reader.problems.isEmpty() || job.isEmpty()) {
      throw new InputException(reader.problems);
    }
    return new JobDocument(
        job.get(), reader.stated.orElseThrow(), (Json.Obj) content, reader.notes);
  }

  private Optional<Job> job(JsonNode root) {
    root.object(JOB);
    boolean versionOne = isVersionOne(root);
    Optional<String> id = IdField.required(root, "id");
    Optional<LocalDate> day = root.date("date");
    String date = day.isPresent() ? day.get().toString() : "";
    stated = appliance(root);
    Optional<Completed> machine = stated.map(completion::complete);
    Optional<Appliance> appliance = machine.map(Completed::appliance);
    machine.ifPresent(completed -> notes.addAll(completed.notes()));
    Optional<Market> market = word(root, "market", MARKETS);
    List<SymptomReport> symptoms =
        versionOne ? List.of() : SymptomsReader.reports(root, vocabulary, machine, notes);
    Complaint complaint = complaint(root);
    int before = problems.size();
    List<Instrument> own = InstrumentReader.instruments(root);
    boolean sound = problems.size() == before;
    List<Measurement> measurements =
        appliance.isPresent()
            ? measurements(root, appliance.get(), own, sound, versionOne)
            : List.of();
    VersionOne.Told told =
        versionOne && appliance.isPresent()
            ? VersionOne.told(appliance.get(), measurements)
            : new VersionOne.Told(measurements, symptoms, List.of());
    notes.addAll(told.notes());
    Optional<Prices> prices = prices(root);
    Use use = use(root);
    Map<String, String> records = RecordsReader.records(root);
    Progress progress =
        versionOne
            ? Progress.NONE
            : ProgressReader.progress(root, STEPS_BACK, SymptomsReader.left(root, vocabulary));
    root.text("note");
    if (id.isEmpty() || appliance.isEmpty() || !problems.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          new Job(
              id.get(),
              date,
              appliance.get(),
              new Complaint(
                  complaint.reason(), complaint.said(), complaint.displayed(), told.reports()),
              used(own, told.measurements()),
              told.measurements(),
              prices,
              use,
              market,
              records,
              progress));
    } catch (IllegalArgumentException refused) {
      return root.refuse(refused);
    }
  }

  /** Whether it is a file of version 1; what that version has not is noted. */
  private static boolean isVersionOne(JsonNode root) {
    Optional<JsonNode> field = root.required("format");
    Optional<String> format =
        field.isPresent() ? oneOf(field.get(), FORMATS, "format") : Optional.empty();
    boolean versionOne = format.isPresent() && format.get().equals(VersionOne.FORMAT);
    if (versionOne) {
      refuseLater(root, SINCE_TWO);
      root.optional("prices").ifPresent(prices -> refuseLater(prices, TaxFields.NAMES));
    }
    return versionOne;
  }

  private static void refuseLater(JsonNode node, Collection<String> names) {
    for (String name : names) {
      Optional<JsonNode> later = node.optional(name);
      if (later.isPresent()) {
        later
            .get()
            .problem("is not in files of version 1", "write \"format\": \"" + FORMAT + "\" above");
      }
    }
  }

  private static <T> Optional<T> word(JsonNode root, String name, Map<String, T> words) {
    Optional<JsonNode> field = root.optional(name);
    Optional<String> word =
        field.isPresent() ? oneOf(field.get(), words.keySet(), name) : Optional.empty();
    return word.map(words::get);
  }

  /** One of words so few that all are told: the nearest to US would be UK. */
  private static Optional<String> oneOf(JsonNode field, Set<String> words, String what) {
    Optional<String> text = field.text();
    if (text.isPresent() && !words.contains(text.get())) {
      field.problem(
          "'" + text.get() + "' is not a known " + what, "known: " + String.join(", ", words));
      return Optional.empty();
    }
    return text;
  }

  private Optional<Appliance> appliance(JsonNode root) {
    Optional<JsonNode> node = root.required("appliance");
    return node.isPresent()
        ? new ApplianceReader(vocabulary).appliance(node.get())
        : Optional.empty();
  }

  private List<Measurement> measurements(
      JsonNode root, Appliance appliance, List<Instrument> own, boolean sound, boolean versionOne) {
    List<Instrument> instruments = new ArrayList<>(own);
    instruments.addAll(shop);
    return new MeasurementReader(vocabulary, appliance, instruments, sound, versionOne)
        .measurements(root);
  }

  private static Optional<Prices> prices(JsonNode root) {
    Optional<JsonNode> node = root.optional("prices");
    return node.isPresent() ? PricesReader.prices(node.get()) : Optional.empty();
  }

  private static Use use(JsonNode root) {
    Optional<JsonNode> node = root.optional("use");
    return node.isPresent() ? UseReader.use(node.get()) : Use.UNKNOWN;
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

  /** Why the call was made, and what was said and displayed; symptoms are read apart. */
  private static Complaint complaint(JsonNode root) {
    Complaint.Reason reason = word(root, "reason", REASONS).orElse(Complaint.Reason.FAULT);
    Optional<JsonNode> node = root.optional("complaint");
    if (node.isEmpty()) {
      return new Complaint(reason, "", "", List.of());
    }
    node.get().object(COMPLAINT);
    return new Complaint(
        reason,
        node.get().text("said").orElse(""),
        node.get().text("displayed").orElse(""),
        List.of());
  }
}

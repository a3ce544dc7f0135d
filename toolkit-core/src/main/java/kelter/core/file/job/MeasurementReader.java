package kelter.core.file.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kelter.core.file.field.QuantityFields;
import kelter.core.file.json.JsonNode;
import kelter.core.instrument.InstrumentLibrary;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.job.Instrument;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import kelter.core.job.ReadingParser;
import kelter.core.job.rule.EntryRules;
import kelter.core.quantity.QuantityFormat;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Symptom;
import kelter.core.vocabulary.Vocabulary;

/** Reads the measurements of a job. */
final class MeasurementReader {

  static final Set<String> MEASUREMENT =
      JsonNode.names("of", "observable", "reading", "at", "instrument", "note", "stage");

  private static final Map<String, Measurement.Stage> STAGES = new LinkedHashMap<>();

  static {
    for (Measurement.Stage stage : Measurement.Stage.values()) {
      STAGES.put(stage.id(), stage);
    }
  }

  private final Vocabulary vocabulary;
  private final Appliance appliance;
  private final List<Instrument> instruments;
  private final boolean sound;
  private final boolean versionOne;

  /**
   * A reader.
   *
   * @param instruments those of the job, then those of the shop and of the modules
   * @param sound whether they were read without a mistake, so that all their functions are known
   * @param versionOne whether the file is of version 1
   */
  MeasurementReader(
      Vocabulary vocabulary,
      Appliance appliance,
      List<Instrument> instruments,
      boolean sound,
      boolean versionOne) {
    this.versionOne = versionOne;
    this.sound = sound;
    this.vocabulary = vocabulary;
    this.appliance = appliance;
    this.instruments = instruments;
  }

  List<Measurement> measurements(JsonNode root) {
    List<Measurement> measurements = new ArrayList<>();
    for (JsonNode node : root.items("measurements")) {
      Optional<Measurement> measurement = measurement(node);
      if (measurement.isPresent()) {
        measurements.add(measurement.get());
      }
    }
    return measurements;
  }

  private Optional<Measurement> measurement(JsonNode node) {
    node.object(MEASUREMENT);
    Optional<Component> component = component(node);
    Optional<JsonNode> observableField = node.required("observable");
    Optional<Observable> observable =
        component.isPresent() && observableField.isPresent()
            ? observable(observableField.get(), component.get())
            : Optional.empty();
    Optional<JsonNode> readingField = node.required("reading");
    Optional<String> instrument = instrument(node);
    String note = node.text("note").orElse("");
    Measurement.Stage stage = stage(node);
    if (observable.isEmpty()) {
      return Optional.empty();
    }
    Optional<Instrument> known =
        instrument.isPresent() ? known(instrument.get()) : Optional.empty();
    if (known.isPresent()) {
      EntryRules.function(known.get(), observable.get(), node.optional("instrument").orElseThrow());
    }
    List<Reading> readings =
        readingField.isPresent()
            ? readings(readingField.get(), observable.get(), known)
            : List.of();
    Conditions conditions = conditions(node, observable.get());
    if (readings.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          new Measurement(
              component.get().id(),
              observable.get().id(),
              readings,
              conditions,
              instrument,
              note,
              stage));
    } catch (IllegalArgumentException refused) {
      return node.refuse(refused);
    }
  }

  private static Measurement.Stage stage(JsonNode node) {
    return node.optional("stage")
        .flatMap(told -> told.word(STAGES.keySet(), "stage"))
        .map(STAGES::get)
        .orElse(Measurement.Stage.AS_FOUND);
  }

  private Optional<Component> component(JsonNode node) {
    Optional<JsonNode> field = node.required("of");
    Optional<String> id = field.isPresent() ? field.get().text() : Optional.empty();
    return id.isPresent()
        ? EntryRules.component(id.get(), appliance, field.get())
        : Optional.empty();
  }

  private Optional<Observable> observable(JsonNode field, Component component) {
    Optional<String> word = field.text();
    Optional<Symptom> symptom =
        word.isPresent() ? VersionOne.symptom(component.kind(), word.get()) : Optional.empty();
    if (symptom.isPresent()) {
      return moved(field, component.kind(), word.get(), symptom.get());
    }
    ComponentKind kind = vocabulary.kind(component.kind()).orElseThrow();
    return word.isPresent() ? EntryRules.observable(word.get(), kind, field) : Optional.empty();
  }

  /** What is a symptom of the whole machine now, and only version 1 tells on a component. */
  private Optional<Observable> moved(JsonNode field, String kind, String word, Symptom symptom) {
    if (versionOne) {
      return VersionOne.observable(kind, word);
    }
    field.problem(
        "'%s' of %s is a symptom of the whole machine"
            .formatted(word, QuantityFormat.withArticle(kind)),
        "write '" + symptom.id() + "' under 'symptoms' instead of this measurement");
    return Optional.empty();
  }

  /** An instrument of the job or the shop, or one of the library. */
  private Optional<String> instrument(JsonNode node) {
    Optional<String> word = node.text("instrument");
    return word.isPresent()
        ? EntryRules.instrument(word.get(), instruments, node.optional("instrument").orElseThrow())
        : word;
  }

  private Optional<Instrument> described(String id) {
    for (Instrument instrument : instruments) {
      if (instrument.id().equals(id)) {
        return Optional.of(instrument);
      }
    }
    return Optional.empty();
  }

  /** An instrument all functions of which are known. */
  private Optional<Instrument> known(String id) {
    Optional<Instrument> own = described(id);
    Optional<Instrument> instrument = own.isPresent() ? own : InstrumentLibrary.find(id);
    boolean all = instrument.isPresent() && (instrument.get().typical().isPresent() || sound);
    return all ? instrument : Optional.empty();
  }

  private static List<Reading> readings(
      JsonNode field, Observable observable, Optional<Instrument> instrument) {
    List<JsonNode> items = field.isArray() ? field.items() : List.of(field);
    List<Reading> readings = new ArrayList<>();
    for (JsonNode item : items) {
      Optional<Reading> reading = reading(item, observable);
      if (reading.isPresent()) {
        readings.add(reading.get());
        if (instrument.isPresent()) {
          EntryRules.range(instrument.get(), reading.get(), observable, item);
        }
      }
    }
    if (items.isEmpty()) {
      field.problem("is empty", "give one reading or more");
    }
    return readings.size() < items.size() ? List.of() : readings;
  }

  private static Optional<Reading> reading(JsonNode item, Observable observable) {
    Optional<String> text = item.textOrBoolean();
    try {
      return text.isPresent()
          ? Optional.of(ReadingParser.parse(text.get(), observable))
          : Optional.empty();
    } catch (IllegalArgumentException refused) {
      return item.refuse(refused);
    }
  }

  private static Conditions conditions(JsonNode node, Observable observable) {
    Optional<JsonNode> at = node.optional("at");
    if (at.isEmpty()) {
      return Conditions.NONE;
    }
    return new Conditions(QuantityFields.read(at, observable.conditions()));
  }
}

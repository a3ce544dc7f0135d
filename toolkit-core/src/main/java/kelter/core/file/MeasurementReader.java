package kelter.core.file;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kelter.core.file.json.JsonNode;
import kelter.core.instrument.InstrumentLibrary;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.job.Instrument;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import kelter.core.job.ReadingParser;
import kelter.core.quantity.Dimension;
import kelter.core.quantity.QuantityFormat;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Vocabulary;

/** Reads the measurements of a job. */
final class MeasurementReader {

  static final Set<String> MEASUREMENT =
      JsonNode.names("of", "observable", "reading", "at", "instrument", "note");

  private static final Dimension SECOND = Dimension.of("s");

  private final Vocabulary vocabulary;
  private final Appliance appliance;
  private final List<Instrument> instruments;
  private final boolean sound;

  /**
   * A reader.
   *
   * @param instruments those of the job, then those of the shop and of the modules
   * @param sound whether they were read without a mistake, so that all their functions are known
   */
  MeasurementReader(
      Vocabulary vocabulary, Appliance appliance, List<Instrument> instruments, boolean sound) {
    this.sound = sound;
    this.vocabulary = vocabulary;
    this.appliance = appliance;
    this.instruments = instruments;
  }

  List<Measurement> measurements(JsonNode root) {
    Set<String> components = new LinkedHashSet<>();
    for (Component component : appliance.components()) {
      components.add(component.id());
    }
    List<Measurement> measurements = new ArrayList<>();
    for (JsonNode node : root.items("measurements")) {
      Optional<Measurement> measurement = measurement(node, components);
      if (measurement.isPresent()) {
        measurements.add(measurement.get());
      }
    }
    return measurements;
  }

  private Optional<Measurement> measurement(JsonNode node, Set<String> components) {
    node.object(MEASUREMENT);
    Optional<Component> component = component(node, components);
    Optional<JsonNode> observableField = node.required("observable");
    Optional<Observable> observable =
        component.isPresent() && observableField.isPresent()
            ? observable(observableField.get(), component.get())
            : Optional.empty();
    Optional<JsonNode> readingField = node.required("reading");
    Optional<String> instrument = instrument(node);
    String note = node.text("note").orElse("");
    if (observable.isEmpty()) {
      return Optional.empty();
    }
    if (instrument.isPresent()) {
      requireFunction(node, instrument.get(), observable.get());
    }
    List<Reading> readings =
        readingField.isPresent() ? readings(readingField.get(), observable.get()) : List.of();
    Conditions conditions = conditions(node, observable.get());
    if (readings.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          new Measurement(
              component.get().id(), observable.get().id(), readings, conditions, instrument, note));
    } catch (IllegalArgumentException refused) {
      return node.refuse(refused);
    }
  }

  private Optional<Component> component(JsonNode node, Set<String> components) {
    Optional<JsonNode> field = node.required("of");
    Optional<String> id =
        field.isPresent()
            ? field.get().word(components, "component of this appliance")
            : Optional.empty();
    return id.isPresent() ? appliance.component(id.get()) : Optional.empty();
  }

  /** An instrument of the job, or one of the library; those are told where neither is meant. */
  private Optional<String> instrument(JsonNode node) {
    Optional<String> word = node.text("instrument");
    if (word.isEmpty() || described(word.get()).isPresent()) {
      return word;
    }
    Set<String> known = new LinkedHashSet<>();
    for (Instrument instrument : instruments) {
      known.add(instrument.id());
    }
    known.addAll(InstrumentLibrary.ids());
    return node.optional("instrument")
        .orElseThrow()
        .word(known, "instrument of this job or of the library");
  }

  private Optional<Instrument> described(String id) {
    for (Instrument instrument : instruments) {
      if (instrument.id().equals(id)) {
        return Optional.of(instrument);
      }
    }
    return Optional.empty();
  }

  /**
   * Notes an instrument that cannot have shown such a reading. One of which no function is stated
   * may have shown anything, and one that measures a quantity may have shown its change in time, as
   * a thermometer does a rate of heating.
   */
  private void requireFunction(JsonNode node, String id, Observable observable) {
    Optional<Instrument> own = described(id);
    Optional<Instrument> instrument = own.isPresent() ? own : InstrumentLibrary.find(id);
    if (observable.type() != Observable.Type.QUANTITY
        || instrument.isEmpty()
        || instrument.get().typical().isEmpty() && !sound
        || instrument.get().functions().isEmpty()
        || !instrument.get().functions(observable.kind()).isEmpty()) {
      return;
    }
    Dimension sum = observable.kind().unit().dimension().times(SECOND);
    Set<String> measured = new LinkedHashSet<>();
    for (Instrument.Function function : instrument.get().functions()) {
      if (function.kind().unit().dimension().equals(sum)) {
        return;
      }
      measured.add(function.kind().name());
    }
    node.optional("instrument")
        .orElseThrow()
        .problem(
            "'%s' measures %s, and the reading is %s"
                .formatted(
                    id,
                    String.join(", ", measured),
                    QuantityFormat.withArticle(observable.kind().name())),
            instrument.get().typical().isEmpty()
                ? "name what it was read with, or add the function to the instrument"
                : "name what it was read with");
  }

  private Optional<Observable> observable(JsonNode field, Component component) {
    Set<String> known = new LinkedHashSet<>();
    for (Observable observable : vocabulary.kind(component.kind()).orElseThrow().observables()) {
      known.add(observable.id());
    }
    Optional<String> id =
        field.word(known, "observable of " + QuantityFormat.withArticle(component.kind()));
    return id.isPresent() ? vocabulary.observable(component.kind(), id.get()) : Optional.empty();
  }

  private static List<Reading> readings(JsonNode field, Observable observable) {
    List<JsonNode> items = field.isArray() ? field.items() : List.of(field);
    List<Reading> readings = new ArrayList<>();
    for (JsonNode item : items) {
      Optional<Reading> reading = reading(item, observable);
      if (reading.isPresent()) {
        readings.add(reading.get());
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

package kelter.core.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kelter.core.file.json.JsonNode;
import kelter.core.instrument.InstrumentLibrary;
import kelter.core.job.Appliance;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import kelter.core.job.ReadingParser;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.QuantityParser;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Vocabulary;

/** Reads the measurements of a job. */
final class MeasurementReader {

  static final Set<String> MEASUREMENT =
      JsonNode.names("of", "observable", "reading", "at", "instrument", "note");

  private final Vocabulary vocabulary;
  private final Appliance appliance;
  private final Set<String> instruments;

  MeasurementReader(Vocabulary vocabulary, Appliance appliance, Set<String> instruments) {
    this.vocabulary = vocabulary;
    this.appliance = appliance;
    this.instruments = instruments;
  }

  List<Measurement> measurements(JsonNode root) {
    List<Measurement> measurements = new ArrayList<>();
    for (JsonNode node : root.optional("measurements").map(JsonNode::items).orElse(List.of())) {
      measurement(node).ifPresent(measurements::add);
    }
    return measurements;
  }

  private Optional<Measurement> measurement(JsonNode node) {
    node.object(MEASUREMENT);
    Set<String> components = new LinkedHashSet<>();
    appliance.components().forEach(component -> components.add(component.id()));
    Optional<Component> component =
        node.required("of")
            .flatMap(field -> field.word(components, "component of this appliance"))
            .flatMap(appliance::component);
    Optional<JsonNode> observableField = node.required("observable");
    Optional<Observable> observable =
        component.flatMap(of -> observableField.flatMap(field -> observable(field, of)));
    Optional<JsonNode> readingField = node.required("reading");
    Optional<String> instrument = node.optional("instrument").flatMap(this::instrument);
    String note = node.optional("note").flatMap(JsonNode::text).orElse("");
    if (observable.isEmpty()) {
      return Optional.empty();
    }
    List<Reading> readings =
        readingField.map(field -> readings(field, observable.get())).orElse(List.of());
    Conditions conditions = conditions(node, observable.get());
    if (readings.isEmpty()) {
      return Optional.empty();
    }
    return node.make(
        () ->
            new Measurement(
                component.get().id(),
                observable.get().id(),
                readings,
                conditions,
                instrument,
                note));
  }

  /** An instrument of the job, or one of the library; those are told where neither is meant. */
  private Optional<String> instrument(JsonNode field) {
    Optional<String> word = field.text();
    if (word.isEmpty() || instruments.contains(word.get())) {
      return word;
    }
    Set<String> known = new LinkedHashSet<>(instruments);
    known.addAll(InstrumentLibrary.ids());
    return field.word(known, "instrument of this job or of the library");
  }

  private Optional<Observable> observable(JsonNode field, Component component) {
    Set<String> known = new LinkedHashSet<>();
    vocabulary
        .kind(component.kind())
        .ifPresent(kind -> kind.observables().forEach(each -> known.add(each.id())));
    return field
        .word(known, "observable of a " + component.kind())
        .flatMap(id -> vocabulary.observable(component.kind(), id));
  }

  private static List<Reading> readings(JsonNode field, Observable observable) {
    List<JsonNode> items = field.isArray() ? field.items() : List.of(field);
    List<Reading> readings = new ArrayList<>();
    for (JsonNode item : items) {
      item.textOrBoolean()
          .flatMap(text -> item.make(() -> ReadingParser.parse(text, observable)))
          .ifPresent(readings::add);
    }
    if (items.isEmpty()) {
      field.problem("is empty", "give one reading or more");
    }
    return readings.size() < items.size() ? List.of() : readings;
  }

  private static Conditions conditions(JsonNode node, Observable observable) {
    Map<String, QuantityKind> known = new LinkedHashMap<>();
    observable.conditions().forEach(condition -> known.put(condition.id(), condition.kind()));
    return node.optional("at")
        .map(
            at ->
                new Conditions(
                    at.each(
                        known,
                        (field, kind) -> field.read(text -> QuantityParser.parse(text, kind)))))
        .orElse(Conditions.NONE);
  }
}

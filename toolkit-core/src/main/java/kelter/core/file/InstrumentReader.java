package kelter.core.file;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import kelter.core.file.json.JsonNode;
import kelter.core.job.Instrument;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.QuantityParser;
import kelter.core.quantity.Scale;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Ids;

/** Reads instruments, of a job or of a shop. */
final class InstrumentReader {

  static final Set<String> INSTRUMENT = JsonNode.names("id", "title", "functions");
  static final Set<String> FUNCTION = JsonNode.names("measures", "accuracy", "resolution", "range");

  private InstrumentReader() {}

  static List<Instrument> instruments(JsonNode root) {
    return each(root, INSTRUMENT, InstrumentReader::instrument);
  }

  /** What is made of the instruments of a file, each of which has an id of its own. */
  static <T> List<T> each(
      JsonNode root, Set<String> members, Function<JsonNode, Optional<T>> reader) {
    List<T> made = new ArrayList<>();
    Set<String> ids = new LinkedHashSet<>();
    for (JsonNode node : root.optional("instruments").map(JsonNode::items).orElse(List.of())) {
      node.object(members);
      Optional<String> id = node.required("id").flatMap(field -> field.read(Ids::require));
      Optional<T> one = reader.apply(node);
      if (id.isPresent() && !ids.add(id.get())) {
        node.problem("instrument '" + id.get() + "' occurs twice", "give each its own id");
      } else {
        one.ifPresent(made::add);
      }
    }
    return made;
  }

  /** An instrument whose members were checked already. */
  static Optional<Instrument> instrument(JsonNode node) {
    Optional<String> id = node.optional("id").flatMap(JsonNode::text).filter(Ids::isId);
    String title = node.optional("title").flatMap(JsonNode::text).orElse("");
    List<Instrument.Function> functions = functions(node);
    return id.map(known -> new Instrument(known, title, functions));
  }

  private static List<Instrument.Function> functions(JsonNode instrument) {
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

  /** The size of a count is a difference, also of a thermometer. */
  private static double difference(String text, QuantityKind kind) {
    boolean temperature = kind.scale() == Scale.TEMPERATURE;
    return QuantityParser.parse(text, temperature ? QuantityKind.TEMPERATURE_DIFFERENCE : kind)
        .si();
  }
}

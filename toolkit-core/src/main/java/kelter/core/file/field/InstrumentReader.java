package kelter.core.file.field;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import kelter.core.file.json.JsonNode;
import kelter.core.job.Instrument;
import kelter.core.job.rule.EntryRules;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.Scale;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Ids;

/** Reads instruments, of a job or of a shop. */
public final class InstrumentReader {

  public static final Set<String> INSTRUMENT = JsonNode.names("id", "title", "functions");
  public static final Set<String> FUNCTION =
      JsonNode.names("measures", "accuracy", "resolution", "range");

  private InstrumentReader() {}

  public static List<Instrument> instruments(JsonNode root) {
    return each(root, INSTRUMENT, InstrumentReader::instrument);
  }

  /** What is made of the instruments of a file, each of which has an id of its own. */
  public static <T> List<T> each(
      JsonNode root, Set<String> members, Function<JsonNode, Optional<T>> reader) {
    List<T> made = new ArrayList<>();
    Set<String> ids = new LinkedHashSet<>();
    for (JsonNode node : root.items("instruments")) {
      node.object(members);
      Optional<String> id = IdField.required(node, "id");
      Optional<T> one = reader.apply(node);
      boolean first = id.isEmpty() || EntryRules.once(ids, "instrument", id.get(), node);
      if (first && one.isPresent()) {
        made.add(one.get());
      }
    }
    return made;
  }

  /** An instrument whose members were checked already. */
  public static Optional<Instrument> instrument(JsonNode node) {
    Optional<String> id = node.text("id");
    String title = node.text("title").orElse("");
    List<Instrument.Function> functions = functions(node);
    return id.isPresent() && Ids.isId(id.get())
        ? Optional.of(new Instrument(id.get(), title, functions))
        : Optional.empty();
  }

  private static List<Instrument.Function> functions(JsonNode instrument) {
    List<Instrument.Function> functions = new ArrayList<>();
    for (JsonNode node : instrument.items("functions")) {
      node.object(FUNCTION);
      Optional<QuantityKind> kind = measured(node);
      Optional<Instrument.Function> function =
          kind.isPresent() ? function(node, kind.get()) : Optional.empty();
      if (function.isPresent()) {
        functions.add(function.get());
      }
    }
    return functions;
  }

  private static Optional<QuantityKind> measured(JsonNode function) {
    Optional<JsonNode> field = function.required("measures");
    Optional<String> word =
        field.isPresent()
            ? field.get().word(Instrument.MEASURES.keySet(), "thing to measure")
            : Optional.empty();
    return word.isPresent() ? Optional.of(Instrument.MEASURES.get(word.get())) : Optional.empty();
  }

  private static Optional<Instrument.Function> function(JsonNode node, QuantityKind kind) {
    Optional<Quantity> resolution = node.quantity("resolution", count(kind));
    Optional<Quantity> range = node.quantity("range", kind);
    Optional<JsonNode> field = node.required("accuracy");
    Optional<String> text = field.isPresent() ? field.get().text() : Optional.empty();
    if (text.isEmpty()) {
      return Optional.empty();
    }
    double count = resolution.isPresent() ? resolution.get().si() : Double.NaN;
    Accuracy accuracy;
    try {
      accuracy = Accuracy.parse(text.get(), kind, count);
    } catch (IllegalArgumentException refused) {
      return field.get().refuse(refused);
    }
    try {
      return Optional.of(
          new Instrument.Function(
              kind,
              accuracy,
              resolution.isPresent() ? count : 0,
              range.isPresent() ? range.get().si() : Double.POSITIVE_INFINITY));
    } catch (IllegalArgumentException refused) {
      return node.refuse(refused);
    }
  }

  /** The size of a count is a difference, also of a thermometer. */
  private static QuantityKind count(QuantityKind kind) {
    return kind.scale() == Scale.TEMPERATURE ? QuantityKind.TEMPERATURE_DIFFERENCE : kind;
  }
}

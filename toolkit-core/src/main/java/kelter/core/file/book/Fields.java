package kelter.core.file.book;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import kelter.core.file.json.JsonNode;

/** Reads members of an object, each checked as it is read. */
final class Fields {

  private final JsonNode node;

  /** The members of a place, of which these names are known. */
  Fields(JsonNode node, Set<String> known) {
    this.node = node;
    node.object(known);
  }

  String text(String name) {
    return node.text(name).orElse("");
  }

  Optional<String> required(String name) {
    return node.required(name).flatMap(JsonNode::text);
  }

  /** A number that may be missing. */
  OptionalDouble number(String name, double low, double high) {
    Optional<JsonNode> member = node.optional(name);
    return member.isPresent() ? number(member.get(), low, high) : OptionalDouble.empty();
  }

  /** A number that must be there; 0 where it is not, which is told. */
  double figure(String name, double low, double high) {
    Optional<JsonNode> member = node.required(name);
    return member.isPresent() ? number(member.get(), low, high).orElse(low) : low;
  }

  int count(String name) {
    return node.required(name).flatMap(each -> each.count(Integer.MAX_VALUE)).orElse(0);
  }

  private static OptionalDouble number(JsonNode member, double low, double high) {
    OptionalDouble value = member.number();
    if (value.isPresent() && !(value.getAsDouble() >= low && value.getAsDouble() <= high)) {
      member.problem(
          "is " + value.getAsDouble(), "%s to %s is allowed".formatted(plain(low), plain(high)));
      return OptionalDouble.empty();
    }
    return value;
  }

  private static String plain(double value) {
    return value == Math.rint(value) ? "%.0f".formatted(value) : Double.toString(value);
  }

  /** What stands by name, each read by itself; what cannot be read is left out and told. */
  <T> Map<String, T> each(String name, Function<JsonNode, T> reader) {
    Map<String, T> read = new LinkedHashMap<>();
    Optional<JsonNode> member = node.optional(name);
    if (member.isPresent()) {
      member.get().members().forEach((key, value) -> read.put(key, reader.apply(value)));
    }
    return read;
  }

  JsonNode node() {
    return node;
  }
}

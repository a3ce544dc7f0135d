package kelter.core.file;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import kelter.core.problem.Problem;
import kelter.core.quantity.Nearest;

/**
 * A place in a JSON text, from which members are read; every mistake is noted with its JSON pointer
 * (RFC 6901) and reading goes on.
 */
final class JsonNode {

  private final Json value;
  private final String pointer;
  private final List<Problem> problems;

  JsonNode(Json value, String pointer, List<Problem> problems) {
    this.value = value;
    this.pointer = pointer;
    this.problems = problems;
  }

  /** Names of members in the order in which they are told. */
  static Set<String> names(String... names) {
    return Collections.unmodifiableSet(new LinkedHashSet<>(List.of(names)));
  }

  void problem(String what, String remedy) {
    problems.add(new Problem(pointer, what, remedy));
  }

  /** The members of this object whose names do not start with x-, all of them checked. */
  Map<String, Json> object(Set<String> allowed) {
    Map<String, Json> members = object();
    for (String name : members.keySet()) {
      if (!name.startsWith("x-") && !allowed.contains(name)) {
        child(name).problem("is not known", suggestion(name, allowed));
      }
    }
    return members;
  }

  private static String suggestion(String name, Set<String> allowed) {
    return Nearest.of(name, allowed)
        .map(near -> "did you mean '" + near + "'?")
        .orElse("known here: " + String.join(", ", allowed) + "; your own start with x-");
  }

  /** The members of this object, or none if it is something else. */
  Map<String, Json> object() {
    if (value instanceof Json.Obj object) {
      return object.members();
    }
    problem("is " + value.kind(), "an object is expected");
    return Map.of();
  }

  /** Each member of this object that a vocabulary knows, made into something. */
  <K, T> Map<String, T> each(Map<String, K> known, BiFunction<JsonNode, K, Optional<T>> reader) {
    Map<String, T> made = new LinkedHashMap<>();
    for (String name : object(known.keySet()).keySet()) {
      K meaning = known.get(name);
      if (meaning != null) {
        reader.apply(child(name), meaning).ifPresent(value -> made.put(name, value));
      }
    }
    return made;
  }

  List<JsonNode> items() {
    if (!(value instanceof Json.Arr array)) {
      problem("is " + value.kind(), "an array is expected");
      return List.of();
    }
    List<JsonNode> nodes = new ArrayList<>();
    for (int i = 0; i < array.items().size(); i++) {
      nodes.add(new JsonNode(array.items().get(i), pointer + "/" + i, problems));
    }
    return nodes;
  }

  boolean isArray() {
    return value instanceof Json.Arr;
  }

  private JsonNode child(String name) {
    Json member = ((Json.Obj) value).members().get(name);
    return new JsonNode(member, pointer + "/" + JsonText.escape(name), problems);
  }

  /** A member that may be missing; null counts as missing. */
  Optional<JsonNode> optional(String name) {
    if (!(value instanceof Json.Obj object)) {
      return Optional.empty();
    }
    Json member = object.members().get(name);
    return member == null || member instanceof Json.Null
        ? Optional.empty()
        : Optional.of(child(name));
  }

  /** A member that must be there. */
  Optional<JsonNode> required(String name) {
    Optional<JsonNode> member = optional(name);
    if (member.isEmpty() && value instanceof Json.Obj) {
      problem("has no '" + name + "'", "it is needed");
    }
    return member;
  }

  /** The text of a string. */
  Optional<String> text() {
    if (value instanceof Json.Str string) {
      return Optional.of(string.text());
    }
    problem("is " + value.kind(), "a text in quotes is expected");
    return Optional.empty();
  }

  /** The text of a string, or of true and false as yes and no. */
  Optional<String> textOrBoolean() {
    if (value instanceof Json.Bool bool) {
      return Optional.of(bool.value() ? "yes" : "no");
    }
    return text();
  }

  /** The text made into something; a refusal is noted here. */
  <T> Optional<T> read(Function<String, T> reader) {
    return text().flatMap(text -> make(() -> reader.apply(text)));
  }

  /** Makes something; a refusal is noted here. */
  <T> Optional<T> make(Supplier<T> maker) {
    try {
      return Optional.of(maker.get());
    } catch (IllegalArgumentException refused) {
      problem(refused.getMessage(), "");
      return Optional.empty();
    }
  }

  /** The text of a string that is one of some words. */
  Optional<String> word(Set<String> allowed, String what) {
    Optional<String> text = text();
    if (text.isPresent() && !allowed.contains(text.get())) {
      String remedy =
          Nearest.of(text.get(), allowed)
              .map(near -> "did you mean '" + near + "'?")
              .orElse("known: " + String.join(", ", allowed));
      problem("'" + text.get() + "' is not a known " + what, remedy);
      return Optional.empty();
    }
    return text;
  }
}

package kelter.core.file.json;

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
public final class JsonNode {

  private final Json value;
  private final String pointer;
  private final List<Problem> problems;

  /**
   * A place in a text.
   *
   * @param value what stands there
   * @param pointer where it is, a JSON pointer
   * @param problems where mistakes are noted
   */
  public JsonNode(Json value, String pointer, List<Problem> problems) {
    this.value = value;
    this.pointer = pointer;
    this.problems = problems;
  }

  /**
   * Names of members in the order in which they are told.
   *
   * @param names the names
   * @return the same names
   */
  public static Set<String> names(String... names) {
    return Collections.unmodifiableSet(new LinkedHashSet<>(List.of(names)));
  }

  /**
   * Notes a mistake here.
   *
   * @param what what is wrong
   * @param remedy what would be right, may be empty
   */
  public void problem(String what, String remedy) {
    problems.add(new Problem(pointer, what, remedy));
  }

  /**
   * The members of this object, each checked that it is known or starts with x-.
   *
   * @param allowed the names that are known
   * @return all members; none if this is not an object
   */
  public Map<String, Json> object(Set<String> allowed) {
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

  /**
   * The members of this object, whatever their names.
   *
   * @return all members; none if this is not an object
   */
  public Map<String, Json> object() {
    if (value instanceof Json.Obj object) {
      return object.members();
    }
    problem("is " + value.kind(), "an object is expected");
    return Map.of();
  }

  /**
   * Each member of this object that a vocabulary knows, made into something.
   *
   * @param known the names that are known, with what they mean
   * @param reader makes a member into something, or notes why not
   * @param <K> what a name means
   * @param <T> what a member becomes
   * @return what was made, by name
   */
  public <K, T> Map<String, T> each(
      Map<String, K> known, BiFunction<JsonNode, K, Optional<T>> reader) {
    Map<String, T> made = new LinkedHashMap<>();
    for (String name : object(known.keySet()).keySet()) {
      K meaning = known.get(name);
      if (meaning != null) {
        reader.apply(child(name), meaning).ifPresent(value -> made.put(name, value));
      }
    }
    return made;
  }

  /**
   * The items of this array.
   *
   * @return the items; none if this is not an array
   */
  public List<JsonNode> items() {
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

  /**
   * Whether this is an array.
   *
   * @return true if it is
   */
  public boolean isArray() {
    return value instanceof Json.Arr;
  }

  private JsonNode child(String name) {
    Json member = ((Json.Obj) value).members().get(name);
    return new JsonNode(member, pointer + "/" + JsonText.escape(name), problems);
  }

  /**
   * A member that may be missing; null counts as missing.
   *
   * @param name its name
   * @return the member
   */
  public Optional<JsonNode> optional(String name) {
    if (!(value instanceof Json.Obj object)) {
      return Optional.empty();
    }
    Json member = object.members().get(name);
    return member == null || member instanceof Json.Null
        ? Optional.empty()
        : Optional.of(child(name));
  }

  /**
   * A member that must be there.
   *
   * @param name its name
   * @return the member
   */
  public Optional<JsonNode> required(String name) {
    Optional<JsonNode> member = optional(name);
    if (member.isEmpty() && value instanceof Json.Obj) {
      problem("has no '" + name + "'", "it is needed");
    }
    return member;
  }

  /**
   * The text of a string.
   *
   * @return the text; empty if this is something else
   */
  public Optional<String> text() {
    if (value instanceof Json.Str string) {
      return Optional.of(string.text());
    }
    problem("is " + value.kind(), "a text in quotes is expected");
    return Optional.empty();
  }

  /**
   * The text of a string, or of true and false as yes and no.
   *
   * @return the text; empty if this is something else
   */
  public Optional<String> textOrBoolean() {
    if (value instanceof Json.Bool bool) {
      return Optional.of(bool.value() ? "yes" : "no");
    }
    return text();
  }

  /**
   * The text of a string made into something; a refusal is noted here.
   *
   * @param reader makes it, or throws IllegalArgumentException
   * @param <T> what it becomes
   * @return what was made
   */
  public <T> Optional<T> read(Function<String, T> reader) {
    return text().flatMap(text -> make(() -> reader.apply(text)));
  }

  /**
   * Makes something; a refusal is noted here.
   *
   * @param maker makes it, or throws IllegalArgumentException
   * @param <T> what is made
   * @return what was made
   */
  public <T> Optional<T> make(Supplier<T> maker) {
    try {
      return Optional.of(maker.get());
    } catch (IllegalArgumentException refused) {
      problem(refused.getMessage(), "");
      return Optional.empty();
    }
  }

  /**
   * The text of a string that is one of some words.
   *
   * @param allowed the words
   * @param what what they are, for the message
   * @return the word
   */
  public Optional<String> word(Set<String> allowed, String what) {
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

  /**
   * The value of true or false.
   *
   * @return the value; empty if this is something else
   */
  public Optional<Boolean> yesNo() {
    if (value instanceof Json.Bool bool) {
      return Optional.of(bool.value());
    }
    problem("is " + value.kind(), "true or false is expected");
    return Optional.empty();
  }
}

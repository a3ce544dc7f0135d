package kelter.core.file.json;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import kelter.core.problem.InputException;
import kelter.core.problem.Mistake;
import kelter.core.problem.Place;
import kelter.core.problem.Problem;
import kelter.core.quantity.Expected;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.QuantityParser;
import kelter.core.vocabulary.CalendarDate;
import kelter.core.vocabulary.Possible;

/**
 * A place in a JSON text, from which members are read; every mistake is noted with its JSON pointer
 * (RFC 6901) and reading goes on.
 */
public final class JsonNode implements Place {

  /** So many mistakes are noted; nobody corrects more before the next try. */
  private static final int MOST = 1000;

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
   * Notes a mistake.
   *
   * @throws InputException with all mistakes so far, if there are so many that reading stops here
   */
  @Override
  public void problem(Mistake mistake, String what, String remedy) {
    note(problems, new Problem(mistake, pointer, what, remedy));
  }

  /** Notes a mistake, and ends reading once there are so many. */
  static void note(List<Problem> problems, Problem found) {
    problems.add(found);
    if (problems.size() == MOST) {
      problems.add(new Problem("", "there may be more; reading stopped here", ""));
      throw new InputException(problems);
    }
  }

  /**
   * The members of this object, each checked that it is known and says something, or starts with
   * x-.
   *
   * @param allowed the names that are known
   * @return all members; none if this is not an object
   */
  public Map<String, Json> object(Set<String> allowed) {
    Map<String, Json> members = object();
    for (Map.Entry<String, Json> member : members.entrySet()) {
      String name = member.getKey();
      if (!Place.mayBeNamed(name, allowed)) {
        child(name).unknownName(name, allowed);
      } else if (member.getValue() instanceof Json.Null && allowed.contains(name)) {
        child(name).problem("is null", "write what it is, or leave it out");
      }
    }
    return members;
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
    problem(Mistake.WRONG_TYPE, "is " + value.kind(), "an object is expected");
    return Map.of();
  }

  /**
   * The members of this object as places, whatever their names.
   *
   * @return all members by name; none if this is not an object
   */
  public Map<String, JsonNode> members() {
    Map<String, JsonNode> nodes = new LinkedHashMap<>();
    for (String name : object().keySet()) {
      nodes.put(name, child(name));
    }
    return nodes;
  }

  /**
   * The members of this object as places, each checked that it is known or starts with x-.
   *
   * @param known the names that are known
   * @return the known members by name; none if this is not an object
   */
  public Map<String, JsonNode> members(Set<String> known) {
    Map<String, JsonNode> nodes = new LinkedHashMap<>();
    for (String name : object(known).keySet()) {
      if (known.contains(name)) {
        nodes.put(name, child(name));
      }
    }
    return nodes;
  }

  /**
   * The items of this array.
   *
   * @return the items; none if this is not an array
   */
  public List<JsonNode> items() {
    if (!(value instanceof Json.Arr array)) {
      problem(Mistake.WRONG_TYPE, "is " + value.kind(), "an array is expected");
      return List.of();
    }
    List<JsonNode> nodes = new ArrayList<>();
    for (int i = 0; i < array.items().size(); i++) {
      nodes.add(new JsonNode(array.items().get(i), pointer + "/" + i, problems));
    }
    return nodes;
  }

  /**
   * The items of a member that may be missing.
   *
   * @param name its name
   * @return the items; none if it is missing or not an array
   */
  public List<JsonNode> items(String name) {
    Optional<JsonNode> member = optional(name);
    return member.isPresent() ? member.get().items() : List.of();
  }

  /**
   * Whether this is an array.
   *
   * @return true if it is
   */
  public boolean isArray() {
    return value instanceof Json.Arr;
  }

  /**
   * Whether this is an object.
   *
   * @return true if it is
   */
  public boolean isObject() {
    return value instanceof Json.Obj;
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
   * A member that must be there; one that is null is told by {@link #object(Set)}.
   *
   * @param name its name
   * @return the member
   */
  public Optional<JsonNode> required(String name) {
    Optional<JsonNode> member = optional(name);
    if (value instanceof Json.Obj object && !object.members().containsKey(name)) {
      problem(Mistake.MISSING, "has no '" + name + "'", "it is needed");
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
    problem(Mistake.WRONG_TYPE, "is " + value.kind(), "a text in quotes is expected");
    return Optional.empty();
  }

  /**
   * The text of a member that may be missing.
   *
   * @param name its name
   * @return the text; empty if it is missing or something else
   */
  public Optional<String> text(String name) {
    Optional<JsonNode> member = optional(name);
    return member.isPresent() ? member.get().text() : Optional.empty();
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
    Optional<String> text = text();
    try {
      return text.isPresent() ? Optional.of(reader.apply(text.get())) : Optional.empty();
    } catch (IllegalArgumentException refused) {
      return refuse(refused);
    }
  }

  /**
   * The quantity that a string tells; one that cannot be read is noted here.
   *
   * @param kind what is expected
   * @return the quantity
   */
  public Optional<Quantity> quantity(QuantityKind kind) {
    Expected any = Expected.of(kind);
    Optional<Quantity> quantity = quantity(any);
    try {
      return quantity.isPresent() ? Optional.of(any.require(quantity.get())) : quantity;
    } catch (IllegalArgumentException refused) {
      return refuse(refused);
    }
  }

  /**
   * The quantity that a string tells, whatever its size; one that cannot be read is noted here.
   *
   * @param expected what settles how it is read
   * @return the quantity
   */
  public Optional<Quantity> quantity(Expected expected) {
    Optional<String> text = text();
    try {
      return text.isPresent()
          ? Optional.of(QuantityParser.parse(text.get(), expected))
          : Optional.empty();
    } catch (IllegalArgumentException refused) {
      return refuse(refused);
    }
  }

  /**
   * The quantity that a member tells, which may be missing.
   *
   * @param name its name
   * @param kind what is expected
   * @return the quantity; empty if it is missing or cannot be read
   */
  public Optional<Quantity> quantity(String name, QuantityKind kind) {
    Optional<JsonNode> member = optional(name);
    return member.isPresent() ? member.get().quantity(kind) : Optional.empty();
  }

  /**
   * The quantity that a member tells, which may be missing, but not negative.
   *
   * @param name its name
   * @param kind what is expected
   * @return the quantity; empty if it is missing, cannot be read or is below zero
   */
  public Optional<Quantity> notNegative(String name, QuantityKind kind) {
    Optional<Quantity> quantity = quantity(name, kind);
    try {
      return quantity.isPresent()
          ? Optional.of(Possible.requireNotNegative(quantity.get(), text(name).orElseThrow()))
          : quantity;
    } catch (IllegalArgumentException refused) {
      return child(name).refuse(refused);
    }
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
      return refuse(refused);
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
    return text.isPresent() && isKnown(text.get(), allowed, what) ? text : Optional.empty();
  }

  /**
   * The date that a member tells, which may be missing.
   *
   * @param name its name
   * @return the date; empty if it is missing or not a date as ISO 8601 writes one, yyyy-mm-dd
   */
  public Optional<LocalDate> date(String name) {
    Optional<JsonNode> member = optional(name);
    Optional<String> text = member.isPresent() ? member.get().text() : Optional.empty();
    try {
      return text.isPresent() ? Optional.of(CalendarDate.require(text.get())) : Optional.empty();
    } catch (IllegalArgumentException refused) {
      return member.get().refuse(refused);
    }
  }

  /**
   * The value of a member that is true or false, which may be missing.
   *
   * @param name its name
   * @return the value; empty if it is missing or something else
   */
  public Optional<Boolean> yesNo(String name) {
    Optional<JsonNode> member = optional(name);
    return member.isPresent() ? member.get().yesNo() : Optional.empty();
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
    problem(Mistake.WRONG_TYPE, "is " + value.kind(), "true or false is expected");
    return Optional.empty();
  }

  /**
   * The value of a number.
   *
   * @return the value; empty if this is something else or too large
   */
  public OptionalDouble number() {
    if (value instanceof Json.Num number
        && Double.isFinite(Double.parseDouble(number.spelling()))) {
      return OptionalDouble.of(Double.parseDouble(number.spelling()));
    }
    problem(Mistake.WRONG_TYPE, "is " + value.kind(), "a number without quotes is expected");
    return OptionalDouble.empty();
  }

  /**
   * The value of a whole number, digits only.
   *
   * @param most the greatest that is allowed
   * @return the value, from 0; empty if this is something else
   */
  public Optional<Integer> count(int most) {
    String digits = value instanceof Json.Num number ? number.spelling() : "";
    boolean counts = digits.matches("[0-9]{1,9}") && Integer.parseInt(digits) <= most;
    if (!counts) {
      problem(
          digits.isEmpty() ? "is " + value.kind() : "is " + digits,
          "a whole number from 0 to " + most + " is expected");
      return Optional.empty();
    }
    return Optional.of(Integer.parseInt(digits));
  }
}

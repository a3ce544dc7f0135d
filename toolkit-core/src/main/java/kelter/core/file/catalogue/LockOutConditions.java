package kelter.core.file.catalogue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import kelter.core.file.field.IdField;
import kelter.core.file.json.JsonNode;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.lockout.table.Beyond;
import kelter.core.safety.lockout.table.Retest;
import kelter.core.safety.lockout.table.Told;
import kelter.core.safety.lockout.table.Until;
import kelter.core.safety.lockout.table.When;
import kelter.core.vocabulary.Phrase;

/**
 * Reads when a row of the lock-out table holds and until when.
 *
 * @param when when it holds
 * @param until what releases it
 */
record LockOutConditions(When when, Until until) {

  static final Set<String> WHEN =
      JsonNode.names(
          "told", "readings", "kinds", "parts", "stated", "among", "with", "supply", "clear");
  static final Set<String> TOLD = JsonNode.names("symptom", "words");
  static final Set<String> READING =
      JsonNode.names(
          "observable",
          "of",
          "finding",
          "above",
          "above-share",
          "below-share",
          "times",
          "grade",
          "yes");
  static final Set<String> UNTIL =
      JsonNode.names("words", "record", "same", "dead", "last", "stage", "never");
  static final Set<String> RETEST = JsonNode.names("observable", "of", "warm");

  private static final When NEVER =
      new When(
          List.of(),
          List.of(),
          Set.of(),
          Set.of(),
          Set.of(),
          Set.of(),
          Set.of(),
          Optional.empty(),
          List.of());
  private static final Until FOR_EVER = new Until("", false, false, List.of(), List.of(), false);

  static LockOutConditions of(JsonNode row) {
    return new LockOutConditions(
        row.required("when").map(LockOutConditions::when).orElse(NEVER),
        row.required("until").map(LockOutConditions::until).orElse(FOR_EVER));
  }

  private static When when(JsonNode node) {
    node.object(WHEN);
    return new When(
        LockOutReader.each(node, "told", LockOutConditions::told),
        LockOutReader.each(node, "readings", LockOutConditions::reading),
        LockOutReader.words(node, "kinds"),
        LockOutReader.words(node, "parts"),
        LockOutReader.words(node, "stated"),
        LockOutReader.words(node, "among"),
        LockOutReader.words(node, "with"),
        LockOutReader.fixed(node),
        LockOutReader.each(node, "clear", LockOutConditions::retest));
  }

  private static Optional<Told> told(JsonNode node) {
    node.object(TOLD);
    Optional<String> symptom = IdField.required(node, "symptom");
    return symptom.flatMap(
        id ->
            node.make(
                () ->
                    new Told(
                        id,
                        LockOutReader.each(node, "words", each -> each.text().map(Phrase::of)))));
  }

  private static Optional<Beyond> reading(JsonNode node) {
    node.object(READING);
    Optional<String> observable = IdField.required(node, "observable");
    Optional<String> times = node.text("times");
    QuantityKind unit = times.isPresent() ? QuantityKind.POWER : QuantityKind.CURRENT;
    Optional<Quantity> above = node.quantity("above", unit);
    boolean finding = node.yesNo("finding").orElse(false);
    boolean yes = node.yesNo("yes").orElse(false);
    OptionalDouble aboveShare = number(node, "above-share");
    OptionalDouble belowShare = number(node, "below-share");
    return observable.flatMap(
        word ->
            node.make(
                () ->
                    new Beyond(
                        word,
                        LockOutReader.words(node, "of"),
                        finding,
                        above.isPresent()
                            ? OptionalDouble.of(above.get().si())
                            : OptionalDouble.empty(),
                        aboveShare,
                        belowShare,
                        times,
                        node.text("grade"),
                        yes)));
  }

  private static OptionalDouble number(JsonNode node, String name) {
    Optional<JsonNode> member = node.optional(name);
    return member.isPresent() ? member.get().number() : OptionalDouble.empty();
  }

  private static Until until(JsonNode node) {
    node.object(UNTIL);
    node.yesNo("never");
    return new Until(
        node.required("words").flatMap(JsonNode::text).orElse(""),
        node.yesNo("record").orElse(false),
        node.yesNo("same").orElse(false),
        LockOutReader.each(node, "dead", LockOutConditions::retest),
        LockOutReader.each(node, "last", LockOutConditions::retest),
        node.text("stage").filter("any"::equals).isPresent());
  }

  static Optional<Retest> retest(JsonNode node) {
    node.object(RETEST);
    Optional<String> observable = IdField.required(node, "observable");
    boolean warm = node.yesNo("warm").orElse(false);
    return observable.flatMap(
        word -> node.make(() -> new Retest(word, LockOutReader.words(node, "of"), warm)));
  }
}

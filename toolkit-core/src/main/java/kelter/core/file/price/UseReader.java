package kelter.core.file.price;

import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import kelter.core.file.json.JsonNode;
import kelter.core.owner.Use;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.QuantityParser;

/** Reads how the machine of a job is used; a figure that cannot be used is told where it stands. */
public final class UseReader {

  /** The members of a use. */
  public static final Set<String> USE =
      JsonNode.names(
          "cycles-per-week",
          "built-for-cycles",
          "energy-per-cycle",
          "water-per-cycle",
          "energy-per-cycle-new",
          "water-per-cycle-new",
          "carbon-of-new",
          "carbon-per-kwh");

  private UseReader() {}

  /**
   * Reads a use.
   *
   * @param node where it stands; mistakes are noted there
   * @return the use, without what cannot be used
   */
  public static Use use(JsonNode node) {
    node.object(USE);
    return new Use(
        number(node, "cycles-per-week", Use::requireCyclesPerWeek),
        number(node, "built-for-cycles", Use::requireBuiltForCycles),
        new Use.Consumption(
            figure(node, "energy-per-cycle", QuantityKind.ENERGY),
            figure(node, "water-per-cycle", QuantityKind.VOLUME)),
        new Use.Consumption(
            figure(node, "energy-per-cycle-new", QuantityKind.ENERGY),
            figure(node, "water-per-cycle-new", QuantityKind.VOLUME)),
        new Use.Carbon(
            figure(node, "carbon-of-new", QuantityKind.MASS),
            figure(node, "carbon-per-kwh", QuantityKind.MASS)));
  }

  private static Optional<Quantity> number(
      JsonNode node, String name, UnaryOperator<Quantity> check) {
    return node.optional(name)
        .flatMap(
            field ->
                field.read(text -> check.apply(QuantityParser.parse(text, QuantityKind.RATIO))));
  }

  private static Optional<Quantity> figure(JsonNode node, String name, QuantityKind kind) {
    return node.optional(name)
        .flatMap(
            field ->
                field.read(
                    text -> {
                      Quantity figure = QuantityParser.parse(text, kind);
                      if (figure.si() < 0) {
                        throw new IllegalArgumentException(
                            "'" + text + "' is negative; it must not be");
                      }
                      return figure;
                    }));
  }
}

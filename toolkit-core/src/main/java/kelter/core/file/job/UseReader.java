package kelter.core.file.job;

import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import kelter.core.file.json.JsonNode;
import kelter.core.owner.Use;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;

/** Reads how the machine of a job is used; a figure that cannot be used is told where it stands. */
final class UseReader {

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
            node.notNegative("energy-per-cycle", QuantityKind.ENERGY),
            node.notNegative("water-per-cycle", QuantityKind.VOLUME)),
        new Use.Consumption(
            node.notNegative("energy-per-cycle-new", QuantityKind.ENERGY),
            node.notNegative("water-per-cycle-new", QuantityKind.VOLUME)),
        new Use.Carbon(
            node.notNegative("carbon-of-new", QuantityKind.MASS),
            node.notNegative("carbon-per-kwh", QuantityKind.MASS)));
  }

  private static Optional<Quantity> number(
      JsonNode node, String name, UnaryOperator<Quantity> check) {
    Optional<Quantity> number = node.quantity(name, QuantityKind.RATIO);
    try {
      return number.map(check);
    } catch (IllegalArgumentException refused) {
      return node.optional(name).orElseThrow().refuse(refused);
    }
  }
}

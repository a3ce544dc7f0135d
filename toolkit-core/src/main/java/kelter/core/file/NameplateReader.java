package kelter.core.file;

import java.util.Optional;
import java.util.Set;
import kelter.core.file.json.JsonNode;
import kelter.core.job.Nameplate;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.QuantityParser;
import kelter.core.safety.ProtectionClass;

/** Reads the nameplate of an appliance or a component. */
final class NameplateReader {

  static final Set<String> NAMEPLATE =
      JsonNode.names("voltage", "frequency", "power", "current", "protection-class");

  private NameplateReader() {}

  /** The nameplate of an appliance or a component, which may have none. */
  static Nameplate of(JsonNode owner) {
    return owner
        .optional("nameplate")
        .flatMap(NameplateReader::nameplate)
        .orElse(Nameplate.UNREADABLE);
  }

  private static Optional<Nameplate> nameplate(JsonNode node) {
    node.object(NAMEPLATE);
    Optional<Quantity> voltage = figure(node, "voltage", QuantityKind.VOLTAGE);
    Optional<Quantity> frequency = figure(node, "frequency", QuantityKind.FREQUENCY);
    Optional<Quantity> power = figure(node, "power", QuantityKind.POWER);
    Optional<Quantity> current = figure(node, "current", QuantityKind.CURRENT);
    Optional<ProtectionClass> protection =
        node.optional("protection-class")
            .flatMap(field -> field.word(JsonNode.names("I", "II", "III"), "protection class"))
            .map(ProtectionClass::valueOf);
    return node.make(() -> new Nameplate(voltage, frequency, power, current, protection));
  }

  private static Optional<Quantity> figure(JsonNode node, String name, QuantityKind kind) {
    return node.optional(name)
        .flatMap(field -> field.read(text -> QuantityParser.parse(text, kind)));
  }
}

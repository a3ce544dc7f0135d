package kelter.core.file.field;

import java.util.Optional;
import java.util.Set;
import kelter.core.file.json.JsonNode;
import kelter.core.job.Nameplate;
import kelter.core.job.RatedRange;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.ProtectionClass;

/** Reads the nameplate of an appliance or a component. */
public final class NameplateReader {

  public static final Set<String> NAMEPLATE =
      JsonNode.names("voltage", "frequency", "power", "current", "protection-class");

  private static final String CLASSES =
      "write I (with a protective conductor), II (double square) or III (extra-low voltage)";

  private NameplateReader() {}

  /** The nameplate of an appliance or a component, which may have none. */
  public static Nameplate of(JsonNode owner) {
    Optional<JsonNode> node = owner.optional("nameplate");
    return node.isPresent()
        ? nameplate(node.get()).orElse(Nameplate.UNREADABLE)
        : Nameplate.UNREADABLE;
  }

  private static Optional<Nameplate> nameplate(JsonNode node) {
    node.object(NAMEPLATE);
    Optional<RatedRange> voltage = range(node, "voltage", QuantityKind.VOLTAGE);
    Optional<RatedRange> frequency = range(node, "frequency", QuantityKind.FREQUENCY);
    Optional<RatedRange> power = range(node, "power", QuantityKind.POWER);
    Optional<Quantity> current = node.quantity("current", QuantityKind.CURRENT);
    Optional<ProtectionClass> protection = protection(node);
    try {
      return Optional.of(new Nameplate(voltage, frequency, power, current, protection));
    } catch (IllegalArgumentException refused) {
      return node.refuse(refused);
    }
  }

  private static Optional<RatedRange> range(JsonNode nameplate, String name, QuantityKind kind) {
    Optional<JsonNode> node = nameplate.optional(name);
    Optional<String> text = node.isPresent() ? node.get().text() : Optional.empty();
    try {
      return text.isPresent() ? Optional.of(RatedRange.parse(text.get(), kind)) : Optional.empty();
    } catch (IllegalArgumentException refused) {
      return node.get().refuse(refused);
    }
  }

  private static Optional<ProtectionClass> protection(JsonNode nameplate) {
    Optional<JsonNode> node = nameplate.optional("protection-class");
    Optional<String> text = node.isPresent() ? node.get().text() : Optional.empty();
    Optional<ProtectionClass> read =
        text.isPresent() ? ProtectionClass.of(text.get()) : Optional.empty();
    if (text.isPresent() && read.isEmpty()) {
      node.get().problem("'" + text.get() + "' is not a protection class", CLASSES);
    }
    return read;
  }
}

package kelter.core.file;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import kelter.core.file.json.JsonNode;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;

/** An object whose members are quantities with the names of a vocabulary. */
final class QuantityFields {

  private QuantityFields() {}

  /** The quantities by name, without those that cannot be read; mistakes are noted. */
  static Map<String, Quantity> read(Optional<JsonNode> object, Map<String, QuantityKind> known) {
    Map<String, Quantity> quantities = new LinkedHashMap<>();
    if (object.isEmpty()) {
      return quantities;
    }
    for (Map.Entry<String, JsonNode> member : object.get().members(known.keySet()).entrySet()) {
      Optional<Quantity> quantity = member.getValue().quantity(known.get(member.getKey()));
      if (quantity.isPresent()) {
        quantities.put(member.getKey(), quantity.get());
      }
    }
    return quantities;
  }
}

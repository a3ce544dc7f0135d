package kelter.core.file.field;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.file.json.JsonNode;
import kelter.core.job.rule.EntryRules;
import kelter.core.quantity.Expected;
import kelter.core.quantity.Quantity;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.Possible;

/** An object whose members are quantities with the names of a vocabulary. */
public final class QuantityFields {

  private QuantityFields() {}

  /** The quantities by name, without those that cannot be read or cannot be; mistakes are noted. */
  public static Map<String, Quantity> read(Optional<JsonNode> object, List<Characteristic> known) {
    Map<String, Quantity> quantities = new LinkedHashMap<>();
    if (object.isEmpty()) {
      return quantities;
    }
    Map<String, Characteristic> byName = new LinkedHashMap<>();
    for (Characteristic one : known) {
      byName.put(one.id(), one);
    }
    for (Map.Entry<String, JsonNode> member : object.get().members(byName.keySet()).entrySet()) {
      Optional<Quantity> quantity = read(member.getValue(), byName.get(member.getKey()));
      if (quantity.isPresent()) {
        quantities.put(member.getKey(), quantity.get());
      }
    }
    return quantities;
  }

  private static Optional<Quantity> read(JsonNode node, Characteristic known) {
    Optional<Quantity> quantity =
        node.quantity(
            known.span().isPresent()
                ? Possible.within(known.kind(), known.span().get())
                : Expected.of(known.kind()));
    return quantity.isPresent() ? EntryRules.figure(quantity.get(), known, node) : quantity;
  }
}

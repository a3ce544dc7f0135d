package kelter.core.file;

import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kelter.core.file.json.JsonNode;
import kelter.core.job.Prices;
import kelter.core.quantity.Money;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.QuantityParser;

/** Reads the prices of a job. */
final class PricesReader {

  static final Set<String> PRICES =
      JsonNode.names(
          "currency",
          "labour-per-hour",
          "call-out",
          "replacement",
          "installation",
          "running-per-year",
          "running-per-year-new",
          "discount-rate",
          "parts");

  private PricesReader() {}

  static Optional<Prices> prices(JsonNode node) {
    node.object(PRICES);
    Optional<Currency> currency =
        node.required("currency").flatMap(field -> field.read(PricesReader::currency));
    Optional<Money> labour = money(node, "labour-per-hour");
    Optional<Money> callOut = money(node, "call-out");
    Optional<Money> replacement = money(node, "replacement");
    Optional<Money> installation = money(node, "installation");
    Optional<Money> running = money(node, "running-per-year");
    Optional<Money> runningNew = money(node, "running-per-year-new");
    Optional<Quantity> rate =
        node.optional("discount-rate")
            .flatMap(field -> field.read(text -> QuantityParser.parse(text, QuantityKind.PERCENT)));
    Map<String, Money> parts = node.optional("parts").map(PricesReader::parts).orElse(Map.of());
    return currency.flatMap(
        one ->
            node.make(
                () ->
                    new Prices(
                        one,
                        labour,
                        callOut,
                        replacement,
                        installation,
                        running,
                        runningNew,
                        rate,
                        parts)));
  }

  private static Currency currency(String code) {
    try {
      return Currency.getInstance(code);
    } catch (IllegalArgumentException unknown) {
      throw new IllegalArgumentException(
          "'" + code + "' is not a currency of ISO 4217, such as EUR or USD", unknown);
    }
  }

  private static Optional<Money> money(JsonNode node, String name) {
    return node.optional(name).flatMap(field -> field.read(Money::parse));
  }

  private static Map<String, Money> parts(JsonNode node) {
    Map<String, String> any = new LinkedHashMap<>();
    node.object().keySet().forEach(remedy -> any.put(remedy, remedy));
    return node.each(any, (field, remedy) -> field.read(Money::parse));
  }
}

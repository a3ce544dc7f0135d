package kelter.core.file.job;

import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kelter.core.file.field.TaxFields;
import kelter.core.file.field.TermsFields;
import kelter.core.file.json.JsonNode;
import kelter.core.job.Prices;
import kelter.core.owner.PriceSpread;
import kelter.core.owner.Supplies;
import kelter.core.owner.Tax;
import kelter.core.owner.Terms;
import kelter.core.quantity.Money;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;

/** Reads the prices of a job; an amount that cannot be used is told where it stands. */
final class PricesReader {

  /** The members of prices. */
  public static final Set<String> PRICES =
      JsonNode.names(
          "currency",
          "date",
          "labour-per-hour",
          "least-work",
          "call-out",
          "call-out-credited",
          "replacement",
          "replacement-available",
          "installation",
          "running-per-year",
          "running-per-year-new",
          "energy-per-kwh",
          "water-per-m3",
          "detergent-per-cycle",
          "discount-rate",
          "parts",
          "parts-delivery",
          "replacement-delivery",
          "day-without",
          "repair-warranty",
          "new-warranty",
          "spread",
          "tax-rate",
          "tax-rate-parts",
          "tax-rounding",
          "prices-with-tax");

  private final JsonNode node;
  private final Optional<Currency> currency;

  private PricesReader(JsonNode node, Optional<Currency> currency) {
    this.node = node;
    this.currency = currency;
  }

  /**
   * Reads prices.
   *
   * @param node where they stand; mistakes are noted there
   * @return the prices, or empty if they cannot be used
   */
  public static Optional<Prices> prices(JsonNode node) {
    node.object(PRICES);
    return new PricesReader(node, currency(node)).prices();
  }

  private static Optional<Currency> currency(JsonNode prices) {
    return prices.required("currency").flatMap(node -> node.read(Prices::currencyOf));
  }

  private Optional<Prices> prices() {
    Optional<Money> labour = money("labour-per-hour");
    Optional<Money> callOut = money("call-out");
    Optional<Money> replacement = money("replacement");
    Optional<Money> installation = money("installation");
    Optional<Money> running = money("running-per-year");
    Optional<Money> runningNew = money("running-per-year-new");
    Optional<Quantity> rate = node.quantity("discount-rate", QuantityKind.PERCENT);
    Map<String, Money> parts = parts();
    Terms terms =
        TermsFields.read(
            node, node.date("date"), node.yesNo("replacement-available"), money("day-without"));
    Supplies supplies =
        new Supplies(money("energy-per-kwh"), money("water-per-m3"), money("detergent-per-cycle"));
    PriceSpread spread = TermsFields.spread(node);
    Tax tax = TaxFields.read(node);
    if (currency.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          new Prices(
              currency.get(),
              labour,
              callOut,
              replacement,
              installation,
              running,
              runningNew,
              rate,
              parts,
              terms,
              supplies,
              spread,
              tax));
    } catch (IllegalArgumentException refused) {
      return node.refuse(refused);
    }
  }

  private Optional<Money> money(String name) {
    return node.optional(name).flatMap(this::money);
  }

  private Optional<Money> money(JsonNode field) {
    return field.read(this::amount);
  }

  private Money amount(String text) {
    Money amount = currency.isPresent() ? Money.parse(text, currency.get()) : Money.parse(text);
    return Prices.requirePrice(amount, currency.orElse(amount.currency()), text);
  }

  private Map<String, Money> parts() {
    Map<String, Money> parts = new LinkedHashMap<>();
    for (var remedy : node.optional("parts").map(JsonNode::members).orElse(Map.of()).entrySet()) {
      money(remedy.getValue()).ifPresent(price -> parts.put(remedy.getKey(), price));
    }
    return parts;
  }
}

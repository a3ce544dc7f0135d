package kelter.core.file.price;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kelter.core.file.json.JsonNode;
import kelter.core.job.Prices;
import kelter.core.owner.PriceSpread;
import kelter.core.owner.Supplies;
import kelter.core.owner.Terms;
import kelter.core.quantity.Money;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.QuantityParser;

/** Reads the prices of a job; an amount that cannot be used is told where it stands. */
public final class PricesReader {

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
          "spread");

  /** The members of the spread of prices. */
  public static final Set<String> SPREAD = JsonNode.names("repair", "replacement", "running");

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
    Optional<Currency> currency =
        node.required("currency").flatMap(field -> field.read(PricesReader::currency));
    return new PricesReader(node, currency).prices();
  }

  private Optional<Prices> prices() {
    Optional<Money> labour = money("labour-per-hour");
    Optional<Money> callOut = money("call-out");
    Optional<Money> replacement = money("replacement");
    Optional<Money> installation = money("installation");
    Optional<Money> running = money("running-per-year");
    Optional<Money> runningNew = money("running-per-year-new");
    Optional<Quantity> rate =
        node.optional("discount-rate")
            .flatMap(field -> field.read(text -> QuantityParser.parse(text, QuantityKind.PERCENT)));
    Map<String, Money> parts = node.optional("parts").map(this::parts).orElse(Map.of());
    Terms terms = terms();
    Supplies supplies =
        new Supplies(money("energy-per-kwh"), money("water-per-m3"), money("detergent-per-cycle"));
    PriceSpread spread =
        node.optional("spread").flatMap(PricesReader::spread).orElse(PriceSpread.NONE);
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
                        parts,
                        terms,
                        supplies,
                        spread)));
  }

  private Terms terms() {
    return new Terms(
        node.optional("date").flatMap(field -> field.read(PricesReader::date)),
        node.optional("call-out-credited").flatMap(JsonNode::yesNo),
        time("least-work", QuantityKind.TIME),
        node.optional("replacement-available").flatMap(JsonNode::yesNo),
        time("parts-delivery", QuantityKind.AGE),
        time("replacement-delivery", QuantityKind.AGE),
        time("repair-warranty", QuantityKind.AGE),
        time("new-warranty", QuantityKind.AGE),
        money("day-without"));
  }

  private static Optional<PriceSpread> spread(JsonNode node) {
    node.object(SPREAD);
    Optional<Quantity> repair = percentage(node, "repair");
    Optional<Quantity> replacement = percentage(node, "replacement");
    Optional<Quantity> running = percentage(node, "running");
    return node.make(() -> new PriceSpread(repair, replacement, running));
  }

  private static Optional<Quantity> percentage(JsonNode node, String name) {
    return node.optional(name)
        .flatMap(field -> field.read(text -> QuantityParser.parse(text, QuantityKind.PERCENT)));
  }

  private static LocalDate date(String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeException noDate) {
      throw new IllegalArgumentException("'" + text + "' is not a date; write yyyy-mm-dd", noDate);
    }
  }

  private Optional<Quantity> time(String name, QuantityKind kind) {
    return node.optional(name).flatMap(field -> field.read(text -> timeOf(text, kind)));
  }

  private static Quantity timeOf(String text, QuantityKind kind) {
    Quantity time = QuantityParser.parse(text, kind);
    if (time.si() < 0) {
      throw new IllegalArgumentException("'" + text + "' is negative; a time is not");
    }
    return time;
  }

  private static Currency currency(String code) {
    try {
      return Currency.getInstance(code);
    } catch (IllegalArgumentException unknown) {
      throw new IllegalArgumentException(
          "'" + code + "' is not a currency of ISO 4217, such as EUR or USD", unknown);
    }
  }

  private Optional<Money> money(String name) {
    return node.optional(name).flatMap(this::money);
  }

  private Optional<Money> money(JsonNode field) {
    return field.read(this::amount);
  }

  private Money amount(String text) {
    Money amount = Money.parse(text);
    if (currency.isPresent() && !amount.currency().equals(currency.get())) {
      throw new IllegalArgumentException(
          "'%s' is in another currency; all prices of a job are in one, here %s"
              .formatted(text, currency.get()));
    }
    if (amount.amount().signum() < 0) {
      throw new IllegalArgumentException("'" + text + "' is negative; a price is not");
    }
    return amount;
  }

  private Map<String, Money> parts(JsonNode parts) {
    Map<String, String> any = new LinkedHashMap<>();
    parts.object().keySet().forEach(remedy -> any.put(remedy, remedy));
    return parts.each(any, (field, remedy) -> money(field));
  }
}

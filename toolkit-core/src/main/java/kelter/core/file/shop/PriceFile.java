package kelter.core.file.shop;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kelter.core.file.field.TaxFields;
import kelter.core.file.field.TermsFields;
import kelter.core.file.json.Json;
import kelter.core.file.json.JsonFile;
import kelter.core.file.json.JsonNode;
import kelter.core.file.json.JsonPlaces;
import kelter.core.file.json.JsonText;
import kelter.core.file.json.SchemaText;
import kelter.core.job.Prices;
import kelter.core.owner.Tax;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.quantity.Money;
import kelter.core.shop.Policy;
import kelter.core.shop.PriceList;
import kelter.core.vocabulary.Vocabulary;

/** Reads the prices of a shop, {@code "format": "kelter-prices/1"}. */
public final class PriceFile {

  /** The greatest size of a file of prices, in bytes. */
  public static final int MAX_BYTES = 1024 * 1024;

  static final String FORMAT = "kelter-prices/1";

  static final Set<String> PRICES =
      JsonNode.names(
          "format",
          "currency",
          "date",
          "labour-per-hour",
          "call-out",
          "parts",
          "tax-rate",
          "tax-rate-parts",
          "tax-rounding",
          "prices-with-tax",
          "call-out-credited",
          "least-work",
          "parts-delivery",
          "replacement-delivery",
          "repair-warranty",
          "new-warranty",
          "spread",
          "new-machines",
          "installation",
          "note");

  private static final String START = "'kelter shop init' makes one to fill in";
  private static final String OWN = "x-";

  private final Vocabulary vocabulary;
  private final List<Problem> problems = new ArrayList<>();
  private Optional<Currency> currency = Optional.empty();

  private PriceFile(Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
  }

  /**
   * The JSON Schema (2020-12) of files of prices, for editors and other programs.
   *
   * @return JSON
   */
  public static String schema() {
    return SchemaText.of(PriceFile.class, "kelter-prices-1.schema.json");
  }

  /**
   * Reads a file of prices.
   *
   * @param path the file
   * @param vocabulary the kinds of components that are known
   * @return the prices
   * @throws InputException with every mistake of the file, if it has any or cannot be read
   */
  public static PriceList read(Path path, Vocabulary vocabulary) {
    Json content = JsonFile.read(path, MAX_BYTES, "a file of prices", START);
    try {
      return new PriceFile(vocabulary).list(content);
    } catch (InputException mistakes) {
      throw JsonPlaces.found(path, mistakes);
    }
  }

  /**
   * Reads prices from text.
   *
   * @param text the content of a file of prices
   * @param vocabulary the kinds of components that are known
   * @return the prices
   * @throws InputException with every mistake of the text, if it has any
   */
  public static PriceList parse(String text, Vocabulary vocabulary) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    return new PriceFile(vocabulary).list(JsonText.read(bytes, "prices", START));
  }

  private PriceList list(Json content) {
    JsonNode root = new JsonNode(content, "", problems);
    root.object(PRICES);
    root.required("format").ifPresent(node -> node.word(Set.of(FORMAT), "format"));
    currency = root.required("currency").flatMap(node -> node.read(Prices::currencyOf));
    Optional<LocalDate> date = root.date("date");
    Optional<Money> labour = root.optional("labour-per-hour").flatMap(this::money);
    Optional<Money> callOut = root.optional("call-out").flatMap(this::money);
    Map<String, Money> parts = parts(root);
    Tax tax = TaxFields.read(root);
    Policy policy =
        new Policy(
            TermsFields.read(root, Optional.empty(), Optional.empty(), Optional.empty()),
            TermsFields.spread(root),
            newMachines(root),
            root.optional("installation").flatMap(this::money));
    root.text("note");
    if (currency.isEmpty() || !problems.isEmpty()) {
      throw new InputException(problems);
    }
    return new PriceList(currency.get(), date, labour, callOut, parts, tax, policy);
  }

  private Optional<Money> money(JsonNode field) {
    return field.read(this::amount);
  }

  private Money amount(String text) {
    Money amount = currency.isPresent() ? Money.parse(text, currency.get()) : Money.parse(text);
    return Prices.requirePrice(amount, currency.orElse(amount.currency()), text);
  }

  private Map<String, Money> newMachines(JsonNode root) {
    Map<String, Money> prices = new LinkedHashMap<>();
    root.optional("new-machines")
        .map(JsonNode::members)
        .orElse(Map.of())
        .forEach(
            (kind, node) -> {
              if (!kind.startsWith(OWN)) {
                money(node).ifPresent(price -> prices.put(kind, price));
              }
            });
    return prices;
  }

  private Map<String, Money> parts(JsonNode root) {
    Map<String, JsonNode> members = root.optional("parts").map(JsonNode::members).orElse(Map.of());
    Map<String, Money> parts = new LinkedHashMap<>();
    members.forEach(
        (word, node) -> {
          if (!word.startsWith(OWN)) {
            boolean known = RemedyWord.hold(word, vocabulary, node);
            Optional<Money> price = money(node);
            if (known && price.isPresent()) {
              parts.put(word, price.get());
            }
          }
        });
    return parts;
  }
}

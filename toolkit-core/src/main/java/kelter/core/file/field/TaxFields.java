package kelter.core.file.field;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.file.json.JsonNode;
import kelter.core.owner.Tax;
import kelter.core.owner.TaxRate;
import kelter.core.owner.TaxRounding;

/** The members of prices that tell of tax, in a job as in the prices of a shop. */
public final class TaxFields {

  private static final Map<String, TaxRounding> ROUNDINGS = roundings();

  /** Their names. */
  public static final List<String> NAMES =
      List.of("tax-rate", "tax-rate-parts", "tax-rounding", "prices-with-tax");

  private TaxFields() {}

  private static Map<String, TaxRounding> roundings() {
    Map<String, TaxRounding> roundings = new LinkedHashMap<>();
    for (TaxRounding each : TaxRounding.values()) {
      roundings.put(each.id(), each);
    }
    return roundings;
  }

  /**
   * Reads them.
   *
   * @param prices where they stand; mistakes are noted there
   * @return what is stated
   */
  public static Tax read(JsonNode prices) {
    Optional<TaxRounding> rounding =
        prices
            .optional("tax-rounding")
            .flatMap(node -> node.word(ROUNDINGS.keySet(), "rounding of tax"))
            .map(ROUNDINGS::get);
    return new Tax(
        prices.optional("tax-rate").flatMap(node -> node.read(TaxRate::parse)),
        prices.optional("tax-rate-parts").flatMap(node -> node.read(TaxRate::parse)),
        rounding,
        prices.yesNo("prices-with-tax"));
  }
}

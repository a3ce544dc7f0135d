package kelter.core.file.job;

import java.util.Map;
import java.util.Optional;
import kelter.core.file.json.Json;

/** Adds a price to the content of a job file. */
public final class PriceEdit {

  private static final Json.Obj EMPTY = new Json.Obj(Map.of());
  private static final String PRICES = "prices";
  private static final String PARTS = "parts";
  private static final String CURRENCY = "currency";

  private PriceEdit() {}

  /**
   * The content with a price, in the place of one of the same word.
   *
   * @param job the content
   * @param word a member of the prices, such as {@code call-out}; with a full stop in it, the part
   *     of a work, such as {@code heater.renew-heater}
   * @param value the price as a person writes it
   * @param currency the currency of the price, if it has one; that of all prices of the job where
   *     none is told
   * @return the content with it
   */
  public static Json.Obj with(Json.Obj job, String word, String value, Optional<String> currency) {
    Json.Obj prices = object(job, PRICES);
    if (currency.isPresent() && !prices.members().containsKey(CURRENCY)) {
      prices = prices.with(CURRENCY, new Json.Str(currency.get()));
    }
    Json price = new Json.Str(value);
    return job.with(
        PRICES,
        word.contains(".")
            ? prices.with(PARTS, object(prices, PARTS).with(word, price))
            : prices.with(word, price));
  }

  private static Json.Obj object(Json.Obj whole, String member) {
    return whole.members().get(member) instanceof Json.Obj object ? object : EMPTY;
  }
}

package kelter.core.file.field;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kelter.core.file.json.JsonNode;
import kelter.core.owner.PriceSpread;
import kelter.core.owner.Terms;
import kelter.core.quantity.Money;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;

/** The members of prices that tell of terms, in a job as in the prices of a shop. */
public final class TermsFields {

  /** Their names, but for those that only a job has. */
  public static final List<String> NAMES =
      List.of(
          "call-out-credited",
          "least-work",
          "parts-delivery",
          "replacement-delivery",
          "repair-warranty",
          "new-warranty",
          "spread");

  /** The members of the spread of prices. */
  public static final Set<String> SPREAD = JsonNode.names("repair", "replacement", "running");

  private TermsFields() {}

  /**
   * Reads the terms.
   *
   * @param prices where they stand; mistakes are noted there
   * @param date the day of the prices, if stated
   * @param replacementAvailable whether a new machine can be had, if stated
   * @param dayWithout what a day without the machine costs the owner, if stated
   * @return what is stated
   */
  public static Terms read(
      JsonNode prices,
      Optional<LocalDate> date,
      Optional<Boolean> replacementAvailable,
      Optional<Money> dayWithout) {
    return new Terms(
        date,
        prices.yesNo("call-out-credited"),
        prices.notNegative("least-work", QuantityKind.TIME),
        replacementAvailable,
        prices.notNegative("parts-delivery", QuantityKind.AGE),
        prices.notNegative("replacement-delivery", QuantityKind.AGE),
        prices.notNegative("repair-warranty", QuantityKind.AGE),
        prices.notNegative("new-warranty", QuantityKind.AGE),
        dayWithout);
  }

  /**
   * Reads the spread.
   *
   * @param prices where it stands; mistakes are noted there
   * @return what is stated
   */
  public static PriceSpread spread(JsonNode prices) {
    Optional<JsonNode> member = prices.optional("spread");
    if (member.isEmpty()) {
      return PriceSpread.NONE;
    }
    JsonNode spread = member.get();
    spread.object(SPREAD);
    Optional<Quantity> repair = spread.quantity("repair", QuantityKind.PERCENT);
    Optional<Quantity> replacement = spread.quantity("replacement", QuantityKind.PERCENT);
    Optional<Quantity> running = spread.quantity("running", QuantityKind.PERCENT);
    try {
      return new PriceSpread(repair, replacement, running);
    } catch (IllegalArgumentException refused) {
      spread.problem(refused.getMessage(), "");
      return PriceSpread.NONE;
    }
  }
}

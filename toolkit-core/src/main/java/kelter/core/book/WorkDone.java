package kelter.core.book;

import java.util.Optional;
import java.util.OptionalDouble;
import kelter.core.problem.Required;
import kelter.core.quantity.Money;
import kelter.core.vocabulary.Ids;

/**
 * One remedy that was carried out.
 *
 * @param component the kind of the component
 * @param remedy the id of the remedy
 * @param minutes how long it took, 0 to 10,000
 * @param parts what the parts cost
 * @param cured whether it cured what it was done for; empty if nobody knows
 */
public record WorkDone(
    String component,
    String remedy,
    OptionalDouble minutes,
    Optional<Money> parts,
    Optional<Boolean> cured) {

  /** More minutes than any one remedy or reading takes; own choice. */
  static final double MOST_MINUTES = 10_000;

  /**
   * Checks words and minutes.
   *
   * @throws IllegalArgumentException if a word is no id, or the minutes are outside their range
   */
  public WorkDone {
    Ids.require(component);
    Ids.require(remedy);
    requireMinutes(minutes);
    Required.optional(parts, "money for parts");
    Required.optional(cured, "whether work cured");
  }

  static void requireMinutes(OptionalDouble minutes) {
    if (minutes.isPresent()
        && !(minutes.getAsDouble() >= 0 && minutes.getAsDouble() <= MOST_MINUTES)) {
      throw new IllegalArgumentException(
          "%s minutes; 0 to 10000 are allowed".formatted(minutes.getAsDouble()));
    }
  }

  /**
   * What it is counted under.
   *
   * @return kind of component and remedy, joined by a full stop
   */
  public String key() {
    return component + "." + remedy;
  }

  /**
   * Whether the part was renewed by it.
   *
   * @return true for remedies that are called renew, or begin with it
   */
  public boolean renews() {
    return remedy.equals("renew") || remedy.startsWith("renew-");
  }
}

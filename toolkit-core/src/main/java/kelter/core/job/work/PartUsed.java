package kelter.core.job.work;

import java.util.Optional;
import kelter.core.problem.Required;
import kelter.core.quantity.Money;

/**
 * A part that was put in.
 *
 * @param title what it is, for the owner
 * @param count how many, from 1 to 1000
 * @param price what one of them costs before tax, if it is told
 * @param condition new, or what else
 */
public record PartUsed(String title, int count, Optional<Money> price, Condition condition) {

  private static final int MOST = 1000;

  /** What an owner has to be told of a part. */
  public enum Condition {
    /** New, from the maker of the machine. */
    NEW("new"),
    /** New, from another maker. */
    THIRD_PARTY("third-party"),
    /** Used, and overhauled. */
    REFURBISHED("refurbished"),
    /** Used. */
    USED("used");

    private final String id;

    Condition(String id) {
      this.id = id;
    }

    /**
     * The word in a file.
     *
     * @return lower-case letters and a hyphen
     */
    public String id() {
      return id;
    }
  }

  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException if it has no title, or the number is not from 1 to 1000
   */
  public PartUsed {
    Required.value(title, "title of a part");
    Required.optional(price, "price of a part");
    Required.value(condition, "condition of a part");
    if (title.isBlank()) {
      throw new IllegalArgumentException("a part has a title");
    }
    if (count < 1 || count > MOST) {
      throw new IllegalArgumentException("parts are counted from 1 to " + MOST);
    }
  }

  /**
   * The part in words.
   *
   * @return number, title and condition, for instance {@code 2 × hose (third party)}
   */
  public String words() {
    String counted = count == 1 ? title : count + " × " + title;
    return counted + " (" + condition.id().replace('-', ' ') + ")";
  }
}

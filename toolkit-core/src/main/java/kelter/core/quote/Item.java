package kelter.core.quote;

import java.math.BigDecimal;
import java.util.Optional;
import kelter.core.owner.TaxRate;
import kelter.core.problem.Required;

/**
 * Something that is charged.
 *
 * @param title what it is, for the owner
 * @param kind labour, part, travel or other
 * @param count how many units of it, not negative
 * @param unit what is counted
 * @param price what one piece or one hour costs, in units of the currency of the bill, below zero
 *     for what is taken off; empty where it is not known
 * @param rate the tax on it; empty where it is not known
 */
public record Item(
    String title,
    Kind kind,
    BigDecimal count,
    Unit unit,
    Optional<BigDecimal> price,
    Optional<TaxRate> rate) {

  /** What is charged for. */
  public enum Kind {
    /** Work, by the time that it takes. */
    LABOUR("labour"),
    /** What is put in. */
    PART("part"),
    /** Coming to the machine. */
    TRAVEL("travel"),
    /** Anything else. */
    OTHER("other");

    private final String id;

    Kind(String id) {
      this.id = id;
    }

    /**
     * The word in results.
     *
     * @return a lower-case word
     */
    public String id() {
      return id;
    }
  }

  /** What is counted. */
  public enum Unit {
    /** Pieces, at a price each. */
    PIECE("piece", 1),
    /** Minutes, at a price for an hour. */
    MINUTE("min", 60);

    private final String id;
    private final BigDecimal priced;

    Unit(String id, int priced) {
      this.id = id;
      this.priced = BigDecimal.valueOf(priced);
    }

    /**
     * The word in results.
     *
     * @return {@code piece} or {@code min}
     */
    public String id() {
      return id;
    }

    /** How many of them the price is for. */
    BigDecimal priced() {
      return priced;
    }
  }

  /**
   * Checks the count.
   *
   * @throws IllegalArgumentException if it is negative
   */
  public Item {
    Required.value(title, "title of an item");
    Required.value(kind, "kind of an item");
    Required.value(count, "count of an item");
    Required.value(unit, "unit of an item");
    Required.optional(price, "price of an item");
    Required.optional(rate, "tax rate of an item");
    if (count.signum() < 0) {
      throw new IllegalArgumentException(title + ": a count of " + count + "; it is not negative");
    }
  }

  /** One piece of something. */
  static Item one(String title, Kind kind, Optional<BigDecimal> price, Optional<TaxRate> rate) {
    return new Item(title, kind, BigDecimal.ONE, Unit.PIECE, price, rate);
  }
}

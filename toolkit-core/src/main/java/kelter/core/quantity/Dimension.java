package kelter.core.quantity;

import java.util.Collections;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The dimension of a unit: the exponent of each base unit that is not zero.
 *
 * <p>Base units are those of the SI that the trade needs ({@code m}, {@code kg}, {@code s}, {@code
 * A}, {@code K}) and each currency by its ISO 4217 code: two currencies are two dimensions, so that
 * no amount is ever converted at a rate that nobody stated. The plane angle counts as a number, as
 * in the SI.
 *
 * @param exponents the exponents by base unit, none of them zero
 */
public record Dimension(SortedMap<String, Integer> exponents) {

  private static final int CURRENCY_CODE = 3;

  /** The dimension of a plain number. */
  public static final Dimension ONE = new Dimension(new TreeMap<>());

  /** Copies the exponents and drops those that are zero. */
  public Dimension {
    SortedMap<String, Integer> copy = new TreeMap<>();
    for (Map.Entry<String, Integer> base : exponents.entrySet()) {
      if (base.getValue() != 0) {
        copy.put(base.getKey(), base.getValue());
      }
    }
    exponents = Collections.unmodifiableSortedMap(copy);
  }

  /**
   * The dimension of one base unit.
   *
   * @param base the code of the base unit
   * @return that base unit to the power of one
   */
  public static Dimension of(String base) {
    return new Dimension(new TreeMap<>(Map.of(base, 1)));
  }

  /** Whether it is an amount of money, or one for something else. */
  boolean hasCurrency() {
    for (String base : exponents.keySet()) {
      if (base.length() == CURRENCY_CODE) {
        return true;
      }
    }
    return false;
  }

  // By hand: what a record has of its own is linked anew at every start, which costs more than the
  // reading of a job.
  @Override
  public boolean equals(Object other) {
    return other instanceof Dimension dimension && exponents.equals(dimension.exponents);
  }

  @Override
  public int hashCode() {
    return exponents.hashCode();
  }

  /**
   * The dimension of a product.
   *
   * @param other the dimension of the other factor
   * @return the sum of the exponents
   */
  public Dimension times(Dimension other) {
    SortedMap<String, Integer> sum = new TreeMap<>(exponents);
    for (Map.Entry<String, Integer> base : other.exponents.entrySet()) {
      sum.put(base.getKey(), sum.getOrDefault(base.getKey(), 0) + base.getValue());
    }
    return new Dimension(sum);
  }

  /**
   * The dimension of a power.
   *
   * @param power the power, of either sign
   * @return each exponent times the power
   */
  public Dimension pow(int power) {
    SortedMap<String, Integer> scaled = new TreeMap<>();
    for (Map.Entry<String, Integer> base : exponents.entrySet()) {
      scaled.put(base.getKey(), base.getValue() * power);
    }
    return new Dimension(scaled);
  }
}

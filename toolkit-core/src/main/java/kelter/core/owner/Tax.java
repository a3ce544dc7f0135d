package kelter.core.owner;

import java.util.Objects;
import java.util.Optional;

/**
 * The tax on work and parts. Nothing has to be stated; no rate is ever taken for granted.
 *
 * @param rate the rate on all that is charged
 * @param rateOfParts the rate on parts, where it is another one
 * @param rounding where tax is rounded
 * @param included whether stated prices have the tax in them
 */
public record Tax(
    Optional<TaxRate> rate,
    Optional<TaxRate> rateOfParts,
    Optional<TaxRounding> rounding,
    Optional<Boolean> included) {

  /** Tax of which nothing is stated. */
  public static final Tax UNKNOWN =
      new Tax(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

  /** Checks that nothing is null. */
  public Tax {
    Objects.requireNonNull(rate);
    Objects.requireNonNull(rateOfParts);
    Objects.requireNonNull(rounding);
    Objects.requireNonNull(included);
  }

  /**
   * The rate on parts.
   *
   * @return their own where they have one, else the usual one; empty if neither is stated
   */
  public Optional<TaxRate> onParts() {
    return rateOfParts.or(() -> rate);
  }

  /**
   * Where tax is rounded.
   *
   * @return what is stated, else once for each rate
   */
  public TaxRounding rounded() {
    return rounding.orElse(TaxRounding.PER_RATE);
  }

  /**
   * Whether prices have the tax in them.
   *
   * @return what is stated, else false
   */
  public boolean isIncluded() {
    return included.orElse(false);
  }

  /**
   * Whether it is known what the owner pays: prices have the tax in them, or its rate is stated.
   *
   * @return true if it is
   */
  public boolean isKnown() {
    return isIncluded() || rate.isPresent();
  }
}

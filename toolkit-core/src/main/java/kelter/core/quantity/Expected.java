package kelter.core.quantity;

import java.util.Objects;
import java.util.Optional;

/**
 * What a figure is expected to be: its kind, and everything that it can be. What a person wrote is
 * doubted only where two readings of it lie within.
 *
 * @param kind what is measured
 * @param least the least that it can be, in the coherent SI unit
 * @param most the most that it can be, in the coherent SI unit
 */
public record Expected(QuantityKind kind, double least, double most) {

  /**
   * Checks the order.
   *
   * @throws IllegalArgumentException if an end is not a number or the ends are not in order
   */
  public Expected {
    Objects.requireNonNull(kind);
    if (!(least <= most)) {
      throw new IllegalArgumentException("what is expected runs from a least to a most");
    }
  }

  /**
   * Whatever is of a kind, on any appliance.
   *
   * @param kind what is measured
   * @return from the negative of {@link QuantityKind#greatest} to that
   */
  public static Expected of(QuantityKind kind) {
    return new Expected(kind, -kind.greatest(), kind.greatest());
  }

  /**
   * Whether a value lies within.
   *
   * @param si a value in the coherent SI unit
   * @return true if it does
   */
  public boolean takes(double si) {
    return si >= least && si <= most;
  }

  /**
   * Refuses a value that is not taken.
   *
   * @param quantity what somebody gave
   * @return the quantity
   * @throws QuantityFormatException if it is not taken; the message says what is, and names the
   *     unit that is likely meant
   */
  public Quantity require(Quantity quantity) {
    if (!takes(quantity.si())) {
      throw new QuantityFormatException(
          told(quantity.value(), quantity.unit())
              + " cannot be: "
              + QuantityFormat.plain(kind.fromSi(least, kind.unit()))
              + " to "
              + told(kind.fromSi(most, kind.unit()), kind.unit())
              + " is possible here"
              + likely(quantity));
    }
    return quantity;
  }

  private String likely(Quantity quantity) {
    Optional<Unit> unit = Spellings.likely(quantity, this);
    return unit.isPresent() && QuantityFormat.isPlain(quantity.value())
        ? "; did you mean " + told(quantity.value(), unit.get()) + "?"
        : "; a slip of the pen, or the wrong unit";
  }

  private static String told(double value, Unit unit) {
    return (QuantityFormat.plain(value) + " " + unit.symbol()).strip();
  }
}

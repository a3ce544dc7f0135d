package kelter.core.quantity;

/** A text that cannot be read as a quantity or a unit. The message says what would be right. */
public final class QuantityFormatException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  /**
   * A text that cannot be read.
   *
   * @param message what was found and what is allowed, for a person
   */
  public QuantityFormatException(String message) {
    super(message);
  }
}

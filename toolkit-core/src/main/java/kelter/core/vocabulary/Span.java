package kelter.core.vocabulary;

/**
 * Everything that an observable can be on a machine of any kind, in whatever state: the range over
 * which a reading that no fault explains is taken as equally likely. It is fixed before a reading
 * is seen and sets how soon readings count as unexplained.
 *
 * @param low the lower end, in the coherent SI unit
 * @param high the upper end, in the coherent SI unit, above the lower
 */
public record Span(double low, double high) {

  /**
   * Checks the order.
   *
   * @throws IllegalArgumentException if the ends are not finite or not in order
   */
  public Span {
    if (!(low < high) || !Double.isFinite(high - low)) {
      throw new IllegalArgumentException("a span runs from a lower to a higher finite value");
    }
  }
}

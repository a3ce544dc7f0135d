package kelter.core.catalogue;

import java.util.Objects;
import kelter.core.quantity.Quantity;
import kelter.core.vocabulary.Ids;

/**
 * A figure of a part as machines of a kind usually have it. It stands in until a job or a model
 * tells the real one.
 *
 * <p>Low, usual and high stand for about 5, 50 and 95 of 100 machines. Above and below what is
 * usual the figure is log-normal where all three are above zero, else normal.
 *
 * @param word the word of the figure, or of the nameplate
 * @param onNameplate whether it stands on the nameplate
 * @param low what 5 of 100 machines fall below
 * @param usual the median
 * @param high what 5 of 100 machines exceed
 */
public record TypicalFigure(
    String word, boolean onNameplate, Quantity low, Quantity usual, Quantity high) {

  /** The 0.95 quantile of the standard normal distribution. */
  private static final double QUANTILE_95 = 1.6448536269514722;

  /**
   * Checks the order.
   *
   * @throws IllegalArgumentException if the three do not rise, or are equal in part only
   */
  public TypicalFigure {
    Ids.require(word);
    Objects.requireNonNull(low);
    Objects.requireNonNull(usual);
    Objects.requireNonNull(high);
    if (!(low.si() <= usual.si() && usual.si() <= high.si())) {
      throw new IllegalArgumentException(
          "%s: %s, %s and %s do not rise from low over usual to high"
              .formatted(word, low.format(), usual.format(), high.format()));
    }
  }

  /**
   * Whether machines differ in it.
   *
   * @return false if low and high are the same, as a voltage of the mains may be
   */
  public boolean isOpen() {
    return low.si() < high.si();
  }

  /**
   * The figure of a machine that lies so far from what is usual.
   *
   * @param deviate the distance in standard deviations, negative towards low
   * @return the figure in the unit of the usual one
   */
  public Quantity at(double deviate) {
    double end = (deviate < 0 ? low : high).si();
    double share = Math.abs(deviate) / QUANTILE_95;
    double si =
        low.si() > 0
            ? usual.si() * Math.pow(end / usual.si(), share)
            : usual.si() + share * (end - usual.si());
    return Quantity.ofSi(si, 0, usual.kind()).in(usual.unit());
  }

  /**
   * The figure for a person.
   *
   * @return the usual figure with its span
   */
  public String told() {
    return isOpen()
        ? usual.format() + " (" + low.format() + " to " + high.format() + ")"
        : usual.format();
  }
}

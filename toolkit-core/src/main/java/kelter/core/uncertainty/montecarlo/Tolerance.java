package kelter.core.uncertainty.montecarlo;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** The numerical tolerance of an uncertainty (JCGM 101:2008, 7.9.2). */
final class Tolerance {

  private Tolerance() {}

  /**
   * Half a unit of the last digit of an uncertainty that is told to so many digits.
   *
   * @param uncertainty a standard uncertainty, finite and above zero
   * @param digits how many significant digits of it are meaningful, 1 or more
   * @return the tolerance, same unit
   * @throws IllegalArgumentException if a figure is not allowed
   */
  public static double of(double uncertainty, int digits) {
    if (!(uncertainty > 0) || Double.isInfinite(uncertainty) || digits < 1) {
      throw new IllegalArgumentException(
          "a tolerance needs an uncertainty above zero and a digit or more, not "
              + uncertainty
              + " and "
              + digits);
    }
    BigDecimal rounded =
        new BigDecimal(uncertainty).round(new MathContext(digits, RoundingMode.HALF_EVEN));
    int lastPlace = rounded.precision() - rounded.scale() - digits; // the power l of c x 10^l
    return 0.5 * BigDecimal.ONE.scaleByPowerOfTen(lastPlace).doubleValue();
  }
}

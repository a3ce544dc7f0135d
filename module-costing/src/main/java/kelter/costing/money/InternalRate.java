package kelter.costing.money;

import java.util.OptionalDouble;
import kelter.core.numeric.Root;

/**
 * The discount rate at which a row of yearly cash flows is worth nothing.
 *
 * <p>It exists, and is the only one above -100 %, where something is paid first and all that
 * follows comes in, or the other way round. Where the sign changes more than once there may be
 * several or none: then nothing is returned, and the net present value at one's own rate is what to
 * look at.
 *
 * <p>Source: NIST Handbook 135 (1995 edition), adjusted and internal rate of return; looked for
 * between -99 % and 10 000 % a year.
 */
public final class InternalRate {

  private static final double LEAST = -0.99;
  private static final double GREATEST = 100;

  private InternalRate() {}

  /**
   * The internal rate of return.
   *
   * @param flows the cash flows in units of a currency, what comes in above zero, the first today
   *     and each other one a year later
   * @return the rate a year, as a ratio, or empty if there is none, or it is not the only one
   * @throws IllegalArgumentException if a flow is not finite
   */
  public static OptionalDouble of(double... flows) {
    double atLeast = NetPresentValue.of(LEAST, flows);
    double atGreatest = NetPresentValue.of(GREATEST, flows);
    if (signChanges(flows) != 1 || atLeast * atGreatest > 0) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(
        Root.between(rate -> NetPresentValue.of(rate, flows), LEAST, GREATEST, 0));
  }

  private static int signChanges(double[] flows) {
    int changes = 0;
    double last = 0;
    for (double flow : flows) {
      if (flow * last < 0) {
        changes++;
      }
      last = flow == 0 ? last : flow;
    }
    return changes;
  }
}

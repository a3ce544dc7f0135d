package kelter.costing.money;

/**
 * The worth today of a row of yearly cash flows: {@code NPV = sum of flow[t] / (1 + rate)^t}, the
 * first flow today (t = 0).
 *
 * <p>Source: NIST Handbook 135 (1995 edition), present value of a series of amounts.
 */
public final class NetPresentValue {

  private NetPresentValue() {}

  /**
   * The net present value.
   *
   * @param rate the discount rate a year, as a ratio (3 % is 0.03), above -1
   * @param flows the cash flows in units of a currency, what comes in above zero, the first today
   *     and each other one a year later
   * @return the worth today, same currency; 0 if there are no flows
   * @throws IllegalArgumentException if the rate is outside its range or a flow is not finite
   */
  public static double of(double rate, double... flows) {
    Terms.requireRate(rate);
    double worth = 0;
    for (int t = flows.length - 1; t >= 0; t--) {
      Terms.requireAmount("the flow of year " + t, flows[t]);
      worth = worth / (1 + rate) + flows[t];
    }
    return worth;
  }
}

package kelter.hydraulics.pump;

import kelter.core.quantity.QuantityFormat;

/**
 * The head of a pump over its flow rate, as a power function: H = A − B Q^C.
 *
 * <p>It falls everywhere, runs smoothly through and beyond the points, and follows the affinity
 * laws exactly. It holds from no flow to run-out, where the head is zero. A pump whose head rises
 * with flow at first is not described by it and is refused.
 *
 * <p>Source: the form is that of the power function curves of EPANET 2 Users Manual,
 * EPA/600/R-00/057 (2000), section 3.1, Pumps, which has exponents up to 20; the fit to more than
 * three points is ordinary least squares.
 *
 * @param shutOffHead A, the head at no flow, in m, above 0
 * @param coefficient B, in m / (m3/s)^C, above 0
 * @param exponent C, dimensionless, 0.5 to 20
 * @param scatter the standard deviation of the points about the curve, in m; 0 where three points
 *     or fewer leave nothing over
 */
public record PumpCurve(double shutOffHead, double coefficient, double exponent, double scatter) {

  /** The exponent that is taken where two points leave it open; the usual parabola. */
  private static final double PARABOLA = 2;

  /** Curves that sag more are not those of a pump; own choice. */
  private static final double LEAST_EXPONENT = 0.5;

  private static final double GREATEST_EXPONENT = 20; // EPANET 2.2, source of its hydraulics

  /** How near a curve through three points comes to them, as a ratio of the head at no flow. */
  private static final double EXACT = 1e-6;

  private static final double LITRES_PER_MINUTE = 60_000; // in a m3/s
  private static final int PARAMETERS = 3;
  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
  private static final int GOLDEN_STEPS = 60; // narrows the exponent to 1e-12

  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException if one is not finite or not above zero, or the exponent
   *     outside 0.5 to 20
   */
  public PumpCurve {
    if (!(shutOffHead > 0 && coefficient > 0 && Double.isFinite(shutOffHead + coefficient))) {
      throw new IllegalArgumentException(
          "a pump curve starts above 0 m and falls; this one starts at %s m"
              .formatted(QuantityFormat.plain(shutOffHead)));
    }
    if (!(exponent >= LEAST_EXPONENT && exponent <= GREATEST_EXPONENT) || !(scatter >= 0)) {
      throw new IllegalArgumentException(
          "the exponent of a pump curve lies from 0.5 to 20, not at " + exponent);
    }
  }

  /**
   * The curve through or nearest to points.
   *
   * @param flow the flow rates in m3/s, rising, not negative; two or more
   * @param head the head at each in m, falling, above or at 0
   * @return the curve: exact through two points (as a parabola) and through three, nearest to more
   *     by least squares
   * @throws IllegalArgumentException if there are fewer than two points, a figure is negative or
   *     not finite, flows do not rise or heads do not fall, or no such curve runs through three
   *     points; the message names the point
   */
  public static PumpCurve through(double[] flow, double[] head) {
    requirePoints(flow, head);
    double low = LEAST_EXPONENT;
    double high = GREATEST_EXPONENT;
    if (flow.length < PARAMETERS) {
      return nearest(flow, head, PARABOLA);
    }
    for (int step = 0; step < GOLDEN_STEPS; step++) {
      double left = high - GOLDEN * (high - low);
      double right = low + GOLDEN * (high - low);
      if (squares(flow, head, left) <= squares(flow, head, right)) {
        high = right;
      } else {
        low = left;
      }
    }
    double exponent = (low + high) / 2;
    if (flow.length == PARAMETERS && Math.sqrt(squares(flow, head, exponent)) > EXACT * head[0]) {
      throw notOnACurve(flow, head);
    }
    return nearest(flow, head, exponent);
  }

  private static IllegalArgumentException notOnACurve(double[] flow, double[] head) {
    return new IllegalArgumentException(
        ("point 2 of the pump curve: %s m at %s L/min; a pump that has %s m at %s L/min and %s m at"
                + " %s L/min has from %s to %s m there: read the points again, or give more of them")
            .formatted(
                QuantityFormat.plain(head[1]),
                litresPerMinute(flow[1]),
                QuantityFormat.plain(head[0]),
                litresPerMinute(flow[0]),
                QuantityFormat.plain(head[2]),
                litresPerMinute(flow[2]),
                QuantityFormat.plain(between(flow, head, LEAST_EXPONENT)),
                QuantityFormat.plain(between(flow, head, GREATEST_EXPONENT))));
  }

  /** The head at the second of three flow rates by the curve through the others. */
  private static double between(double[] flow, double[] head, double exponent) {
    PumpCurve curve =
        nearest(new double[] {flow[0], flow[2]}, new double[] {head[0], head[2]}, exponent);
    return curve.headUnchecked(flow[1]);
  }

  private static void requirePoints(double[] flow, double[] head) {
    if (flow.length < 2 || flow.length != head.length) {
      throw new IllegalArgumentException(
          "a pump curve needs a head for each of two flow rates or more, not %s and %s"
              .formatted(flow.length, head.length));
    }
    for (int i = 0; i < flow.length; i++) {
      boolean bad = !(flow[i] >= 0 && head[i] >= 0 && Double.isFinite(flow[i] + head[i]));
      if (bad || (i > 0 && !(flow[i] > flow[i - 1] && head[i] < head[i - 1]))) {
        throw new IllegalArgumentException(
            "point %s of the pump curve: %s m at %s L/min; flow rates rise from 0 and heads fall to 0"
                .formatted(i + 1, QuantityFormat.plain(head[i]), litresPerMinute(flow[i])));
      }
    }
  }

  private static String litresPerMinute(double flow) {
    return QuantityFormat.plain(flow * LITRES_PER_MINUTE);
  }

  /** The least squares line of head over flow to the power given. */
  private static PumpCurve nearest(double[] flow, double[] head, double exponent) {
    double largest = flow[flow.length - 1];
    double[] x = new double[flow.length];
    for (int i = 0; i < x.length; i++) {
      x[i] = Math.pow(flow[i] / largest, exponent);
    }
    double meanX = mean(x);
    double meanHead = mean(head);
    double xx = 0;
    double xh = 0;
    for (int i = 0; i < x.length; i++) {
      xx += (x[i] - meanX) * (x[i] - meanX);
      xh += (x[i] - meanX) * (head[i] - meanHead);
    }
    double slope = -xh / xx;
    double start = meanHead + slope * meanX;
    double squares = 0;
    for (int i = 0; i < x.length; i++) {
      double off = head[i] - (start - slope * x[i]);
      squares += off * off;
    }
    int left = x.length - PARAMETERS;
    return new PumpCurve(
        start,
        slope / Math.pow(largest, exponent),
        exponent,
        left > 0 ? Math.sqrt(squares / left) : 0);
  }

  /** The mean, what each addition rounds off carried on to the next (Kahan's summation). */
  private static double mean(double[] values) {
    double sum = 0;
    double excess = 0;
    for (double value : values) {
      double rest = value - excess;
      double next = sum + rest;
      excess = (next - sum) - rest;
      sum = next;
    }
    return (sum - excess) / values.length;
  }

  private static double squares(double[] flow, double[] head, double exponent) {
    PumpCurve curve = nearest(flow, head, exponent);
    double sum = 0;
    for (int i = 0; i < flow.length; i++) {
      double off = head[i] - curve.headUnchecked(flow[i]);
      sum += off * off;
    }
    return sum;
  }

  /**
   * The head at a flow rate.
   *
   * @param flow the flow rate in m3/s, from 0 to run-out
   * @return the head in m
   * @throws IllegalArgumentException if the flow rate is negative, not finite or beyond run-out
   */
  public double head(double flow) {
    double most = runOut();
    if (!(flow >= 0 && flow <= most)) {
      throw new IllegalArgumentException(
          "the pump curve runs from 0 to %s L/min, where its head is zero; %s L/min is outside"
              .formatted(litresPerMinute(most), litresPerMinute(flow)));
    }
    return headUnchecked(flow);
  }

  /**
   * The head at a flow rate, for solvers: negative beyond run-out.
   *
   * @param flow the flow rate in m3/s, not negative
   * @return the head in m
   */
  public double headUnchecked(double flow) {
    return shutOffHead - coefficient * Math.pow(flow, exponent);
  }

  /**
   * The flow rate at which the head is zero.
   *
   * @return the flow rate in m3/s
   */
  public double runOut() {
    return Math.pow(shutOffHead / coefficient, 1 / exponent);
  }

  /**
   * The curve at another speed, by the {@link AffinityLaws}: A r², and B r^(2 − C).
   *
   * @param ratio the new speed divided by that of this curve, above 0
   * @return the curve at that speed
   */
  public PumpCurve atSpeed(double ratio) {
    return new PumpCurve(
        AffinityLaws.head(shutOffHead, ratio),
        coefficient * Math.pow(ratio, 2 - exponent),
        exponent,
        AffinityLaws.head(scatter, ratio));
  }
}

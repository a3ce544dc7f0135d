package kelter.hydraulics.fault;

/**
 * How far machines in one and the same state differ, the instrument left out.
 *
 * <p>For pumps in order the figures are those of ISO 9906:2012, 4.4.2, for pumps below 10 kW, which
 * no grade binds at the size of an appliance: an analogy, from memory. A tolerance is taken as the
 * half-width of a rectangular distribution. The growth with severity is judgement: common practice,
 * no source.
 */
public final class ModelSpread {

  /** Head: 8 % either way, as a standard deviation, ratio. */
  public static final double HEAD = 0.08 / Math.sqrt(3);

  /** Flow rate: 10 % either way, as a standard deviation, ratio. */
  public static final double FLOW = 0.10 / Math.sqrt(3);

  /** Head of a pump of which only the kind is known, as a standard deviation, ratio; judgement. */
  public static final double HEAD_OF_A_TYPICAL_PUMP = 0.25;

  /** Flow rate of such a pump, as a standard deviation, ratio; judgement. */
  public static final double FLOW_OF_A_TYPICAL_PUMP = 0.35;

  /** Power: 10 % either way, as a standard deviation, ratio; judgement. */
  public static final double POWER = 0.10 / Math.sqrt(3);

  /** Power of a drain pump whose nameplate is not known, ratio of a usual one; judgement. */
  public static final double POWER_OF_A_TYPICAL_PUMP = 0.5;

  /** Current: 15 % either way, as a standard deviation, ratio; judgement. */
  public static final double CURRENT = 0.15 / Math.sqrt(3);

  /**
   * Power and current of a motor that has voltage and does not turn, as a standard deviation,
   * ratio; judgement.
   */
  public static final double STALLED = 0.2;

  /** Speed of a motor: 2 % either way, as a standard deviation, ratio; judgement. */
  public static final double SPEED = 0.02 / Math.sqrt(3);

  /** A word on a scale from 0 to 1, as two people would choose it; judgement. */
  public static final double GRADE = 0.13;

  /** What the way of being faulty adds, as a ratio of the effect of the fault; judgement. */
  private static final double OF_EFFECT = 0.12;

  /**
   * How much of the variance of the head is the strength of this very pump, which all its readings
   * share; the rest differs from reading to reading; judgement.
   */
  private static final double OF_THE_PUMP = 0.8;

  /** What is left at least of the variance of a figure that moves with the pump; judgement. */
  private static final double LEAST_LEFT = 0.2;

  private ModelSpread() {}

  /**
   * How far the strengths of pumps of one kind differ: head and flow of one pump are high or low
   * together.
   *
   * @param head the spread of the head, ratio
   * @return the standard deviation of the strength, told as the head at no flow, ratio
   */
  public static double ofThePump(double head) {
    return head * Math.sqrt(OF_THE_PUMP);
  }

  /**
   * What is left of the spread of a figure beside what it shares with others.
   *
   * @param share the whole spread of machines in order, as a ratio of the figure
   * @param shared how far the figure moves with one standard deviation of what is shared, ratio
   * @return the spread of its own, ratio
   */
  public static double left(double share, double shared) {
    double whole = share * share;
    return Math.sqrt(Math.max(LEAST_LEFT * whole, whole - shared * shared));
  }

  /**
   * What is left of the spread of each figure beside what all share, one standard deviation of
   * which moves them.
   *
   * @param usual the figures where what is shared is as usual, each in its unit
   * @param moved the same where it is one standard deviation higher, in their order
   * @param share the whole spread of machines in order for each, as a ratio of it
   * @return the spread of their own by place, ratio
   */
  public static double[] left(double[] usual, double[] moved, double[] share) {
    double[] left = new double[usual.length];
    for (int i = 0; i < left.length; i++) {
      double shared = usual[i] == 0 ? 0 : moved[i] / usual[i] - 1;
      left[i] = left(share[i], shared);
    }
    return left;
  }

  /**
   * The spread of a figure.
   *
   * @param value the figure in this state, in any unit
   * @param healthy the figure of a machine in order, same unit
   * @param share the spread of machines in order, as a ratio of the figure
   * @param floor the least spread, same unit, above 0
   * @return the standard deviation, same unit
   */
  public static double of(double value, double healthy, double share, double floor) {
    double own = share * Math.abs(value);
    double effect = OF_EFFECT * Math.abs(value - healthy);
    return Math.sqrt(own * own + effect * effect + floor * floor);
  }

  /**
   * The spread of a figure of a pump that does not turn: what is nothing, is nothing for all.
   *
   * @param value the figure in this state, in any unit
   * @param floor the least spread, same unit, above 0
   * @return the standard deviation, same unit
   */
  public static double standing(double value, double floor) {
    return Math.hypot(STALLED * value, floor);
  }
}

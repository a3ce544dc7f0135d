package kelter.hydraulics.pumppart;

import kelter.core.diagnosis.model.Spread;

/**
 * How far pumps in one and the same state differ, the instrument left out. What a pump that stands
 * should show, and does not, is nothing for all.
 *
 * <p>For pumps in order the figures are those of ISO 9906:2012, 4.4.2, for pumps below 10 kW, which
 * no grade binds at the size of an appliance: an analogy, from memory. A tolerance is taken as the
 * half-width of a rectangular distribution. The growth with severity is judgement: common practice,
 * no source.
 *
 * @param turning what holds while the motor turns
 */
public record PumpSpread(Spread.Relative turning) implements Spread<Running> {

  /** Flow rate: 10 % either way, as a standard deviation, ratio. */
  public static final double FLOW = 0.10 / Math.sqrt(3);

  /** Flow rate of a pump of which only the kind is known, ratio; judgement. */
  public static final double FLOW_OF_A_TYPICAL_PUMP = 0.35;

  /** Speed of a motor: 2 % either way, as a standard deviation, ratio; judgement. */
  public static final double SPEED = 0.02 / Math.sqrt(3);

  /** Head: 8 % either way, as a standard deviation, ratio. */
  static final double HEAD = 0.08 / Math.sqrt(3);

  /** Head of a pump of which only the kind is known, ratio; judgement. */
  static final double HEAD_OF_A_TYPICAL_PUMP = 0.25;

  /** Power: 10 % either way, as a standard deviation, ratio; judgement. */
  static final double POWER = 0.10 / Math.sqrt(3);

  /** Power of a pump whose nameplate is not known, ratio of a usual one; judgement. */
  static final double POWER_OF_A_TYPICAL_PUMP = 0.5;

  /** Current: 15 % either way, as a standard deviation, ratio; judgement. */
  static final double CURRENT = 0.15 / Math.sqrt(3);

  /**
   * How much of the variance of the head is the strength of this very pump, which all its readings
   * share; the rest differs from reading to reading; judgement.
   */
  static final double OF_THE_PUMP = 0.8;

  /** A motor that has voltage and does not turn: power and current, ratio; judgement. */
  private static final double STALLED = 0.2;

  /** What the way of being faulty adds, as a ratio of the effect of the fault; judgement. */
  private static final double OF_EFFECT = 0.12;

  /**
   * A figure that is there whether the pump turns or not.
   *
   * @param share the spread of machines in order, as a ratio of the figure
   * @param floor the least spread, in the unit of the figure, above 0
   * @return the rule
   */
  public static Spread.Relative always(double share, double floor) {
    return Spread.relative(share).atLeast(floor).andOfEffect(OF_EFFECT).lessShared();
  }

  /**
   * A figure that the pump makes by turning.
   *
   * @param share the spread of machines in order, as a ratio of the figure
   * @param floor the least spread, in the unit of the figure, above 0
   * @return the rule
   */
  public static PumpSpread turning(double share, double floor) {
    return new PumpSpread(always(share, floor));
  }

  @Override
  public double of(double value, InOrder order, Running pump) {
    return pump.point().turns()
        ? turning.of(value, order, pump)
        : Math.hypot(STALLED * value, turning.floor());
  }
}

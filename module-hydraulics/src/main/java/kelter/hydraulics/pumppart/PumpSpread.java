package kelter.hydraulics.pumppart;

import kelter.core.diagnosis.model.Spread;
import kelter.core.diagnosis.model.State;

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
 * @param byHead how the figure follows the head: the change of it by that of the head, ratio
 * @param byMotor what the way in which the motor is slow adds, as a ratio of the effect of that
 */
public record PumpSpread(Spread.Relative turning, double byHead, double byMotor)
    implements Spread<Running> {

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

  /**
   * What a motor draws that is slow: by its capacitor, by its winding or by its control, ratio of
   * the effect; judgement.
   */
  private static final double OF_SLOW_MOTOR = 0.3;

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
    return new PumpSpread(always(share, floor), 0, 0);
  }

  /**
   * The same where the figure follows the head, of which a fault may leave open how much is lost.
   *
   * @param exponent the change of the figure by that of the head, ratio
   * @return the rule
   */
  public PumpSpread following(double exponent) {
    return new PumpSpread(turning, exponent, byMotor);
  }

  /**
   * What the motor takes from the mains.
   *
   * @param share the spread of machines in order, as a ratio of the figure
   * @param floor the least spread, in the unit of the figure, above 0
   * @return the rule
   */
  static PumpSpread drawn(double share, double floor) {
    return new PumpSpread(always(share, floor), 0, OF_SLOW_MOTOR);
  }

  @Override
  public double of(double value, InOrder order, Running pump) {
    if (!pump.point().turns()) {
      return Math.hypot(STALLED * value, turning.floor());
    }
    State state = pump.state();
    double lost = byHead * state.of(PumpFigure.HEAD_OPEN) / state.of(PumpFigure.HEAD) * value;
    double slow = state.of(PumpFigure.SPEED) < 1 ? byMotor * (value - order.value()) : 0;
    return Math.hypot(turning.of(value, order, pump), Math.hypot(lost, slow));
  }
}

package kelter.hydraulics.circuit;

/**
 * What a pump, its motor and a circuit agree on.
 *
 * @param flow the flow rate through the circuit in m3/s, not negative; 0 where the pump cannot lift
 *     the water
 * @param internalFlow the flow rate through the impeller in m3/s: the same and what runs back
 *     inside
 * @param head the head of the pump in m, not negative
 * @param speed the speed of the shaft as a ratio of the rated one, not negative
 * @param torque the torque of the motor as a ratio of the rated one; for one that is stalled, what
 *     it gives at standstill
 */
public record OperatingPoint(
    double flow, double internalFlow, double head, double speed, double torque) {

  /**
   * Whether the motor turns.
   *
   * @return false if it is stalled
   */
  public boolean turns() {
    return speed > 0;
  }

  /**
   * The power on the shaft.
   *
   * @return speed times torque, as a ratio of the rated power
   */
  public double shaftPower() {
    return speed * torque;
  }
}

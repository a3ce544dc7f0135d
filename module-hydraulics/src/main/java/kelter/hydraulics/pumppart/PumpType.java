package kelter.hydraulics.pumppart;

import kelter.hydraulics.circuit.PumpMotor;
import kelter.hydraulics.pump.PumpCurve;

/**
 * What is taken of a pump of a kind where the job does not say.
 *
 * @param flows the flow rates of its curve, the first one 0, m³/s
 * @param heads the heads there, m
 * @param motor its motor on the mains
 * @param motorEfficiency the efficiency of that at its rated point, ratio
 * @param leastNoFlowTorque the least torque at no flow by that at the rated point, ratio
 * @param power its electric power, W; NaN if pumps of the kind differ too much to forecast any
 * @param headFloor by how much heads differ at least, m
 * @param powerFloor by how much powers differ at least, W
 */
public record PumpType(
    double[] flows,
    double[] heads,
    PumpMotor motor,
    double motorEfficiency,
    double leastNoFlowTorque,
    double power,
    double headFloor,
    double powerFloor) {

  /** The torque at no flow by that at the rated point where the power is not known; judgement. */
  private static final double USUAL_NO_FLOW_TORQUE = 0.5;

  /** The greatest; judgement. */
  private static final double GREATEST_NO_FLOW_TORQUE = 0.85;

  PumpCurve curve() {
    return PumpCurve.through(flows, heads);
  }

  /**
   * The torque at no flow by that at the rated point.
   *
   * @param toWater the power that the rated flow takes at the head at no flow, by the rated
   *     electric power, ratio; NaN if that is not known
   */
  double noFlowTorque(double toWater) {
    return Double.isNaN(toWater)
        ? USUAL_NO_FLOW_TORQUE
        : Math.min(
            GREATEST_NO_FLOW_TORQUE, Math.max(leastNoFlowTorque, 1 - toWater / motorEfficiency));
  }
}

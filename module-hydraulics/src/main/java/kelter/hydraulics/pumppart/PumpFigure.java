package kelter.hydraulics.pumppart;

import kelter.core.diagnosis.model.Figure;

/** What faults can change of a pump with its motor. */
public enum PumpFigure implements Figure {
  /** Its head at no flow by that of its kind: the strength of this very pump; ratio. */
  STRENGTH(1),
  /** The share of its vane passages that is open, ratio. */
  OPEN_PASSAGES(1),
  /** Its head by that with all vanes at work and no air in the water, ratio. */
  HEAD(1),
  /** How far that head may differ, standard deviation in the same ratio. */
  HEAD_OPEN(0),
  /** The density of what it moves by that of water without air, ratio. */
  DENSITY(1),
  /** The share of the speed that is lost between shaft and impeller, ratio. */
  SLIP(0),
  /** The flow that runs back inside at the rated head, by the rated flow, ratio. */
  LEAK(0),
  /** The torque of bearings, seals and rubbing by the rated torque, ratio. */
  DRAG(0),
  /** The speed that the motor has without a load by what it should be, ratio. */
  SPEED(1),
  /** Whether no current can flow, since the winding is open: 1, else 0. */
  OPEN_WINDING(0),
  /** Whether no current can flow, since there is no voltage: 1, else 0. */
  NO_VOLTAGE(0),
  /** How much louder it is than usual, on the scale of {@link PumpNoise}. */
  LOUDNESS(0),
  /** Debris in it, place on a scale from 0 to 1; judgement. */
  DEBRIS(0.1),
  /** How hard it is to turn by hand, place on a scale from 0 to 1; judgement. */
  STIFFNESS(0.1);

  private final double inOrder;

  PumpFigure(double inOrder) {
    this.inOrder = inOrder;
  }

  @Override
  public double inOrder() {
    return inOrder;
  }
}

package kelter.hydraulics.drainpump;

import kelter.core.diagnosis.model.Figure;

/** What faults can change on the way of the water out, beside the pump itself. */
enum DrainFigure implements Figure {
  /** The share of the bore of the strainer that is closed, ratio. */
  STRAINER_CLOSED(0),
  /** The share of the bore of the hose that is closed, ratio. */
  HOSE_CLOSED(0),
  /** The share of the bore of the check valve that does not open, ratio. */
  VALVE_CLOSED(0),
  /** How far the check valve stays open, from 0 to 1. */
  VALVE_OPEN(0),
  /** How far the flap of the check valve is from where it should be, from 0 to 1. */
  VALVE_HANGS(0),
  /** How much higher the outlet is than it should be, m. */
  TOO_HIGH(0),
  /** The share of the flow that escapes near the end of the hose, ratio. */
  ESCAPING(0),
  /** What the strainer looks like, place on a scale from 0 to 1; judgement. */
  STRAINER(0.1),
  /** Tracks of dried water along the hose, place on a scale from 0 to 1; judgement. */
  TRACKS(0.1);

  private final double inOrder;

  DrainFigure(double inOrder) {
    this.inOrder = inOrder;
  }

  @Override
  public double inOrder() {
    return inOrder;
  }
}

package kelter.hydraulics.airway;

import kelter.core.diagnosis.model.Figure;

/** What faults change on the way of the air. */
enum AirwayFigure implements Figure {
  /** Loss of the part, ratio to the one in order. */
  LOSS(1),
  /** How dirty it looks, place on the scale from clean to clogged: dust is usual; from memory. */
  DIRT(0.28),
  /** How much lint lines it, place on the scale from clean to blocked. */
  LINED(0.12),
  /** Chance that it is found thinner or longer than the machine allows. */
  THIN(0.04),
  /** How hard a flap swings, place on the scale from freely to stuck. */
  STIFF(0.1),
  /** Conductance of heat to the air, ratio to the one in order. */
  CONDUCTANCE(1);

  private final double inOrder;

  AirwayFigure(double inOrder) {
    this.inOrder = inOrder;
  }

  @Override
  public double inOrder() {
    return inOrder;
  }
}

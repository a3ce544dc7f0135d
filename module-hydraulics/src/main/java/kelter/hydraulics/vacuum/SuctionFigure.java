package kelter.hydraulics.vacuum;

import kelter.core.diagnosis.model.Figure;

/** What faults change on the way of the air. */
enum SuctionFigure implements Figure {
  /** Loss of the hose, ratio to the one in order. */
  LOSS(1),
  /** Area of what leaks, m2. */
  LEAK(0),
  /** How full the bag or bin is, place on the scale. */
  FULL(0.25);

  private final double inOrder;

  SuctionFigure(double inOrder) {
    this.inOrder = inOrder;
  }

  @Override
  public double inOrder() {
    return inOrder;
  }
}

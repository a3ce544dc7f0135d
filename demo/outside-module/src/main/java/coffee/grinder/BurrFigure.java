package coffee.grinder;

import kelter.core.diagnosis.model.Figure;

/** What faults change on burrs. */
enum BurrFigure implements Figure {
  /** Grinding rate, ratio to the one in order. */
  RATE(1),
  /** Share of a dose that stays behind in the burrs and the chute. */
  KEPT(0.02),
  /** State of the edges, place on the scale from sharp to chipped. */
  EDGE(0.15);

  private final double inOrder;

  BurrFigure(double inOrder) {
    this.inOrder = inOrder;
  }

  @Override
  public double inOrder() {
    return inOrder;
  }
}

package kelter.hydraulics.condensate;

import kelter.core.diagnosis.model.Figure;

/** What faults change on the way of the water. */
enum RunOffFigure implements Figure {
  /** How badly poured water runs away, place on the scale. */
  SLOW(0.08),
  /** How far it is split, 0 to 1. */
  SPLIT(0),
  /** Chance that water or ice stands where it should run away. */
  STANDS(0.05),
  /** Resistance of the winding, ratio to the one in order. */
  WINDING(1),
  /** How clogged the impeller is, place on the scale. */
  LINT(0.12),
  /** Chance that the pump is heard to run when its tray is filled. */
  RUNS(0.96);

  private final double inOrder;

  RunOffFigure(double inOrder) {
    this.inOrder = inOrder;
  }

  @Override
  public double inOrder() {
    return inOrder;
  }
}

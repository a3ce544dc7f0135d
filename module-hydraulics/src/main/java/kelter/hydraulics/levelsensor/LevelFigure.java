package kelter.hydraulics.levelsensor;

import kelter.core.diagnosis.model.Figure;

/** What faults change on the measuring of the level. */
enum LevelFigure implements Figure {
  /** Pressure that reaches the sensor, ratio to that in an air trap in order. */
  PASSED(1),
  /** Height that the sensor makes of the water, ratio to the true one. */
  SHOWN(1),
  /** What lies in the trap, place on the scale from clean to clogged. */
  DEBRIS(0.12),
  /** How far tube, trap or sensor are open to the air, 0 to 1. */
  LEAK(0);

  private final double inOrder;

  LevelFigure(double inOrder) {
    this.inOrder = inOrder;
  }

  @Override
  public double inOrder() {
    return inOrder;
  }
}

package kelter.electrical.brushmotor;

import kelter.core.diagnosis.model.Figure;

/** What faults change of a motor with brushes and of its tacho. */
enum BrushFigure implements Figure {
  /** Resistance of the rotor by way of the brushes, ratio to the one in order. */
  ROTOR(1),
  /** Resistance of the field winding, ratio to the one in order. */
  FIELD(1),
  /** How hard it turns by hand, from 0 to 1. */
  STIFFNESS(0.1),
  /** How bad the commutator looks, from 0 to 1. */
  COMMUTATOR(0.2),
  /** Length of the brushes: 0 where they are changed, 1 as new. */
  LENGTH(0.5),
  /** Resistance of the tacho, ratio to the one in order. */
  TACHO(1),
  /** Chance that the magnet of the tacho turns on its shaft. */
  MAGNET(0.02);

  private final double inOrder;

  BrushFigure(double inOrder) {
    this.inOrder = inOrder;
  }

  @Override
  public double inOrder() {
    return inOrder;
  }
}

package kelter.hydraulics.inletvalve;

import kelter.core.diagnosis.model.Figure;

/** What faults change on the way of the water in. */
enum InletFigure implements Figure {
  /** Pressure of the supply without flow, ratio of the usual one. */
  PRESSURE(1),
  /** Flow rate that the tap lets out at the same pressure, ratio. */
  TAP(1),
  /** What more is in the way, loss coefficient by the velocity in the hose. */
  LOSS(0),
  /** Flow coefficient of the open valve, ratio. */
  OPENING(1),
  /** The screens, place on the scale from clean to clogged. */
  SCREEN(0.12),
  /** How far the hose is kinked, 0 to 1. */
  KINK(0),
  /** How far the closed valve stands open, 0 to 1. */
  LEAK(0);

  private final double inOrder;

  InletFigure(double inOrder) {
    this.inOrder = inOrder;
  }

  @Override
  public double inOrder() {
    return inOrder;
  }
}

package kelter.electrical.compressor;

import kelter.core.diagnosis.model.Figure;

/** What faults change of the motor of a compressor. */
enum CompressorFigure implements Figure {
  /** Resistance of the run winding, ratio to the one in order. */
  RUN(1),
  /** Resistance of the start winding, ratio to the one in order. */
  START(1),
  /** Current when it should run, ratio to the running current. */
  CURRENT(1),
  /** What leaks to earth beside the insulation in order, S. */
  LEAK(0),
  /** Chance that it is heard to hum and click off. */
  HUMS(0.05);

  private final double inOrder;

  CompressorFigure(double inOrder) {
    this.inOrder = inOrder;
  }

  @Override
  public double inOrder() {
    return inOrder;
  }
}

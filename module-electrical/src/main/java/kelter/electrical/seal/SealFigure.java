package kelter.electrical.seal;

import kelter.core.diagnosis.model.Figure;

/** What a leak changes of a gasket, a seal or a body. */
enum SealFigure implements Figure {
  /** How bad it looks, from 0 to 1. */
  CONDITION(0.15),
  /** Chance that traces are seen beside it. */
  TRACES(0.06),
  /** Chance that dry paper below gets wet, or a strip in the gap slips. */
  PAPER(0.04);

  private final double inOrder;

  SealFigure(double inOrder) {
    this.inOrder = inOrder;
  }

  @Override
  public double inOrder() {
    return inOrder;
  }
}

package kelter.hydraulics.washpump;

import kelter.core.diagnosis.model.Figure;

/** What faults can change in the circuit of the wash water, beside the pump itself. */
enum WashFigure implements Figure {
  /** The height of the water above the pump inlet by its working height, ratio. */
  LEVEL(1),
  /** The share of the jets that is open, ratio. */
  OPEN_JETS(1),
  /** What lets water escape before the jets by the area of the jets, ratio. */
  ESCAPE(0),
  /** The share of the bore of the filter that is closed, ratio. */
  FILTER_CLOSED(0),
  /** The probability that the spray comes and goes for want of water at the filter. */
  STARVING(0),
  /** What the filter looks like, place on a scale from 0 to 1; judgement. */
  FILTER(0.1);

  private final double inOrder;

  WashFigure(double inOrder) {
    this.inOrder = inOrder;
  }

  @Override
  public double inOrder() {
    return inOrder;
  }
}

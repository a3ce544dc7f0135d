package kelter.hydraulics.vacuum;

import kelter.core.diagnosis.model.Figure;
import kelter.core.diagnosis.model.FigureSet;

/** What faults change on the way of the air. */
final class SuctionFigure {

  static final FigureSet ALL = new FigureSet("suction");
  static final Figure LOSS = ALL.figure("loss of the hose, ratio to the one in order", 1);
  static final Figure LEAK = ALL.figure("area of what leaks, m2", 0);
  static final Figure FULL = ALL.figure("how full the bag or bin is, place on the scale", 0.25);

  private SuctionFigure() {}
}

package coffee.grinder;

import kelter.core.diagnosis.model.Figure;
import kelter.core.diagnosis.model.FigureSet;

/** What faults change on burrs. */
final class BurrFigure {

  static final FigureSet ALL = new FigureSet("burr");
  static final Figure RATE = ALL.figure("grinding rate, ratio to the one in order", 1);
  static final Figure KEPT =
      ALL.figure("share of a dose that stays behind in the burrs and the chute", 0.02);
  static final Figure EDGE =
      ALL.figure("state of the edges, place on the scale from sharp to chipped", 0.15);

  private BurrFigure() {}
}

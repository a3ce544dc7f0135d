package kelter.hydraulics.condensate;

import kelter.core.diagnosis.model.Figure;
import kelter.core.diagnosis.model.FigureSet;

/** What faults change on the way of the water. */
final class RunOffFigure {

  static final FigureSet ALL = new FigureSet("run-off");
  static final Figure SLOW =
      ALL.figure("how badly poured water runs away, place on the scale", 0.08);
  static final Figure SPLIT = ALL.figure("how far it is split, 0 to 1", 0);
  static final Figure STANDS =
      ALL.figure("chance that water or ice stands where it should run away", 0.05);
  static final Figure WINDING =
      ALL.figure("resistance of the winding, ratio to the one in order", 1);
  static final Figure LINT = ALL.figure("how clogged the impeller is, place on the scale", 0.12);
  static final Figure RUNS =
      ALL.figure("chance that the pump is heard to run when its tray is filled", 0.96);

  private RunOffFigure() {}
}

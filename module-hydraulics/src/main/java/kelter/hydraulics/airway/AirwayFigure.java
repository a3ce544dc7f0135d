package kelter.hydraulics.airway;

import kelter.core.diagnosis.model.Figure;
import kelter.core.diagnosis.model.FigureSet;

/** What faults change on the way of the air. */
final class AirwayFigure {

  static final FigureSet ALL = new FigureSet("airway");
  static final Figure LOSS = ALL.figure("loss of the part, ratio to the one in order", 1);
  static final Figure DIRT =
      ALL.figure(
          "how dirty it looks, place on the scale from clean to clogged: dust is usual; from memory",
          0.28);
  static final Figure LINED =
      ALL.figure("how much lint lines it, place on the scale from clean to blocked", 0.12);
  static final Figure THIN =
      ALL.figure("chance that it is found thinner or longer than the machine allows", 0.04);
  static final Figure STIFF =
      ALL.figure("how hard a flap swings, place on the scale from freely to stuck", 0.1);
  static final Figure CONDUCTANCE =
      ALL.figure("conductance of heat to the air, ratio to the one in order", 1);

  private AirwayFigure() {}
}

package kelter.hydraulics.levelsensor;

import kelter.core.diagnosis.model.Figure;
import kelter.core.diagnosis.model.FigureSet;

/** What faults change on the measuring of the level. */
final class LevelFigure {

  static final FigureSet ALL = new FigureSet("level");
  static final Figure PASSED =
      ALL.figure("pressure that reaches the sensor, ratio to that in an air trap in order", 1);
  static final Figure SHOWN =
      ALL.figure("height that the sensor makes of the water, ratio to the true one", 1);
  static final Figure DEBRIS =
      ALL.figure("what lies in the trap, place on the scale from clean to clogged", 0.12);
  static final Figure LEAK =
      ALL.figure("how far tube, trap or sensor are open to the air, 0 to 1", 0);

  private LevelFigure() {}
}

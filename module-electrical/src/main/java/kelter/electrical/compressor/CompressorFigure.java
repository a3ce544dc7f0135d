package kelter.electrical.compressor;

import kelter.core.diagnosis.model.Figure;
import kelter.core.diagnosis.model.FigureSet;

/** What faults change of the motor of a compressor. */
final class CompressorFigure {

  static final FigureSet ALL = new FigureSet("compressor");
  static final Figure RUN =
      ALL.figure("resistance of the run winding, ratio to the one in order", 1);
  static final Figure START =
      ALL.figure("resistance of the start winding, ratio to the one in order", 1);
  static final Figure CURRENT =
      ALL.figure("current when it should run, ratio to the running current", 1);
  static final Figure LEAK = ALL.figure("what leaks to earth beside the insulation in order, S", 0);
  static final Figure HUMS = ALL.figure("chance that it is heard to hum and click off", 0.05);

  private CompressorFigure() {}
}

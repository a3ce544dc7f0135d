package kelter.hydraulics.inletvalve;

import kelter.core.diagnosis.model.Figure;
import kelter.core.diagnosis.model.FigureSet;

/** What faults change on the way of the water in. */
final class InletFigure {

  static final FigureSet ALL = new FigureSet("inlet");
  static final Figure PRESSURE =
      ALL.figure("pressure of the supply without flow, ratio of the usual one", 1);
  static final Figure TAP =
      ALL.figure("flow rate that the tap lets out at the same pressure, ratio", 1);
  static final Figure LOSS =
      ALL.figure("what more is in the way, loss coefficient by the velocity in the hose", 0);
  static final Figure OPENING = ALL.figure("flow coefficient of the open valve, ratio", 1);
  static final Figure SCREEN =
      ALL.figure("the screens, place on the scale from clean to clogged", 0.12);
  static final Figure KINK = ALL.figure("how far the hose is kinked, 0 to 1", 0);
  static final Figure LEAK = ALL.figure("how far the closed valve stands open, 0 to 1", 0);

  private InletFigure() {}
}

package kelter.hydraulics.brew;

import kelter.core.diagnosis.model.Figure;
import kelter.core.diagnosis.model.FigureSet;

/** What faults change on the way of the brewing water. */
final class BrewFigure {

  static final FigureSet ALL = new FigureSet("brew");
  static final Figure FLOW = ALL.figure("flow rate of the pump without pressure, ratio", 1);
  static final Figure PRESSURE = ALL.figure("pressure of the pump without flow, ratio", 1);
  static final Figure SOUND =
      ALL.figure("sound of the pump, place on the scale from silent to rattling", 0.62);
  static final Figure COIL_OPEN =
      ALL.figure("chance that its coil conducts in neither direction", 0.03);
  static final Figure WANTS_PRIMING =
      ALL.figure("chance that it pumps only once water is pushed into it", 0.04);
  static final Figure SUCTION = ALL.figure("what the valve of the tank lets through, ratio", 1);
  static final Figure OPENS_AT =
      ALL.figure("pressure at which the over-pressure valve opens, ratio", 1);
  static final Figure JET = ALL.figure("open bore of the brew jet, ratio", 1);
  static final Figure SCREEN = ALL.figure("open area of the group screen, ratio", 1);
  static final Figure EXHAUST =
      ALL.figure("share that the three-way valve lets into the tray while it brews, 0 to 1", 0);

  private BrewFigure() {}
}

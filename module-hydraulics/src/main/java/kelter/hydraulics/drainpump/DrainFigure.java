package kelter.hydraulics.drainpump;

import kelter.core.diagnosis.model.Figure;
import kelter.core.diagnosis.model.FigureSet;

/** What faults can change on the way of the water out, beside the pump itself. */
final class DrainFigure {

  static final FigureSet ALL = new FigureSet("drain");
  static final Figure STRAINER_CLOSED =
      ALL.figure("the share of the bore of the strainer that is closed, ratio", 0);
  static final Figure HOSE_CLOSED =
      ALL.figure("the share of the bore of the hose that is closed, ratio", 0);
  static final Figure VALVE_CLOSED =
      ALL.figure("the share of the bore of the check valve that does not open, ratio", 0);
  static final Figure VALVE_OPEN = ALL.figure("how far the check valve stays open, from 0 to 1", 0);
  static final Figure VALVE_HANGS =
      ALL.figure("how far the flap of the check valve is from where it should be, from 0 to 1", 0);
  static final Figure TOO_HIGH =
      ALL.figure("how much higher the outlet is than it should be, m", 0);
  static final Figure ESCAPING =
      ALL.figure("the share of the flow that escapes near the end of the hose, ratio", 0);
  static final Figure STRAINER =
      ALL.figure("what the strainer looks like, place on a scale from 0 to 1; judgement", 0.1);
  static final Figure TRACKS =
      ALL.figure(
          "tracks of dried water along the hose, place on a scale from 0 to 1; judgement", 0.1);

  private DrainFigure() {}
}

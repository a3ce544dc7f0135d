package kelter.electrical.regulating;

import kelter.core.diagnosis.model.Figure;
import kelter.core.diagnosis.model.FigureSet;
import kelter.electrical.component.Electrical;

/** What faults change of a thermostat; in order as from memory. */
final class Governing {

  static final FigureSet ALL = new FigureSet("governing");
  static final Figure CLOSED = ALL.figure("resistance while it should be closed, Ohm", 0.1);
  static final Figure OPENED =
      ALL.figure("resistance while it should be open, Ohm", Electrical.RESISTANCE.high());
  static final Figure OVERSHOOT =
      ALL.figure("how far it goes beyond its setting before it opens, K", 0);

  private Governing() {}
}

package kelter.electrical.control;

import kelter.core.diagnosis.model.Figure;
import kelter.core.diagnosis.model.FigureSet;
import kelter.electrical.component.Electrical;

/** What faults change of a control board; in order as from memory. */
final class BoardFigure {

  static final FigureSet ALL = new FigureSet("board");
  static final Figure OUTPUT =
      ALL.figure("voltage at a load that is called for, as a ratio of the supply", 1);
  static final Figure ACROSS =
      ALL.figure("resistance across an output that is off, Ohm", Electrical.RESISTANCE.high());
  static final Figure IGNORED =
      ALL.figure("chance that a sound load is seen to stay dead while it is called for", 0.03);
  static final Figure STAYS_ON =
      ALL.figure("chance that a load is seen to run though nothing calls for it", 0.02);
  static final Figure DARK = ALL.figure("chance that the board shows no sign of life", 0.02);
  static final Figure BUTTONS = ALL.figure("how many of its buttons do nothing, from 0 to 1", 0.03);
  static final Figure BURNS = ALL.figure("burnt look, from 0 to 1", 0.08);
  static final Figure NO_DEFROST =
      ALL.figure("chance that a forced defrost is seen to heat nothing", 0.03);

  private BoardFigure() {}
}

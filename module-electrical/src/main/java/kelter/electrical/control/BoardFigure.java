package kelter.electrical.control;

import kelter.core.diagnosis.model.Figure;
import kelter.electrical.component.Electrical;

/** What faults change of a control board; in order as from memory. */
enum BoardFigure implements Figure {
  /** Voltage at a load that is called for, as a ratio of the supply. */
  OUTPUT(1),
  /** Resistance across an output that is off, Ohm. */
  ACROSS(Electrical.RESISTANCE.high()),
  /** Chance that a sound load is seen to stay dead while it is called for. */
  IGNORED(0.03),
  /** Chance that a load is seen to run though nothing calls for it. */
  STAYS_ON(0.02),
  /** Chance that the board shows no sign of life. */
  DARK(0.02),
  /** How many of its buttons do nothing, from 0 to 1. */
  BUTTONS(0.03),
  /** Burnt look, from 0 to 1. */
  BURNS(0.08),
  /** Chance that a forced defrost is seen to heat nothing. */
  NO_DEFROST(0.03);

  private final double inOrder;

  BoardFigure(double inOrder) {
    this.inOrder = inOrder;
  }

  @Override
  public double inOrder() {
    return inOrder;
  }
}

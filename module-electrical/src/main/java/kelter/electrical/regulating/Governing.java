package kelter.electrical.regulating;

import kelter.core.diagnosis.model.Figure;
import kelter.electrical.component.Electrical;

/** What faults change of a thermostat; in order as from memory. */
enum Governing implements Figure {
  /** Resistance while it should be closed, Ohm. */
  CLOSED(0.1),
  /** Resistance while it should be open, Ohm. */
  OPENED(Electrical.RESISTANCE.high()),
  /** How far it goes beyond its setting before it opens, K. */
  OVERSHOOT(0);

  private final double inOrder;

  Governing(double inOrder) {
    this.inOrder = inOrder;
  }

  @Override
  public double inOrder() {
    return inOrder;
  }
}

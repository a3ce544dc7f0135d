package kelter.electrical.contact;

import kelter.core.diagnosis.model.Figure;

/** What faults change of a path that should conduct; in order as from memory. */
public enum Path implements Figure {
  /** Resistance on an ordinary meter, Ohm. */
  RESISTANCE(0.1),
  /** Chance that somebody notices that it does not conduct. */
  NOTICED(0.03);

  private final double inOrder;

  Path(double inOrder) {
    this.inOrder = inOrder;
  }

  @Override
  public double inOrder() {
    return inOrder;
  }
}

package kelter.electrical.contact;

import kelter.core.diagnosis.model.Effect;
import kelter.core.diagnosis.model.Figure;
import kelter.electrical.component.Electrical;

/** What faults change of a contact beside what it conducts when closed; in order as from memory. */
public enum SwitchContact implements Figure {
  /** Resistance while it should be open, on an ordinary meter, Ohm. */
  OPENED(Electrical.RESISTANCE.high()),
  /** How burnt or damaged it looks, from 0 to 1. */
  MARKS(0.1);

  /** What a welded contact reads, Ohm; from memory. */
  private static final double WELDED = 0.1;

  private final double inOrder;

  SwitchContact(double inOrder) {
    this.inOrder = inOrder;
  }

  @Override
  public double inOrder() {
    return inOrder;
  }

  /**
   * A contact that stays closed.
   *
   * @return what such a fault changes
   */
  public static Effect welded() {
    return OPENED.becomes(WELDED);
  }
}

package kelter.electrical.contact;

import kelter.core.diagnosis.model.Course;
import kelter.core.diagnosis.model.Effect;
import kelter.core.diagnosis.model.Figure;
import kelter.electrical.component.Electrical;

/** What faults change of a path that should conduct; in order as from memory. */
public enum Path implements Figure {
  /** Resistance on an ordinary meter, Ohm. */
  RESISTANCE(0.1);

  private final double inOrder;

  Path(double inOrder) {
    this.inOrder = inOrder;
  }

  @Override
  public double inOrder() {
    return inOrder;
  }

  /**
   * A path that conducts poorly.
   *
   * @param first its resistance where that begins, Ohm, above 0
   * @param ratio by what it has risen at severity 1
   * @return what such a fault changes
   */
  public static Effect poor(double first, double ratio) {
    return RESISTANCE.becomes(Course.power(first, ratio));
  }

  /**
   * A path that does not conduct.
   *
   * @return what such a fault changes
   */
  public static Effect open() {
    return RESISTANCE.becomes(Electrical.RESISTANCE.high());
  }
}

package kelter.electrical.contact;

import kelter.core.diagnosis.model.Course;
import kelter.core.diagnosis.model.Effect;
import kelter.core.diagnosis.model.Figure;
import kelter.electrical.component.Electrical;

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

  /**
   * A path that conducts poorly.
   *
   * @param first its resistance where that begins, Ohm, above 0
   * @param ratio by what it has risen at severity 1
   * @param noticed the chance that somebody notices it where it begins, from 0 to 1
   * @param atWorst the same at severity 1
   * @return what such a fault changes
   */
  public static Effect[] poor(double first, double ratio, double noticed, double atWorst) {
    return new Effect[] {
      RESISTANCE.becomes(Course.power(first, ratio)), NOTICED.becomes(Course.line(noticed, atWorst))
    };
  }

  /**
   * A path that does not conduct.
   *
   * @param noticed the chance that somebody notices it, from 0 to 1
   * @return what such a fault changes
   */
  public static Effect[] open(double noticed) {
    return new Effect[] {
      RESISTANCE.becomes(Electrical.RESISTANCE.high()), NOTICED.becomes(noticed)
    };
  }
}

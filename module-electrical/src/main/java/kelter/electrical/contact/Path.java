package kelter.electrical.contact;

import kelter.core.diagnosis.model.Course;
import kelter.core.diagnosis.model.Effect;
import kelter.core.diagnosis.model.Figure;
import kelter.core.diagnosis.model.FigureSet;
import kelter.electrical.component.Electrical;

/** What faults change of a path that should conduct; in order as from memory. */
public final class Path {

  public static final FigureSet ALL = new FigureSet("path");
  public static final Figure RESISTANCE = ALL.figure("resistance on an ordinary meter, Ohm", 0.1);

  /** The most that a burnt contact has while it touches, Ohm; from memory. */
  private static final double BURNT = 1e6;

  /** What share of burnt contacts does not touch any more, as a ratio; from memory. */
  private static final double BURNT_OFF = 0.2;

  private Path() {}

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
   * How a path goes that parts, strand by strand: it conducts ever worse, and in the worst of
   * machines not at all. A meter shows anything from an ohm to over range, the ends of that most
   * often.
   *
   * @param first its resistance where that begins, Ohm, above 0
   * @param worst the most that it has while its ends still touch, Ohm, above {@code first}
   * @param apart in what share of machines they do not touch, 0 to 1
   * @return the resistance, Ohm, by the severity
   */
  public static Course parting(double first, double worst, double apart) {
    double touching = 1 - apart;
    return severity ->
        severity < touching
            ? first * Math.pow(worst / first, Math.pow(severity / touching, 2))
            : Electrical.RESISTANCE.high();
  }

  /**
   * A contact that burns: few ohms at first, at last it does not conduct.
   *
   * @param first its resistance where that begins, Ohm, above 0
   * @return the resistance, Ohm, by the severity
   */
  public static Course burning(double first) {
    return parting(first, BURNT, BURNT_OFF);
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

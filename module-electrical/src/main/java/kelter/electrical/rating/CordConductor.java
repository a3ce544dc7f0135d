package kelter.electrical.rating;

import kelter.core.job.Component;
import kelter.core.law.CopperResistance;
import kelter.electrical.component.CordWords;
import kelter.electrical.conductor.ConductorResistance;
import kelter.electrical.conductor.ConductorResistance.Build;

/** One conductor of a supply cord: its resistance by length and section (IEC 60228, class 5). */
public final class CordConductor {

  /** Section where none is stated, m²; common practice, no source. */
  private static final double USUAL_SECTION = 1.5e-6;

  /**
   * The temperature at which a cord in order works, K: 70 °C of its PVC, IEC 60227, from memory.
   */
  private static final double WARM = 343.15;

  private CordConductor() {}

  /**
   * The resistance at 20 °C that it has at most.
   *
   * @param cord the cord
   * @param length its length where none is stated, m
   * @return the resistance, Ohm
   * @throws IllegalArgumentException if length or section are none for which the table has a value
   */
  public static double cold(Component cord, double length) {
    return ConductorResistance.at20(
        cord.si(CordWords.LENGTH, length),
        cord.si(CordWords.SECTION, USUAL_SECTION),
        Build.FLEXIBLE);
  }

  /**
   * The same at 70 °C.
   *
   * @param cord the cord
   * @param length its length where none is stated, m
   * @return the resistance, Ohm
   * @throws IllegalArgumentException if length or section are none for which the table has a value
   */
  public static double warm(Component cord, double length) {
    return cold(cord, length) * CopperResistance.factor(WARM);
  }
}

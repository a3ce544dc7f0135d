package kelter.core.safety;

import kelter.core.source.Source;

/**
 * How long a capacitor takes at worst until it may be measured: t = R C ln(V0 / V), rounded up.
 *
 * <p>It holds while the bleed resistor is whole. A time never replaces the reading.
 */
public final class DischargeWait {

  /** Where law and limits come from. */
  public static final Source SOURCE =
      Source.fromMemory(
          "discharge through a resistor; 34 V at plug pins as in IEC 60335-1, 22.5, 60 V inside as in"
              + " IEC 60204-1, 6.2.4; tolerances and worst supply common practice, no source");

  /** What may be left at plug pins and filter, V. */
  public static final double PLUG = 34;

  /** What may be left inside, V. */
  public static final double INSIDE = 60;

  /** By how much a net may lie above its nominal voltage, as a ratio. */
  private static final double HIGH_NET = 1.1;

  /** By how much a capacitor may lie above its marking, as a ratio. */
  private static final double CAPACITOR = 1.2;

  /** By how much a resistor may lie above its marking, as a ratio. */
  private static final double RESISTOR = 1.05;

  /** Nobody is told to wait less, s. */
  private static final long LEAST = 10;

  private DischargeWait() {}

  /**
   * The voltage from which a capacitor behind a rectifier or at the mains starts at worst.
   *
   * @param nominal the nominal voltage of the net, V, above 0
   * @param highest the highest voltage that was read, V; 0 if none was
   * @return the peak, V
   */
  public static double start(double nominal, double highest) {
    return Math.sqrt(2) * Math.max(HIGH_NET * nominal, highest);
  }

  /**
   * The voltage from which the capacitor of a boosted bus starts at worst.
   *
   * @param marked what is marked on it, V, above 0
   * @return the voltage, V
   */
  public static double boosted(double marked) {
    return HIGH_NET * marked;
  }

  /**
   * The time with the tolerances of unmarked parts.
   *
   * @param capacitance the capacitance, F, above 0
   * @param resistance the bleed resistance, Ohm, above 0
   * @param start the voltage at the start, V, above 0
   * @param limit the voltage at the end, V, above 0
   * @return the time, s; 0 if it starts at or below its end
   */
  public static double seconds(double capacitance, double resistance, double start, double limit) {
    double ratio = Math.max(1, start / limit);
    return CAPACITOR * capacitance * RESISTOR * resistance * Math.log(ratio);
  }

  /**
   * The time that a person is told.
   *
   * @param seconds a time, s
   * @return the time rounded up to whole seconds, 10 s at least
   */
  public static long told(double seconds) {
    return Math.max(LEAST, (long) Math.ceil(seconds));
  }
}

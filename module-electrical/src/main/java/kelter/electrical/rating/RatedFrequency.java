package kelter.electrical.rating;

import java.util.Optional;
import kelter.core.job.RatedRange;

/**
 * The one frequency of public mains that a nameplate states, 50 Hz or 60 Hz. A machine for both,
 * for direct current, or for the frequency of ships and aircraft has none.
 *
 * @param hertz what the nameplate states, Hz
 * @param other what the other mains have, Hz
 */
public record RatedFrequency(double hertz, double other) {

  /** How far a nameplate may round, Hz; own choice. */
  private static final double ROUNDING = 1;

  /**
   * Reads a nameplate.
   *
   * @param stated the frequency on it, if it is stated
   * @return its one frequency, or empty if it states none, both, or that of no public mains
   */
  public static Optional<RatedFrequency> of(Optional<RatedRange> stated) {
    if (stated.isEmpty() || stated.get().isRange()) {
      return Optional.empty();
    }
    double hertz = stated.get().low().si();
    return isNear(hertz, 50)
        ? Optional.of(new RatedFrequency(hertz, 60))
        : isNear(hertz, 60) ? Optional.of(new RatedFrequency(hertz, 50)) : Optional.empty();
  }

  private static boolean isNear(double hertz, double mains) {
    return Math.abs(hertz - mains) < ROUNDING;
  }

  /**
   * The other mains against what is stated.
   *
   * @return their frequency over the rated one, as a ratio
   */
  public double ratio() {
    return other / hertz;
  }
}

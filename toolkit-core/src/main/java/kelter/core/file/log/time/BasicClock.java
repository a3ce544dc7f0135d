package kelter.core.file.log.time;

/** Hours, minutes and seconds in one figure, as 140305 (ISO 8601, basic form). */
public final class BasicClock {

  private static final double LARGEST = 240_000;

  private BasicClock() {}

  /**
   * The time that a figure tells.
   *
   * @param figure the figure
   * @return s after midnight
   * @throws IllegalArgumentException if it is no such time
   */
  public static double seconds(double figure) {
    if (!(figure >= 0) || hours(figure) > 24 || minutes(figure) >= 60 || figure % 100 >= 61) {
      throw new IllegalArgumentException(
          "'" + (long) figure + "' is not hours, minutes and seconds");
    }
    return hours(figure) * 3600 + minutes(figure) * 60 + figure % 100;
  }

  private static double hours(double figure) {
    return Math.floor(figure / 10_000);
  }

  private static double minutes(double figure) {
    return Math.floor(figure / 100) % 100;
  }

  /**
   * Whether figures may be such times.
   *
   * @param figures figures of a column
   * @return whether all are whole and have less than sixty minutes
   */
  public static boolean mayBe(double[] figures) {
    for (double each : figures) {
      boolean whole = each == Math.rint(each) && each >= 0 && each <= LARGEST;
      if (!whole || minutes(each) >= 60 || each % 100 >= 61) {
        return false;
      }
    }
    return true;
  }

  /**
   * Whether the steps are even as hours, minutes and seconds, and not as a plain figure.
   *
   * @param figures figures that may be such times
   * @return whether it is so
   */
  public static boolean skipsSixty(double[] figures) {
    boolean even = figures.length > 2;
    boolean plain = true;
    for (int i = 2; i < figures.length; i++) {
      even &=
          seconds(figures[i]) - seconds(figures[i - 1])
              == seconds(figures[1]) - seconds(figures[0]);
      plain &= figures[i] - figures[i - 1] == figures[1] - figures[0];
    }
    return even && !plain;
  }
}

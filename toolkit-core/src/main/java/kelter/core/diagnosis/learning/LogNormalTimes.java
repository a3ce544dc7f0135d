package kelter.core.diagnosis.learning;

import java.io.Serializable;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * How long works of several sorts take, when of some of them few were timed: each log-normal, its
 * mean logarithm drawn to that of all sorts as far as their own spread allows.
 *
 * <p>With n times of a sort, variance v of the logarithms within sorts and w between them, the
 * weight of the sort's own mean is n / (n + v/w). v is pooled over all sorts; w is what the spread
 * of their means exceeds v by (the method of moments of DerSimonian and Laird, Controlled Clinical
 * Trials 7 (1986) 177, from memory), at least a twentieth of v.
 */
public final class LogNormalTimes {

  /** Where few times tell no spread, times differ by this factor; common practice, no source. */
  private static final double USUAL_FACTOR = 1.5;

  /** As many times tell of the usual spread; own choice. */
  private static final double USUAL_COUNTS = 4;

  private static final double LEAST_RATIO = 0.05;

  private LogNormalTimes() {}

  /**
   * Times of one sort of work.
   *
   * @param number how many, above 0
   * @param mean the mean of their natural logarithms
   * @param square the mean of the squares of these
   */
  public record Timed(double number, double mean, double square) implements Serializable {

    /**
     * With one more.
     *
     * @param time above 0
     * @param weight what it counts, above 0 and up to 1
     * @return all together
     */
    public Timed and(double time, double weight) {
      double log = Math.log(time);
      double all = number + weight;
      return new Timed(
          all, mean + (log - mean) * weight / all, square + (log * log - square) * weight / all);
    }

    /**
     * With those that were timed elsewhere.
     *
     * @param other more times of the same sort
     * @return all together
     */
    public Timed plus(Timed other) {
      double all = number + other.number;
      double part = all > 0 ? other.number / all : 0;
      return new Timed(
          all, mean + (other.mean - mean) * part, square + (other.square - square) * part);
    }

    /** None yet. */
    public static final Timed NONE = new Timed(0, 0, 0);

    private double sumOfSquares() {
      return number * Math.max(0, square - mean * mean);
    }
  }

  /**
   * What is expected of the next work of a sort.
   *
   * @param number of how many it was learned
   * @param weight how much they count against the mean of all sorts, 0 to 1
   * @param median the time that half exceed
   * @param sdLog the standard deviation of the natural logarithm of a time
   */
  public record Expected(double number, double weight, double median, double sdLog) {

    /**
     * The mean time.
     *
     * @return in the unit of the times
     */
    public double mean() {
      return median * Math.exp(sdLog * sdLog / 2);
    }
  }

  /**
   * What is expected of each sort.
   *
   * @param sorts the times by sort
   * @return what is expected, in the same order
   */
  public static Map<String, Expected> of(Map<String, Timed> sorts) {
    double all = 0;
    double sum = 0;
    double squares = 0;
    double free = 0;
    double sumOfSquares = 0;
    for (Timed each : sorts.values()) {
      all += each.number();
      sum += each.number() * each.mean();
      squares += each.sumOfSquares();
      free += Math.max(0, each.number() - 1);
      sumOfSquares += each.number() * each.number();
    }
    double usual = Math.log(USUAL_FACTOR) * Math.log(USUAL_FACTOR);
    double within = (squares + USUAL_COUNTS * usual) / (free + USUAL_COUNTS);
    double middle = all > 0 ? sum / all : 0;
    double excess = -(sorts.size() - 1) * within;
    for (Timed each : sorts.values()) {
      excess += each.number() * (each.mean() - middle) * (each.mean() - middle);
    }
    double scale = all - sumOfSquares / all;
    double between = Math.max(LEAST_RATIO * within, scale > 0 ? excess / scale : 0);
    Map<String, Expected> expected = new LinkedHashMap<>();
    for (Map.Entry<String, Timed> each : sorts.entrySet()) {
      double number = each.getValue().number();
      double weight = number / (number + within / between);
      double mean = middle + weight * (each.getValue().mean() - middle);
      double own =
          (each.getValue().sumOfSquares() + USUAL_COUNTS * within)
              / (Math.max(0, number - 1) + USUAL_COUNTS);
      expected.put(each.getKey(), new Expected(number, weight, Math.exp(mean), Math.sqrt(own)));
    }
    return expected;
  }
}

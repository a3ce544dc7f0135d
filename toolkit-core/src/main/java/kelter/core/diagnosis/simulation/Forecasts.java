package kelter.core.diagnosis.simulation;

/** What the scores ask of the forecasts that they are given. */
final class Forecasts {

  /** How far a probability, or a sum of them, may be beyond 1 by rounding. */
  private static final double ROUNDING = 1e-9;

  private Forecasts() {}

  /** Refuses no forecasts, and forecasts without as many outcomes. */
  static void pairs(int forecasts, int outcomes) {
    if (forecasts == 0 || forecasts != outcomes) {
      throw new IllegalArgumentException(
          forecasts + " forecasts for " + outcomes + " outcomes; as many of both, one or more");
    }
  }

  /** Refuses what is not a probability; one that is above 1 by rounding is taken as 1. */
  static double probability(double p) {
    if (!(p >= 0 && p <= 1 + ROUNDING)) {
      throw new IllegalArgumentException("a forecast of " + p + "; 0 to 1 is allowed");
    }
    return Math.min(1, p);
  }

  /** Refuses probabilities that do not sum to 1. */
  static void distribution(double[] p) {
    double sum = 0;
    for (double each : p) {
      sum += probability(each);
    }
    if (Math.abs(sum - 1) > ROUNDING) {
      throw new IllegalArgumentException("the forecasts of one case sum to " + sum + ", not to 1");
    }
  }
}

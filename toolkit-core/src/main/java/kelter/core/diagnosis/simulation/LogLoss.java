package kelter.core.diagnosis.simulation;

import kelter.core.source.Source;

/**
 * The mean surprise at what came: {@code L = -mean ln p(truth)}. The one score that asks only for
 * the probability given to the truth; it is without limit for a forecast that ruled the truth out.
 */
public final class LogLoss {

  /** Where the score comes from. */
  public static final Source SOURCE =
      Source.fromMemory("Good, Rational decisions, J. Royal Statistical Society B 14 (1952) 107");

  private LogLoss() {}

  /**
   * The score.
   *
   * @param probabilityOfTruth for each case the probability, 0 to 1, that was given to what came
   * @return the score in nats, 0 or more, lower is better; infinite if a forecast was 0
   * @throws IllegalArgumentException if there are no cases or a forecast is not from 0 to 1
   */
  public static double of(double... probabilityOfTruth) {
    Forecasts.pairs(probabilityOfTruth.length, probabilityOfTruth.length);
    double sum = 0;
    for (double p : probabilityOfTruth) {
      sum += Math.log(Forecasts.probability(p));
    }
    return 0 - sum / probabilityOfTruth.length;
  }
}

package kelter.core.diagnosis.simulation;

import kelter.core.source.Source;

/**
 * The mean squared distance between what was forecast and what came: 0 for a seer, 0.25 for "even
 * odds" on a yes or no.
 *
 * <p>For events, {@code B = mean (p - y)^2} with y = 1 if the event came and 0 if not. For classes,
 * {@code B = mean sum_k (p_k - y_k)^2} as Brier defined it, from 0 to 2; on two classes that is
 * twice the score of the event.
 */
public final class BrierScore {

  /** Where the score comes from. */
  public static final Source SOURCE =
      Source.fromMemory(
          "Brier, Verification of forecasts expressed in terms of probability, Monthly Weather"
              + " Review 78 (1950) 1, equation (2)");

  private BrierScore() {}

  /**
   * The score of forecasts of an event.
   *
   * @param probability the forecast of each case, 0 to 1
   * @param happened whether the event came, for each case
   * @return the score, 0 to 1, lower is better
   * @throws IllegalArgumentException if there are no cases, as many outcomes as forecasts are not
   *     given, or a forecast is not from 0 to 1
   */
  public static double ofEvents(double[] probability, boolean[] happened) {
    Forecasts.pairs(probability.length, happened.length);
    double sum = 0;
    for (int i = 0; i < happened.length; i++) {
      double distance = Forecasts.probability(probability[i]) - (happened[i] ? 1 : 0);
      sum += distance * distance;
    }
    return sum / happened.length;
  }

  /**
   * The score of forecasts over classes.
   *
   * @param probability for each case the forecast of each class, 0 to 1, which sum to 1
   * @param truth for each case the number of the class that came
   * @return the score, 0 to 2, lower is better
   * @throws IllegalArgumentException if there are no cases, as many outcomes as forecasts are not
   *     given, the forecasts of a case are no distribution, or a class is not among them
   */
  public static double ofClasses(double[][] probability, int[] truth) {
    Forecasts.pairs(probability.length, truth.length);
    double sum = 0;
    for (int i = 0; i < truth.length; i++) {
      sum += ofCase(probability[i], truth[i]);
    }
    return sum / truth.length;
  }

  /**
   * The score of one forecast over classes.
   *
   * @param probability the forecast of each class, 0 to 1, which sum to 1
   * @param truth the number of the class that came
   * @return the score, 0 to 2, lower is better
   * @throws IllegalArgumentException if the forecast is no distribution or the class is not in it
   */
  public static double ofCase(double[] probability, int truth) {
    Forecasts.distribution(probability);
    if (truth < 0 || truth >= probability.length) {
      throw new IllegalArgumentException(
          "class " + truth + " came; forecast were 0 to " + (probability.length - 1));
    }
    double sum = 0;
    for (int k = 0; k < probability.length; k++) {
      double distance = probability[k] - (k == truth ? 1 : 0);
      sum += distance * distance;
    }
    return sum;
  }
}

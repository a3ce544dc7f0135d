package kelter.core.diagnosis.learning;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import kelter.core.source.Source;

/**
 * Which share lasts beyond a time, as lives tell it without any law: S(t) = product over failures
 * up to t of (1 - d/n), with d that fail of n that were seen to last until then. The standard
 * deviation is Greenwood's, S sqrt(sum d / (n (n - d))).
 *
 * @param steps one for each time at which something failed, in order
 */
public record KaplanMeier(List<Step> steps) {

  /** Where both come from. */
  public static final Source SOURCE =
      Source.fromMemory("Kleinbaum & Klein, Survival Analysis, 3rd edition (2012), chapter 2");

  /**
   * From a time on.
   *
   * @param time in the unit of the lives
   * @param atRisk how many were seen to last until then
   * @param failed how many failed then
   * @param survival which share lasts beyond it, 0 to 1
   * @param sd the standard deviation of that share; 0 once none is left
   */
  public record Step(double time, double atRisk, double failed, double survival, double sd) {}

  /** Copies the steps. */
  public KaplanMeier {
    steps = List.copyOf(steps);
  }

  /**
   * The shares of all times.
   *
   * @param lives the lives
   * @return the curve
   */
  public static KaplanMeier of(Lives lives) {
    List<Step> steps = new ArrayList<>();
    double atRisk = lives.all();
    double survival = 1;
    double sum = 0;
    for (double time : lives.times()) {
      double failed = lives.failedAt(time);
      if (failed > 0) {
        survival *= Math.max(0, 1 - failed / atRisk);
        sum += failed / (atRisk * (atRisk - failed));
        double sd = survival > 0 ? survival * Math.sqrt(sum) : 0;
        steps.add(new Step(time, atRisk, failed, survival, sd));
      }
      atRisk -= lives.seenAt(time);
    }
    return new KaplanMeier(steps);
  }

  /**
   * The share that lasts beyond a time.
   *
   * @param time in the unit of the lives
   * @return 0 to 1
   */
  public double survival(double time) {
    double survival = 1;
    for (Step step : steps) {
      if (step.time() <= time) {
        survival = step.survival();
      }
    }
    return survival;
  }

  /**
   * The time after which half have failed.
   *
   * @return the time; empty while more than half last
   */
  public OptionalDouble median() {
    for (Step step : steps) {
      if (step.survival() <= 0.5) {
        return OptionalDouble.of(step.time());
      }
    }
    return OptionalDouble.empty();
  }
}

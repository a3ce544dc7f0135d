package kelter.costing.survival;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import kelter.core.source.Source;

/**
 * The share that survives, estimated without assuming any law: {@code S = product over failure
 * times of (1 - failed / at risk)}. A life that is censored at the time of a failure counts as at
 * risk there.
 *
 * <p>Its standard error is Greenwood's: {@code S sqrt(sum of failed / (at risk (at risk -
 * failed)))}; where nothing survives it is 0.
 *
 * <p>Source: Kaplan and Meier, J. Amer. Statist. Assoc. 53 (1958) 457; Greenwood (1926); both from
 * memory.
 *
 * @param steps the estimate after each time at which something failed, rising
 */
public record KaplanMeier(List<Step> steps) {

  /** Where the method comes from. */
  public static final Source SOURCE =
      Source.fromMemory("Kaplan and Meier, J. Amer. Statist. Assoc. 53 (1958) 457");

  private static final double HALF = 0.5;

  public KaplanMeier {
    steps = List.copyOf(steps);
  }

  /**
   * The estimate after a time at which something failed.
   *
   * @param time the time, in the unit of the observed times
   * @param atRisk how many had been seen to reach it
   * @param failed how many of them failed then
   * @param survival the share that survives it, from 0 to 1
   * @param standardError the standard error of the share
   */
  public record Step(double time, int atRisk, int failed, double survival, double standardError) {}

  /**
   * Estimates the survival.
   *
   * @param observed the lives
   * @return the estimate, without steps if nothing failed
   */
  public static KaplanMeier of(List<Observed> observed) {
    List<Step> steps = new ArrayList<>();
    double survival = 1;
    double sum = 0;
    for (double time : Observed.failures(observed)) {
      int atRisk = Observed.atRisk(observed, time);
      int failed = Observed.failed(observed, time);
      survival *= (double) (atRisk - failed) / atRisk;
      sum += (double) failed / atRisk / (atRisk - failed);
      double error = survival > 0 ? survival * Math.sqrt(sum) : 0;
      steps.add(new Step(time, atRisk, failed, survival, error));
    }
    return new KaplanMeier(steps);
  }

  /**
   * The share that survives a time.
   *
   * @param time the time, in the unit of the observed times
   * @return the estimate, from 0 to 1; beyond the last observed life it says nothing
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
   * The time that half survive.
   *
   * @return the first time at which at most half survive, or empty if more than half were still
   *     alive when last seen
   */
  public OptionalDouble median() {
    return steps.stream()
        .filter(step -> step.survival() <= HALF)
        .mapToDouble(Step::time)
        .findFirst();
  }
}

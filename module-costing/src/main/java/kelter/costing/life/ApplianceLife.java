package kelter.costing.life;

import java.util.List;

/**
 * How long a kind of appliance lasts, as several studies see it: a mixture of one Weibull life for
 * each study, each study as likely as any other for a new machine.
 *
 * <p>A study that gives only a mean takes the mean shape of the studies of the same kind. For a
 * machine that has reached an age, the weight of a study is in proportion to the share that it says
 * is still alive then (Bayes), so that an old machine speaks for the studies with long lives.
 *
 * @param studies one Weibull life for each study, in years, one or more
 */
public record ApplianceLife(List<Weibull> studies) {

  /**
   * Checks that there is a study.
   *
   * @throws IllegalArgumentException if there is none
   */
  public ApplianceLife {
    studies = List.copyOf(studies);
    if (studies.isEmpty()) {
      throw new IllegalArgumentException("no study; a life needs one or more");
    }
  }

  /**
   * The life as the studies see it.
   *
   * @param studies one study or more, one of them with a shape
   * @return the mixture
   * @throws IllegalArgumentException if no study gives a shape
   */
  public static ApplianceLife of(List<LifeStudy> studies) {
    double shape =
        studies.stream()
            .flatMapToDouble(study -> study.shape().stream())
            .average()
            .orElseThrow(
                () -> new IllegalArgumentException("no study gives a shape; one must give it"));
    return new ApplianceLife(
        studies.stream()
            .map(study -> Weibull.ofMean(study.mean(), study.shape().orElse(shape)))
            .toList());
  }

  /**
   * The mean life of a new machine.
   *
   * @return the mean over all studies, in years
   */
  public double mean() {
    return studies.stream().mapToDouble(Weibull::mean).average().orElseThrow();
  }

  /**
   * How much each study counts for a machine that has reached an age.
   *
   * @param age the age reached, in years, not negative
   * @return one weight for each study, from 0 to 1, in their order; their sum is 1
   * @throws IllegalArgumentException if the age is negative or not finite
   */
  public double[] weights(double age) {
    double[] hazards = studies.stream().mapToDouble(study -> study.hazardTo(age)).toArray();
    double least = hazards[0];
    for (double hazard : hazards) {
      least = Math.min(least, hazard);
    }
    double sum = 0;
    double[] weights = new double[hazards.length];
    for (int i = 0; i < hazards.length; i++) {
      weights[i] = Math.exp(least - hazards[i]);
      sum += weights[i];
    }
    for (int i = 0; i < weights.length; i++) {
      weights[i] /= sum;
    }
    return weights;
  }

  /**
   * How long a machine that has reached an age lasts from then on, on average.
   *
   * @param age the age reached, in years, not negative
   * @return the mean residual life, in years
   * @throws IllegalArgumentException if the age is negative or not finite
   */
  public double meanResidual(double age) {
    double[] weights = weights(age);
    double mean = 0;
    for (int i = 0; i < weights.length; i++) {
      mean += weights[i] * studies.get(i).meanResidual(age);
    }
    return mean;
  }

  /**
   * The share of new machines that reach an age.
   *
   * @param age the age, in years, not negative
   * @return a probability from 0 to 1
   * @throws IllegalArgumentException if the age is negative or not finite
   */
  public double survival(double age) {
    return studies.stream().mapToDouble(study -> study.survival(age)).average().orElseThrow();
  }

  /**
   * The share of those alive at an age that are still alive some time later.
   *
   * @param age the age reached, in years, not negative
   * @param later the time from then on, in years, not negative
   * @return a probability from 0 to 1
   * @throws IllegalArgumentException if a time is negative or not finite
   */
  public double survival(double age, double later) {
    double[] weights = weights(age);
    double share = 0;
    for (int i = 0; i < weights.length; i++) {
      share += weights[i] * studies.get(i).survival(age, later);
    }
    return share;
  }
}

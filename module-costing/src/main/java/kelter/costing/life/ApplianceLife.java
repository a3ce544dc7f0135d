package kelter.costing.life;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * How long a kind of appliance lasts, as several studies see it: a mixture of one Weibull life for
 * each study, each study as likely as any other for a new machine unless shares say otherwise.
 *
 * <p>A study that gives only a mean takes the mean shape of the studies of the same kind. For a
 * machine that has reached an age, the weight of a study is in proportion to the share that it says
 * is still alive then (Bayes), so that an old machine speaks for the studies with long lives.
 *
 * @param studies one Weibull life for each study, in years, one or more
 * @param shares how much each study counts for a new machine, above zero; their sum is 1
 */
public record ApplianceLife(List<Weibull> studies, List<Double> shares) {

  /**
   * Checks that there is a study, and brings the shares to a sum of 1.
   *
   * @throws IllegalArgumentException if there is no study, or not one share above zero for each
   */
  public ApplianceLife {
    studies = List.copyOf(studies);
    if (studies.isEmpty() || studies.size() != shares.size()) {
      throw new IllegalArgumentException(
          "%s studies and %s shares; a life needs one study or more, each with a share"
              .formatted(studies.size(), shares.size()));
    }
    shares = normalized(shares);
  }

  private static List<Double> normalized(List<Double> counts) {
    double sum = 0;
    boolean positive = true;
    for (double count : counts) {
      sum += count;
      positive &= count > 0;
    }
    if (!positive || !Double.isFinite(sum)) {
      throw new IllegalArgumentException(
          "shares of %s; all must be above zero and finite".formatted(counts));
    }
    double whole = sum;
    return counts.stream().map(count -> count / whole).toList();
  }

  /**
   * A life by studies of which each counts the same.
   *
   * @param studies one Weibull life for each study, in years, one or more
   * @throws IllegalArgumentException if there is none
   */
  public ApplianceLife(List<Weibull> studies) {
    this(studies, Collections.nCopies(studies.size(), 1.0));
  }

  /**
   * The life as the studies see it.
   *
   * @param studies one study or more, one of them with a shape
   * @return the mixture
   * @throws IllegalArgumentException if no study gives a shape
   */
  public static ApplianceLife of(List<LifeStudy> studies) {
    double sum = 0;
    int given = 0;
    for (LifeStudy study : studies) {
      if (study.shape().isPresent()) {
        sum += study.shape().getAsDouble();
        given++;
      }
    }
    if (given == 0) {
      throw new IllegalArgumentException("no study gives a shape; one must give it");
    }
    double shape = sum / given;
    return new ApplianceLife(
        studies.stream()
            .map(study -> Weibull.ofMean(study.mean(), study.shape().orElse(shape)))
            .toList());
  }

  /**
   * The same with one more life beside the studies.
   *
   * @param life the life, in years
   * @param weight how much it counts, above zero
   * @param rest how much all studies together count on the same scale, above zero
   * @return all lives
   * @throws IllegalArgumentException if a weight is not above zero and finite
   */
  public ApplianceLife with(Weibull life, double weight, double rest) {
    List<Weibull> lives = new ArrayList<>(studies);
    lives.add(life);
    List<Double> counts = new ArrayList<>(shares);
    counts.replaceAll(share -> share * rest);
    counts.add(weight);
    return new ApplianceLife(lives, counts);
  }

  /**
   * The same where it is not known for sure how much longer or shorter machines last.
   *
   * @param factors how many times as long, each above zero
   * @param chances how likely each factor is, above zero
   * @return each study once for each factor
   * @throws IllegalArgumentException if a factor or a chance is not above zero and finite
   */
  public ApplianceLife stretched(double[] factors, double[] chances) {
    List<Weibull> lives = new ArrayList<>();
    List<Double> counts = new ArrayList<>();
    for (int f = 0; f < factors.length; f++) {
      for (int i = 0; i < studies.size(); i++) {
        lives.add(studies.get(i).stretched(factors[f]));
        counts.add(shares.get(i) * chances[f]);
      }
    }
    return new ApplianceLife(lives, counts);
  }

  /**
   * The same for machines that last longer or shorter.
   *
   * @param factor how many times as long, above zero
   * @return the stretched lives
   * @throws IllegalArgumentException if the factor is not above zero and finite
   */
  public ApplianceLife stretched(double factor) {
    return new ApplianceLife(
        studies.stream().map(study -> study.stretched(factor)).toList(), shares);
  }

  /**
   * The mean life of a new machine.
   *
   * @return the mean over all studies, in years
   */
  public double mean() {
    double mean = 0;
    for (int i = 0; i < shares.size(); i++) {
      mean += shares.get(i) * studies.get(i).mean();
    }
    return mean;
  }

  /**
   * The mean life of a new machine where another one of the kind has reached an age.
   *
   * @param age the age reached, in years, not negative
   * @return the mean over all studies by their weights at that age, in years
   * @throws IllegalArgumentException if the age is negative or not finite
   */
  public double meanOfNew(double age) {
    double[] weights = weights(age);
    double mean = 0;
    for (int i = 0; i < weights.length; i++) {
      mean += weights[i] * studies.get(i).mean();
    }
    return mean;
  }

  /**
   * How much each study counts for a machine that has reached an age.
   *
   * @param age the age reached, in years, not negative
   * @return one weight for each study, from 0 to 1, in their order; their sum is 1
   * @throws IllegalArgumentException if the age is negative or not finite
   */
  public double[] weights(double age) {
    double[] hazards = new double[studies.size()];
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < hazards.length; i++) {
      hazards[i] = studies.get(i).hazardTo(age);
      least = Math.min(least, hazards[i]);
    }
    double sum = 0;
    double[] weights = new double[hazards.length];
    for (int i = 0; i < hazards.length; i++) {
      weights[i] = shares.get(i) * Math.exp(least - hazards[i]);
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
    double share = 0;
    for (int i = 0; i < shares.size(); i++) {
      share += shares.get(i) * studies.get(i).survival(age);
    }
    return share;
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

package kelter.core.diagnosis.symptom.exact;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The joint states of a sum of posteriors, each counted by a product of one factor for each group.
 */
public final class CountedSum {

  private final double mass;
  private final Optional<PosteriorSum> counted;

  private CountedSum(double mass, Optional<PosteriorSum> counted) {
    this.mass = mass;
    this.counted = counted;
  }

  /**
   * Adds up what was counted by the same factors.
   *
   * @param parts the parts of a {@link PosteriorSum}, counted
   * @param share the share of each part
   */
  public static CountedSum of(List<CountedStates> parts, double... share) {
    List<SymptomPosterior> posteriors = new ArrayList<>();
    double[] weight = new double[share.length];
    double mass = 0;
    for (int part = 0; part < share.length; part++) {
      CountedStates states = parts.get(part);
      if (states.mass() > 0) {
        weight[posteriors.size()] = share[part] * states.mass();
        mass += weight[posteriors.size()];
        posteriors.add(states.counted());
      }
    }
    return new CountedSum(
        mass, mass > 0 ? Optional.of(new PosteriorSum(posteriors, weight)) : Optional.empty());
  }

  /** The expectation of the product. */
  public double mass() {
    return mass;
  }

  /** The expectation of the product where a group is in a state, and 0 elsewhere. */
  public double weight(int group, int state) {
    return counted.map(sum -> sum.marginal(group, state)).orElse(0.0);
  }
}

package kelter.core.diagnosis.symptom;

import java.util.List;

/**
 * The groups of a machine. They share no reading and fail independently, but that the state in
 * which nothing at all is wrong has a prior of its own.
 *
 * @param groups the groups
 * @param priorSound the prior chance that nothing at all is wrong, 0 or more and below 1
 */
public record MachineChances(List<GroupChances> groups, double priorSound) {

  /**
   * Checks the prior.
   *
   * @throws IllegalArgumentException if there is no group, or the prior is not from 0 to below 1
   */
  public MachineChances {
    groups = List.copyOf(groups);
    if (groups.isEmpty()) {
      throw new IllegalArgumentException("a machine has one group at least");
    }
    if (!(priorSound >= 0 && priorSound < 1)) {
      throw new IllegalArgumentException(
          "a prior of " + priorSound + " that nothing is wrong; 0 or more and below 1");
    }
  }

  /**
   * By what the product of the priors has to be multiplied where nothing at all is wrong: {@code s
   * (1 - H) / ((1 - s) H)} for the product H of the priors and the prior s.
   */
  public double soundFactor() {
    double logSound = 0;
    for (GroupChances group : groups) {
      logSound += group.logPriorHealthy();
    }
    return priorSound / (1 - priorSound) * -Math.expm1(logSound) / Math.exp(logSound);
  }
}

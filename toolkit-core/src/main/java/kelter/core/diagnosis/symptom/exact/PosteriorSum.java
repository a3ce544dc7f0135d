package kelter.core.diagnosis.symptom.exact;

import java.util.Arrays;
import java.util.List;
import kelter.core.diagnosis.symptom.GroupChances;
import kelter.core.diagnosis.symptom.cases.SubsetSpace;

/**
 * A sum of posteriors of the same states and reports. All but the first come of the first, whose
 * priors are multiplied in few groups ({@link SymptomPosterior#times}). What all other groups make
 * of the states of one is then added up before any of these states is looked at: a state is weighed
 * by one sum and not by one for each part. One thread at a time may ask.
 */
public final class PosteriorSum {

  private final List<SymptomPosterior> parts;
  private final double[] share;

  /** For each group what the others make in the parts that leave its priors as they are. */
  private final double[][] common;

  /**
   * A sum.
   *
   * @param parts the parts, the usual one first
   * @param share for each part by how much it counts
   */
  public PosteriorSum(List<SymptomPosterior> parts, double... share) {
    this.parts = List.copyOf(parts);
    this.share = Arrays.copyOf(share, parts.size());
    this.common = new double[parts.get(0).groups()][];
  }

  /** The probability that a group is in a state, whatever the others do. */
  public double marginal(int group, int state) {
    if (state != GroupChances.HEALTHY) {
      GroupTables usual = usual(group);
      return usual.weight(state) == 0
          ? 0
          : usual.weight(state) * usual.table(state).dot(others(group, state));
    }
    double sum = 0;
    for (int part = 0; part < share.length; part++) {
      sum += share[part] * parts.get(part).marginal(group, state);
    }
    return sum;
  }

  /**
   * The shares of the nodes of a faulty state with nodes, once the reports are known.
   *
   * @return for each node its share, 1 in all; not a number where the state cannot be
   */
  public double[] nodeShares(int group, int state) {
    return usual(group).nodeShares(state, others(group, state));
  }

  private GroupTables usual(int group) {
    return parts.get(0).group(group);
  }

  /** What the others make of each set that a state makes, in all parts that hold it. */
  private double[] others(int group, int state) {
    GroupTables usual = usual(group);
    double[] all = common(group);
    boolean isOwn = false;
    for (int part = 1; part < share.length; part++) {
      GroupTables own = parts.get(part).group(group);
      if (own != usual && own.weight(state) > 0) {
        all = isOwn ? all : all.clone();
        isOwn = true;
        add(part, own.weight(state) / usual.weight(state), group, all);
      }
    }
    return all;
  }

  private double[] common(int group) {
    if (common[group] == null) {
      double[] all = parts.get(0).zero();
      for (int part = 0; part < share.length; part++) {
        if (parts.get(part).group(group) == usual(group)) {
          add(part, 1, group, all);
        }
      }
      common[group] = all;
    }
    return common[group];
  }

  private void add(int part, double factor, int group, double[] to) {
    SymptomPosterior posterior = parts.get(part);
    SubsetSpace.add(factor * share[part] / posterior.total(), posterior.others(group), to);
  }
}

package kelter.core.diagnosis.symptom.exact;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/**
 * Counts the joint states of a posterior, each by a product of one factor for each group, as often
 * as is asked. What two counts have in common is worked out once: factors of a group that are the
 * same array, and groups in a row at the end that have the same. One thread at a time may ask.
 */
public final class StateCounts {

  private final SymptomPosterior posterior;
  private final CausesBehind end;
  private final List<Map<double[], GroupTables>> multiplied = new ArrayList<>();

  StateCounts(SymptomPosterior posterior, CausesBehind end) {
    this.posterior = posterior;
    this.end = end;
  }

  /**
   * Counts.
   *
   * @param factor for each group a factor, 0 or more, for each of its states, which nobody changes
   *     afterwards; null where it is 1
   */
  public CountedStates of(double[]... factor) {
    List<GroupTables> groups = new ArrayList<>();
    for (int g = 0; g < factor.length; g++) {
      groups.add(factor[g] == null ? posterior.group(g) : times(g, factor[g]));
    }
    return posterior.counted(groups, end);
  }

  private GroupTables times(int group, double[] factor) {
    while (multiplied.size() <= group) {
      multiplied.add(new IdentityHashMap<>());
    }
    return multiplied.get(group).computeIfAbsent(factor, posterior.group(group)::times);
  }
}

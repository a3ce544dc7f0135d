package kelter.core.diagnosis.engine;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.Remedy;
import kelter.core.diagnosis.likelihood.Group;

/**
 * Which parts will be needed: for each remedy that needs one, the chance that it comes to be done.
 *
 * <p>In a state that is known, the remedies of each of its faults are done in the order of least
 * expected cost until one of them cures, so that a fault comes to its k-th remedy with the chance
 * that those before have failed, {@code (1 - p_1) ... (1 - p_(k-1))}. A remedy is done unless no
 * fault of the state comes to it. The chance is the mean of that over all states of the machine.
 */
final class PartsNeeded {

  /** What is less likely is not told. */
  private static final double NOT_WORTH = 0.02;

  private final List<Group> groups;
  private final JointPosterior posterior;
  private final Map<String, Remedy> known = new LinkedHashMap<>();

  /** For each remedy, for each group, the chance that a fault comes to it, by place. */
  private final Map<String, double[][]> reached = new LinkedHashMap<>();

  private PartsNeeded(List<Group> groups, JointPosterior posterior, RepairPlan plan) {
    this.groups = groups;
    this.posterior = posterior;
    for (int g = 0; g < groups.size(); g++) {
      List<Fault> faults = groups.get(g).faults();
      for (int place = 0; place < faults.size(); place++) {
        double open = 1;
        for (Remedy remedy : plan.inOrder(faults.get(place))) {
          if (remedy.needsPart()) {
            known.putIfAbsent(remedy.key(), remedy);
            double[][] all =
                reached.computeIfAbsent(remedy.key(), key -> new double[groups.size()][]);
            all[g] = all[g] == null ? new double[faults.size()] : all[g];
            all[g][place] = open;
          }
          open *= 1 - remedy.probabilityOfCure();
        }
      }
    }
  }

  /**
   * The remedies with a part that are likely enough to be needed, the likeliest first.
   *
   * @param groups the groups
   * @param posterior their joint posterior
   * @param plan what tells in which order the remedies of one fault are done
   */
  static List<Diagnosis.Needed> of(List<Group> groups, JointPosterior posterior, RepairPlan plan) {
    PartsNeeded parts = new PartsNeeded(groups, posterior, plan);
    List<Diagnosis.Needed> needed = new ArrayList<>();
    for (Remedy remedy : parts.known.values()) {
      double[][] comes = parts.reached.get(remedy.key());
      if (parts.atMost(comes) >= NOT_WORTH) {
        double chance = Math.max(0, 1 - posterior.expectation(parts.spared(comes)));
        if (chance >= NOT_WORTH) {
          needed.add(new Diagnosis.Needed(remedy, Math.min(1, chance)));
        }
      }
    }
    needed.sort(GreatestFirst.by(Diagnosis.Needed::chance, each -> each.remedy().key()));
    return needed;
  }

  /** A bound of the chance: the sum over the faults. */
  private double atMost(double[][] comes) {
    double sum = 0;
    for (int g = 0; g < comes.length; g++) {
      for (int place = 0; comes[g] != null && place < comes[g].length; place++) {
        sum += comes[g][place] > 0 ? comes[g][place] * posterior.fault(g, place) : 0;
      }
    }
    return sum;
  }

  /** For each state of each group the chance that none of its faults comes to the remedy. */
  private double[][] spared(double[][] comes) {
    double[][] spared = new double[comes.length][];
    for (int g = 0; g < comes.length; g++) {
      if (comes[g] != null) {
        spared[g] = new double[groups.get(g).states()];
        for (int state = 0; state < spared[g].length; state++) {
          spared[g][state] = 1;
          for (int place : groups.get(g).faultsOf(state)) {
            spared[g][state] *= 1 - comes[g][place];
          }
        }
      }
    }
    return spared;
  }
}

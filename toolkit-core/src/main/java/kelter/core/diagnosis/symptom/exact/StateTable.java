package kelter.core.diagnosis.symptom.exact;

import kelter.core.diagnosis.symptom.StateChances;
import kelter.core.diagnosis.symptom.cases.ReportCase;
import kelter.core.diagnosis.symptom.cases.SubsetSpace;
import kelter.core.diagnosis.symptom.cases.Tracking;

/**
 * How the symptoms are distributed that a state makes: for each set of tracked symptoms the chance
 * that it makes exactly these, and that what it makes of the folded ones is not noticed, {@code
 * a(S) = integral of prod over S of p times prod outside S of (1 - p)}, averaged over the
 * severities as the readings leave them. At each node the table starts with the share of the node
 * and doubles once for each symptom. A state has entries only for the subsets of what it can make.
 */
final class StateTable {

  private final SubsetSpace space;
  private final int[] made;
  private final double[] entries;

  private StateTable(SubsetSpace space, int[] made, double[] entries) {
    this.space = space;
    this.made = made;
    this.entries = entries;
  }

  /** The table of a state with nodes. */
  static StateTable of(StateChances.Nodes nodes, Tracking tracking) {
    SubsetSpace space = tracking.space();
    int[] made = new int[space.cases()];
    for (int c = 0; c < made.length; c++) {
      made[c] = tracking.number(c).made(nodes);
    }
    double[] entries = new double[count(made)];
    int start = 0;
    for (int c = 0; c < made.length; c++) {
      ReportCase own = tracking.number(c);
      double[][] chance = chances(nodes, own, made[c]);
      double[] split = new double[1 << chance.length];
      for (int node = 0; node < nodes.share().length; node++) {
        split(chance, node, split);
        double weight = nodes.share()[node] * own.unnoticed(nodes, node);
        for (int i = 0; i < split.length; i++) {
          entries[start + i] += weight * split[i];
        }
      }
      start += split.length;
    }
    return new StateTable(space, made, entries);
  }

  private static int count(int[] made) {
    int count = 0;
    for (int each : made) {
      count += 1 << Integer.bitCount(each);
    }
    return count;
  }

  private static double[][] chances(StateChances.Nodes nodes, ReportCase own, int made) {
    double[][] chances = new double[Integer.bitCount(made)][];
    int place = 0;
    for (int bit = 0; bit < own.tracked().length; bit++) {
      if ((made & 1 << bit) != 0) {
        chances[place++] = nodes.chance()[own.tracked()[bit]];
      }
    }
    return chances;
  }

  /** The chances of all sets at one node. */
  private static void split(double[][] chance, int node, double[] into) {
    into[0] = 1;
    int half = 1;
    for (double[] ofSymptom : chance) {
      double there = ofSymptom[node];
      double absent = 1 - there;
      for (int i = 0; i < half; i++) {
        into[half + i] = into[i] * there;
        into[i] *= absent;
      }
      half *= 2;
    }
  }

  /** The table of two faults whose severities are independent: the union product of theirs. */
  StateTable with(StateTable other) {
    IntervalSums sums = new IntervalSums(space, other.spread(), other.made);
    double[] both = sums.union(spread());
    int[] all = made.clone();
    for (int c = 0; c < all.length; c++) {
      all[c] |= other.made[c];
    }
    StateTable pair = new StateTable(space, all, new double[count(all)]);
    pair.gather(both, pair.entries);
    return pair;
  }

  /** What a value of the set of symptoms comes to if this table's are made beside it. */
  double[] averaged(double[] value) {
    return sums().transposed(value);
  }

  IntervalSums sums() {
    return new IntervalSums(space, spread(), made);
  }

  /** Adds, in each case, what the state makes to what others make. */
  void addMade(int[] all) {
    for (int c = 0; c < all.length; c++) {
      all[c] |= made[c];
    }
  }

  /** Sum over all sets of entry times value. */
  double dot(double[] value) {
    double sum = 0;
    int place = 0;
    for (int c = 0; c < made.length; c++) {
      int start = space.start(c);
      for (int set = 0; ; set = set - made[c] & made[c]) {
        sum += entries[place++] * value[start + set];
        if (set == made[c]) {
          break;
        }
      }
    }
    return sum;
  }

  /** Adds a multiple of the table to a function of all sets. */
  void addTo(double[] function, double factor) {
    int place = 0;
    for (int c = 0; c < made.length; c++) {
      int start = space.start(c);
      for (int set = 0; ; set = set - made[c] & made[c]) {
        function[start + set] += factor * entries[place++];
        if (set == made[c]) {
          break;
        }
      }
    }
  }

  private double[] spread() {
    double[] function = space.zero();
    addTo(function, 1);
    return function;
  }

  /** Takes the entries for the sets of what is made out of a function of all sets. */
  private void gather(double[] function, double[] into) {
    int place = 0;
    for (int c = 0; c < made.length; c++) {
      int start = space.start(c);
      for (int set = 0; ; set = set - made[c] & made[c]) {
        into[place++] = function[start + set];
        if (set == made[c]) {
          break;
        }
      }
    }
  }

  /**
   * By what the reports multiply each node: {@code sum over S of c(S) prod over S of p prod outside
   * S of (1 - p)}, symptom by symptom at half the entries each.
   *
   * @param nodes the state of this table
   * @param tracking the tracked symptoms
   * @param value c, what the others make of each set that the state makes
   */
  double[] factors(StateChances.Nodes nodes, Tracking tracking, double[] value) {
    double[] gathered = new double[entries.length];
    gather(value, gathered);
    double[] factors = new double[nodes.share().length];
    int start = 0;
    for (int c = 0; c < made.length; c++) {
      ReportCase own = tracking.number(c);
      double[][] chance = chances(nodes, own, made[c]);
      double[] rest = new double[1 << chance.length];
      for (int node = 0; node < factors.length; node++) {
        System.arraycopy(gathered, start, rest, 0, rest.length);
        factors[node] += own.unnoticed(nodes, node) * contracted(chance, node, rest);
      }
      start += rest.length;
    }
    return factors;
  }

  private static double contracted(double[][] chance, int node, double[] rest) {
    int half = rest.length / 2;
    for (int i = chance.length - 1; i >= 0; i--) {
      double there = chance[i][node];
      double absent = 1 - there;
      for (int set = 0; set < half; set++) {
        rest[set] = absent * rest[set] + there * rest[half + set];
      }
      half /= 2;
    }
    return rest[0];
  }
}

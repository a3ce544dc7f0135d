package kelter.core.diagnosis.symptom.exact;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
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

  /** For each case the entries; cases that are alike for this state share them. */
  private final double[][] entries;

  /** Once asked for. */
  private IntervalSums sums;

  /** Once asked for. */
  private List<Alike> alike;

  private StateTable(SubsetSpace space, int[] made, double[][] entries) {
    this.space = space;
    this.made = made;
    this.entries = entries;
  }

  /** The table of a state with nodes. */
  static StateTable of(StateChances.Nodes nodes, Tracking tracking) {
    SubsetSpace space = tracking.space();
    int[] made = new int[space.cases()];
    double[][] entries = new double[made.length][];
    Map<String, double[]> known = new HashMap<>();
    for (int c = 0; c < made.length; c++) {
      ReportCase own = tracking.number(c);
      made[c] = own.made(nodes);
      String stands = own.stands(nodes);
      entries[c] = known.get(stands);
      if (entries[c] == null) {
        entries[c] = entries(nodes, own, made[c]);
        known.put(stands, entries[c]);
      }
    }
    return new StateTable(space, made, entries);
  }

  private static double[] entries(StateChances.Nodes nodes, ReportCase own, int made) {
    double[][] chance = chances(nodes, own, made);
    double[] unnoticed = own.unnoticed(nodes);
    double[] split = new double[1 << chance.length];
    double[] entries = new double[split.length];
    for (int node = 0; node < unnoticed.length; node++) {
      split(chance, node, split);
      double weight = nodes.share()[node] * unnoticed[node];
      for (int i = 0; i < split.length; i++) {
        entries[i] += weight * split[i];
      }
    }
    return entries;
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
    double[] both = other.sums().union(spread());
    int[] all = made.clone();
    double[][] pair = new double[all.length][];
    for (int c = 0; c < all.length; c++) {
      all[c] |= other.made[c];
      pair[c] = new double[1 << Integer.bitCount(all[c])];
      gather(both, c, all[c], pair[c]);
    }
    return new StateTable(space, all, pair);
  }

  /** What a value of the set of symptoms comes to if this table's are made beside it. */
  double[] averaged(double[] value) {
    return sums().transposed(value);
  }

  IntervalSums sums() {
    if (sums == null) {
      sums = new IntervalSums(space, spread(), made);
    }
    return sums;
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
    for (int c = 0; c < made.length; c++) {
      int start = space.start(c);
      int place = 0;
      for (int set = 0; ; set = set - made[c] & made[c]) {
        sum += entries[c][place++] * value[start + set];
        if (set == made[c]) {
          break;
        }
      }
    }
    return sum;
  }

  /** Adds a multiple of the table to a function of all sets. */
  void addTo(double[] function, double factor) {
    for (int c = 0; c < made.length; c++) {
      int start = space.start(c);
      int place = 0;
      for (int set = 0; ; set = set - made[c] & made[c]) {
        function[start + set] += factor * entries[c][place++];
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

  /** Adds a function of all sets in one case, at the sets of what is made. */
  private void gather(double[] function, int number, int all, double[] into) {
    int place = 0;
    for (int set = 0; ; set = set - all & all) {
      into[place++] += function[space.start(number) + set];
      if (set == all) {
        break;
      }
    }
  }

  /** Cases that are alike for a state, with the chances at its nodes. */
  private record Alike(List<Integer> cases, double[][] chance, double[] unnoticed) {}

  private List<Alike> alike(StateChances.Nodes nodes, Tracking tracking) {
    Map<double[], Alike> alike = new IdentityHashMap<>();
    List<Alike> inOrder = new ArrayList<>();
    for (int c = 0; c < made.length; c++) {
      Alike known = alike.get(entries[c]);
      if (known == null) {
        ReportCase own = tracking.number(c);
        double[][] chance = chances(nodes, own, made[c]);
        known = new Alike(new ArrayList<>(), chance, own.unnoticed(nodes));
        alike.put(entries[c], known);
        inOrder.add(known);
      }
      known.cases.add(c);
    }
    return inOrder;
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
    if (alike == null) {
      alike = alike(nodes, tracking);
    }
    double[] factors = new double[nodes.share().length];
    for (Alike each : alike) {
      double[] gathered = new double[1 << each.chance.length];
      for (int c : each.cases) {
        gather(value, c, made[c], gathered);
      }
      double[] rest = new double[gathered.length];
      for (int node = 0; node < factors.length; node++) {
        System.arraycopy(gathered, 0, rest, 0, rest.length);
        factors[node] += each.unnoticed[node] * contracted(each.chance, node, rest);
      }
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

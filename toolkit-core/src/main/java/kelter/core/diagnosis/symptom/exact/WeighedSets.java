package kelter.core.diagnosis.symptom.exact;

import java.util.List;
import kelter.core.diagnosis.symptom.GroupChances;
import kelter.core.diagnosis.symptom.StateChances;
import kelter.core.diagnosis.symptom.cases.ReportCase;
import kelter.core.diagnosis.symptom.cases.Tracking;

/**
 * All sets of the symptoms that are not folded, over the cases: what the others make of a state
 * that makes exactly such a set, as a bound needs it. A subset is a number, one bit for each
 * symptom, in the order of {@link Tracking#weighed()}.
 */
final class WeighedSets {

  private static final int ABSENT = -1;

  private final Tracking tracking;
  private final int[][] place;

  WeighedSets(Tracking tracking) {
    this.tracking = tracking;
    this.place = places(tracking);
  }

  /** For each state of a group the symptoms that it can make. */
  int[] made(GroupChances group) {
    int[] made = new int[group.states().size()];
    for (int state = 0; state < made.length; state++) {
      if (group.states().get(state) instanceof StateChances.Nodes nodes) {
        made[state] = made(nodes);
      }
    }
    for (int state = 0; state < made.length; state++) {
      if (group.states().get(state) instanceof StateChances.PairOf pair) {
        made[state] = made[pair.one()] | made[pair.other()];
      }
    }
    return made;
  }

  private int made(StateChances.Nodes nodes) {
    int made = 0;
    for (int i = 0; i < tracking.weighed().size(); i++) {
      made |= nodes.makes(tracking.weighed().get(i)) ? 1 << i : 0;
    }
    return made;
  }

  /** For each set the greatest of what is made of its subsets. */
  static double[] most(double[] ofEach) {
    double[] most = ofEach.clone();
    for (int symptom = 1; symptom < most.length; symptom <<= 1) {
      for (int set = symptom; set < most.length; set = set + 1 | symptom) {
        most[set] = Math.max(most[set], most[set ^ symptom]);
      }
    }
    return most;
  }

  /** For each set the least of what is made of its subsets. */
  static double[] least(double[] ofEach) {
    double[] least = ofEach.clone();
    for (int symptom = 1; symptom < least.length; symptom <<= 1) {
      for (int set = symptom; set < least.length; set = set + 1 | symptom) {
        least[set] = Math.min(least[set], least[set ^ symptom]);
      }
    }
    return least;
  }

  /**
   * What is made of each set: the sum over the cases in which none of its symptoms is absent.
   *
   * @param value what is made of each set of each case
   */
  double[] overCases(double[] value) {
    double[] sum = new double[1 << tracking.weighed().size()];
    for (int[] ofCase : place) {
      for (int set = 0; set < sum.length; set++) {
        sum[set] += ofCase[set] == ABSENT ? 0 : value[ofCase[set]];
      }
    }
    return sum;
  }

  /** For each case where each set stands; {@link #ABSENT} where one of its symptoms is absent. */
  private static int[][] places(Tracking tracking) {
    int[][] places = new int[tracking.space().cases()][];
    for (int c = 0; c < places.length; c++) {
      ReportCase each = tracking.number(c);
      int[] bit = bits(each, tracking.weighed());
      int absent = absent(each, tracking.weighed());
      int[] own = new int[1 << bit.length];
      places[c] = new int[own.length];
      for (int set = 0; set < own.length; set++) {
        own[set] = set == 0 ? 0 : own[set & set - 1] | bit[Integer.numberOfTrailingZeros(set)];
        places[c][set] = (set & absent) == 0 ? tracking.space().start(c) + own[set] : ABSENT;
      }
    }
    return places;
  }

  private static int[] bits(ReportCase each, List<Integer> weighed) {
    int[] bits = new int[weighed.size()];
    for (int i = 0; i < bits.length; i++) {
      bits[i] = each.set(weighed.get(i));
    }
    return bits;
  }

  private static int absent(ReportCase each, List<Integer> weighed) {
    int absent = 0;
    for (int i = 0; i < weighed.size(); i++) {
      absent |= each.folds(weighed.get(i)) ? 1 << i : 0;
    }
    return absent;
  }
}

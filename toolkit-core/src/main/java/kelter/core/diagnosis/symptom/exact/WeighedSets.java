package kelter.core.diagnosis.symptom.exact;

import java.util.function.DoubleBinaryOperator;
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

  private final Tracking tracking;

  WeighedSets(Tracking tracking) {
    this.tracking = tracking;
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

  /**
   * For each set the greatest or the least of what is made of its subsets.
   *
   * @param ofEach what is made of each set
   * @param choice chooses the greater or the less
   */
  static double[] ofSubsets(double[] ofEach, DoubleBinaryOperator choice) {
    double[] chosen = ofEach.clone();
    for (int symptom = 1; symptom < chosen.length; symptom <<= 1) {
      for (int set = 0; set < chosen.length; set++) {
        if ((set & symptom) != 0) {
          chosen[set] = choice.applyAsDouble(chosen[set], chosen[set ^ symptom]);
        }
      }
    }
    return chosen;
  }

  /**
   * What is made of each set: the sum over the cases in which none of its symptoms is absent.
   *
   * @param value what is made of each set of each case
   */
  double[] overCases(double[] value) {
    double[] sum = new double[1 << tracking.weighed().size()];
    int[] own = new int[sum.length];
    for (int c = 0; c < tracking.space().cases(); c++) {
      ReportCase each = tracking.number(c);
      int[] bit = bits(each);
      int start = tracking.space().start(c);
      int absent = absent(each);
      sum[0] += value[start];
      for (int set = 1; set < sum.length; set++) {
        int last = Integer.numberOfTrailingZeros(set);
        own[set] = own[set & set - 1] | bit[last];
        sum[set] += (set & absent) == 0 ? value[start + own[set]] : 0;
      }
    }
    return sum;
  }

  private int[] bits(ReportCase each) {
    int[] bits = new int[tracking.weighed().size()];
    for (int i = 0; i < bits.length; i++) {
      bits[i] = each.set(tracking.weighed().get(i));
    }
    return bits;
  }

  private int absent(ReportCase each) {
    int absent = 0;
    for (int i = 0; i < tracking.weighed().size(); i++) {
      absent |= each.folds(tracking.weighed().get(i)) ? 1 << i : 0;
    }
    return absent;
  }
}

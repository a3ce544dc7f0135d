package kelter.core.diagnosis.symptom.exact;

import java.util.IdentityHashMap;
import java.util.Map;
import kelter.core.diagnosis.symptom.cases.SubsetSpace;

/**
 * Groups in a row, seen from the end: what they and the reports make of the set C of symptoms that
 * is there before them, {@code V_g(C) = sum over B of (A_g + w_g [none])(B) V_{g+1}(C u B)}, and of
 * nothing wrong before them, {@code N_g = w_g N_{g+1} + sum over B of A_g(B) V_{g+1}(B)}. Rows that
 * end alike share their end. Derived here.
 */
final class CausesBehind {

  /** Most rows go on in one way only. */
  private static final int FEW = 2;

  private final double[] value;
  private final double soundValue;
  private final Map<GroupTables, CausesBehind> longer = new IdentityHashMap<>(FEW);

  private CausesBehind(double[] value, double soundValue) {
    this.value = value;
    this.soundValue = soundValue;
  }

  /** No group, only the reports. */
  static CausesBehind none(ReportWeights weights, double soundFactor) {
    return new CausesBehind(weights.ofMade(), soundFactor * weights.ofSound());
  }

  /** The same with one group before them. */
  CausesBehind and(GroupTables group) {
    CausesBehind known = longer.get(group);
    if (known == null) {
      double sound = group.healthy() * soundValue + SubsetSpace.dot(group.faulty(), value);
      known = new CausesBehind(group.all().transposed(value), sound);
      longer.put(group, known);
    }
    return known;
  }

  /** V: by the set of symptoms that is there before. */
  double[] value() {
    return value;
  }

  /** N: where nothing is wrong before. */
  double soundValue() {
    return soundValue;
  }
}

package kelter.cli.trial;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import kelter.core.diagnosis.Diagnosis;

/**
 * How a diagnosis stands to the truth.
 *
 * @param place the place of the truth among all causes, nothing wrong and something else; what is
 *     there beside it does not count
 * @param ofTruth the probability of the truth, 0 to 1
 * @param ofFirst the probability of what is named first, 0 to 1
 * @param right whether what is named first is there
 */
record Standing(int place, double ofTruth, double ofFirst, boolean right) {

  static Standing of(Diagnosis diagnosis, String truth, Set<String> present) {
    Map<String, Double> named = new LinkedHashMap<>();
    diagnosis.faults().forEach(each -> named.put(each.fault().key(), each.probability()));
    named.put(TrueKind.NOTHING_WRONG, diagnosis.healthy());
    named.put(TrueKind.SOMETHING_ELSE, diagnosis.unexplained().probability());
    double ofTruth = named.getOrDefault(truth, 0.0);
    int place = 1;
    String first = truth;
    for (Map.Entry<String, Double> each : named.entrySet()) {
      if (each.getValue() > ofTruth && !present.contains(each.getKey())) {
        place++;
      }
      if (each.getValue() > named.getOrDefault(first, 0.0)) {
        first = each.getKey();
      }
    }
    return new Standing(
        place,
        Math.max(0, Math.min(1, ofTruth)),
        Math.max(0, Math.min(1, named.getOrDefault(first, 0.0))),
        present.contains(first));
  }
}

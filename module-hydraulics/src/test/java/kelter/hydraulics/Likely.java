package kelter.hydraulics;

import java.util.Set;
import java.util.stream.Collectors;
import kelter.core.diagnosis.Diagnosis;

/** What a diagnosis of a machine with one component says, by the ids of its faults. */
final class Likely {

  private Likely() {}

  /** The faults of the likeliest state. */
  static Set<String> best(Diagnosis diagnosis) {
    return diagnosis.ranking().get(0).faults().stream()
        .map(present -> present.fault().id())
        .collect(Collectors.toSet());
  }

  /** How likely a fault is, whatever else there is. */
  static double probability(Diagnosis diagnosis, String fault) {
    return diagnosis.faults().stream()
        .filter(each -> each.fault().id().equals(fault))
        .mapToDouble(Diagnosis.FaultProbability::probability)
        .findFirst()
        .orElseThrow();
  }
}

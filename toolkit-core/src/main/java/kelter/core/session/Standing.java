package kelter.core.session;

import java.util.ArrayList;
import java.util.List;
import kelter.core.diagnosis.Diagnosis;

/** How a case stands, in a line. */
final class Standing {

  private static final int STATES = 3;

  private Standing() {}

  static String of(Diagnosis diagnosis) {
    List<String> told = new ArrayList<>();
    for (Diagnosis.FaultProbability each : diagnosis.faults()) {
      if (told.size() < STATES) {
        told.add(percent(each.probability()) + " " + each.fault().title());
      }
    }
    told.add(percent(diagnosis.healthy()) + " nothing wrong");
    return String.join("; ", told);
  }

  private static String percent(double probability) {
    return Math.round(100 * probability) + " %";
  }
}

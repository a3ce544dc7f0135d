package kelter.core.diagnosis.simulation;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.FaultModel;

/** What a state of the whole machine is called: its faults by their keys, in order. */
final class StateName {

  static final String SOUND = "nothing wrong";
  static final String UNEXPLAINED = "something else";
  private static final String AND = " + ";

  private StateName() {}

  static String of(Machine machine, List<FaultModel> models) {
    return of(keys(machine, models), machine.isUnexplained());
  }

  static String of(Diagnosis.RankedState state) {
    return of(
        state.faults().stream().map(present -> present.fault().key()).toList(),
        state.unexplained());
  }

  /** The keys of the faults that are there. */
  static List<String> keys(Machine machine, List<FaultModel> models) {
    List<String> keys = new ArrayList<>();
    for (int g = 0; g < models.size(); g++) {
      double[] severity = machine.severity().get(g);
      for (int i = 0; i < severity.length; i++) {
        if (severity[i] > 0) {
          keys.add(models.get(g).faults().get(i).key());
        }
      }
    }
    return keys;
  }

  private static String of(List<String> keys, boolean unexplained) {
    List<String> words = new ArrayList<>(new TreeSet<>(keys));
    if (unexplained) {
      words.add(UNEXPLAINED);
    }
    return words.isEmpty() ? SOUND : String.join(AND, words);
  }
}

package kelter.costing.choice;

import java.util.Arrays;
import java.util.List;

/**
 * How far steps that are taken one after the other have cured a state of the machine. A remedy
 * cures each fault that it is meant for with its own chance, whatever else it or another remedy
 * does.
 */
final class Cures {

  private final List<PlannedWork.Step> steps;
  private final boolean curable;
  private final String[] faults;

  /** For each fault the chance that it is still there. */
  private final double[] left;

  /** Which steps so far are meant for any of the faults. */
  private final boolean[] meant;

  Cures(States.State state, List<PlannedWork.Step> steps) {
    this.steps = steps;
    this.curable = state.curable();
    this.faults = state.faults().toArray(new String[0]);
    this.left = new double[faults.length];
    Arrays.fill(left, 1);
    this.meant = new boolean[steps.size()];
  }

  /** Takes a step. */
  void take(int step) {
    PlannedWork.Step taken = steps.get(step);
    for (int f = 0; f < faults.length; f++) {
      if (taken.cures().contains(faults[f])) {
        left[f] *= 1 - taken.remedy().probabilityOfCure();
        meant[step] = true;
      }
    }
  }

  /** The chance that all faults are cured by now; none where there is more than the faults. */
  double chance() {
    double all = curable ? 1 : 0;
    for (double each : left) {
      all *= 1 - each;
    }
    return all;
  }

  /** Whether a step was the last so far that was meant for a fault on its component. */
  boolean isLast(int step) {
    if (!meant[step]) {
      return false;
    }
    String component = steps.get(step).remedy().component();
    for (int later = step + 1; later < meant.length; later++) {
      if (meant[later] && steps.get(later).remedy().component().equals(component)) {
        return false;
      }
    }
    return true;
  }
}

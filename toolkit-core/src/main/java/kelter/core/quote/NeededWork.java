package kelter.core.quote;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.Remedy;
import kelter.core.safety.lockout.ActiveRow;
import kelter.core.safety.lockout.LockOut;
import kelter.core.safety.lockout.Reread;
import kelter.core.workshop.Case;

/** The work that a maximum price has to cover. */
final class NeededWork {

  /** A fault that is at least this likely is one to pay for. */
  private static final double LIKELY = 0.05;

  /** From this chance on a fault is there, or a part needed, whatever else is. */
  private static final double SURE = 0.9;

  /** Work goes on while the chance that a fault outlasts it is above this. */
  private static final double OUTLASTS = 0.1;

  private NeededWork() {}

  /**
   * The plan, and for each likely fault further remedies, the least work first, until it is
   * unlikely to outlast them. All of them may come to be done, so that the sum is an upper bound.
   */
  static List<Remedy> of(Diagnosis diagnosis) {
    Map<String, Remedy> needed = new LinkedHashMap<>();
    for (Diagnosis.PlanStep step : diagnosis.plan()) {
      needed.put(step.remedy().key(), step.remedy());
    }
    for (Diagnosis.FaultProbability each : diagnosis.faults()) {
      if (each.probability() >= LIKELY) {
        cover(diagnosis.basis().remedies(each.fault()), needed);
      }
    }
    return List.copyOf(needed.values());
  }

  private static void cover(List<Remedy> remedies, Map<String, Remedy> needed) {
    double outlasts = 1;
    for (Remedy remedy : remedies) {
      outlasts *= needed.containsKey(remedy.key()) ? 1 - remedy.probabilityOfCure() : 1;
    }
    for (Remedy remedy : remedies) {
      if (outlasts > OUTLASTS && needed.putIfAbsent(remedy.key(), remedy) == null) {
        outlasts *= 1 - remedy.probabilityOfCure();
      }
    }
  }

  /**
   * Of some work what may be done first by itself: what is needed in any case, else the first of a
   * decided case.
   */
  static List<Remedy> first(List<Remedy> needed, Diagnosis diagnosis) {
    List<Remedy> sure = diagnosis.surelyNeeded().stream().filter(needed::contains).toList();
    if (!sure.isEmpty()) {
      return sure;
    }
    boolean decided = diagnosis.basis().conclusion().isDecided();
    return decided || isSure(needed.get(0), diagnosis) ? needed.subList(0, 1) : List.of();
  }

  /** Whether some work is needed in any case, whatever else may be wrong. */
  private static boolean isSure(Remedy remedy, Diagnosis diagnosis) {
    boolean cures =
        diagnosis.faults().stream()
            .filter(each -> each.probability() >= SURE)
            .flatMap(each -> diagnosis.basis().remedies(each.fault()).stream())
            .anyMatch(each -> each.key().equals(remedy.key()));
    return cures
        || diagnosis.takeAlong().stream()
            .anyMatch(each -> each.remedy().key().equals(remedy.key()) && each.chance() >= SURE);
  }

  /** Rows that somebody's work has to end; what only the kind of machine brings is none. */
  static List<ActiveRow> open(LockOut lockOut) {
    return lockOut.rows().stream()
        .filter(each -> each.row().only().isEmpty() && !each.standing() && !each.quiet())
        .toList();
  }

  /**
   * Of some work what is on the parts that the rows wait for, and behind it what is needed in any
   * case: whoever ends a lock-out and leaves the machine broken has sold half a repair. Nothing
   * where no work ends it.
   */
  static List<Remedy> ending(List<Remedy> work, List<ActiveRow> open, Case machine) {
    Set<String> parts = new HashSet<>();
    for (ActiveRow row : open) {
      row.openDead().stream().map(Reread::component).forEach(parts::add);
      row.openLast().stream().map(Reread::component).forEach(parts::add);
    }
    machine.findings().stream()
        .filter(finding -> finding.keepsUnplugged())
        .forEach(finding -> parts.add(finding.component()));
    List<Remedy> ending = new ArrayList<>();
    List<Remedy> besides = new ArrayList<>();
    for (Remedy remedy : work) {
      if (parts.contains(remedy.component())) {
        ending.add(remedy);
      } else if (isSure(remedy, machine.diagnosis())) {
        besides.add(remedy);
      }
    }
    ending.addAll(ending.isEmpty() ? List.of() : besides);
    return ending;
  }
}

package kelter.core.diagnosis.engine;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import kelter.core.diagnosis.Conclusion;
import kelter.core.diagnosis.Conclusion.Advice;
import kelter.core.diagnosis.Conclusion.Reason;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.likelihood.Group;
import kelter.core.diagnosis.likelihood.Item;
import kelter.core.diagnosis.likelihood.Readings;
import kelter.core.diagnosis.symptom.exact.JointState;

/** Says whether the readings decide what is wrong and, if they do not, for which reason. */
final class Conclusions {

  /** From this probability on a state counts as decided; of the engine's making. */
  private static final double DECIDED = 0.9;

  /** A misfit below this is not laid to chance. */
  private static final double CONTRADICTION = 1e-3;

  /** Deviations that tell two states apart, and that do not. */
  private static final double TELLS = 3;

  private static final double DOES_NOT_TELL = 2;

  private static final double BITS_WORTH_TELLING = 0.1;

  /** Readings that may not be taken again. */
  private final Set<String> locked;

  private final List<Group> groups;
  private final List<JointState> joints;
  private final JointPosterior posterior;
  private final double misfit;
  private final List<Diagnosis.NextMeasurement> next;
  private final List<Diagnosis.Suspect> suspects;

  Conclusions(
      List<Group> groups,
      List<JointState> joints,
      JointPosterior posterior,
      double misfit,
      List<Diagnosis.NextMeasurement> next,
      List<Diagnosis.Suspect> suspects,
      Permit.Granted granted) {
    this.locked = locked(groups, granted);
    this.groups = groups;
    this.joints = joints;
    this.posterior = posterior;
    this.misfit = misfit;
    this.next = next;
    this.suspects = suspects;
  }

  private static Set<String> locked(List<Group> groups, Permit.Granted granted) {
    Set<String> locked = new HashSet<>();
    for (Group group : groups) {
      for (Item item : group.readings().items()) {
        if (!granted.measures(item.question())) {
          locked.add(item.key());
        }
      }
    }
    return locked;
  }

  private List<String> notLocked(List<String> keys) {
    return keys.stream().filter(key -> !locked.contains(key)).toList();
  }

  Conclusion reached() {
    JointState first = joints.get(0);
    if (isUnexplained(first) || misfit < CONTRADICTION && posterior.unexplained() > 1 - DECIDED) {
      return noCauseFits(first);
    }
    if (nothingWasRead()) {
      return notMeasured();
    }
    if (certainty(first) >= DECIDED) {
      List<String> again = notLocked(suspects.stream().map(Conclusions::name).toList());
      boolean suspected = !suspects.isEmpty();
      if (!again.isEmpty()) {
        String action = "take again: " + names(again);
        return new Conclusion(Reason.DECIDED, faults(first), Advice.READ_AGAIN, action, suspected);
      }
      return faults(first).isEmpty()
          ? new Conclusion(
              Reason.DECIDED,
              List.of(),
              Advice.NOTHING,
              "nothing to mend by these readings",
              suspected)
          : new Conclusion(
              Reason.DECIDED, faults(first), Advice.WORK, "go by the order of work", suspected);
    }
    JointState second = joints.size() > 1 ? joints.get(1) : first;
    List<String> both = new ArrayList<>(faults(first));
    faults(second).stream().filter(key -> !both.contains(key)).forEach(both::add);
    String coarse = tooCoarse(first, second);
    if (coarse != null && !locked.contains(coarse)) {
      return new Conclusion(
          Reason.INSTRUMENT_TOO_COARSE,
          List.of(coarse),
          Advice.READ_FINER,
          "take " + words(coarse) + " with a finer instrument",
          true);
    }
    boolean tells = !next.isEmpty() && next.get(0).bits() >= BITS_WORTH_TELLING;
    if (tells && !isMeasured(first, second)) {
      return notMeasured();
    }
    return new Conclusion(
        Reason.NOT_SEPARABLE,
        both,
        tells ? Advice.MEASURE : Advice.WORK,
        tells
            ? "measure " + words(next.get(0).question().key()) + " to tell them apart"
            : "no known measurement tells them apart: go by the order of work",
        tells);
  }

  private boolean nothingWasRead() {
    return groups.stream().allMatch(group -> group.readings().count() == 0);
  }

  private Conclusion notMeasured() {
    List<String> open =
        next.stream()
            .filter(m -> m.bits() >= BITS_WORTH_TELLING)
            .map(m -> m.question().key())
            .toList();
    return new Conclusion(
        Reason.NOT_MEASURED,
        open,
        next.isEmpty() ? Advice.TAKE_READINGS : Advice.MEASURE,
        next.isEmpty() ? "take readings" : "measure " + words(next.get(0).question().key()),
        true);
  }

  private Conclusion noCauseFits(JointState first) {
    List<String> doubtful = new ArrayList<>();
    for (int g = 0; g < groups.size(); g++) {
      Group group = groups.get(g);
      if (first.states()[g] == group.unexplainedState() || group.readings().count() > 0) {
        doubtful.addAll(farthest(group, bestExplained(g)));
      }
    }
    List<String> again = notLocked(doubtful);
    String action = doubtful.isEmpty() && locked.isEmpty() ? "take the readings again; " : "";
    return new Conclusion(
        Reason.NO_CAUSE_FITS,
        doubtful,
        again.isEmpty() && action.isEmpty() ? Advice.LOOK_BEYOND : Advice.READ_AGAIN,
        (again.isEmpty() ? action : "take again: " + names(again) + "; ")
            + "no listed cause explains them together",
        true);
  }

  /** The likeliest state of a group in which all is explained. */
  private int bestExplained(int g) {
    Group group = groups.get(g);
    int best = Group.HEALTHY;
    for (int state = 0; state < group.unexplainedState(); state++) {
      best = group.logWeight(state) > group.logWeight(best) ? state : best;
    }
    return best;
  }

  /** The readings that lie beyond what chance would do. */
  private static List<String> farthest(Group group, int state) {
    double[] deviations = Ranking.deviations(group, state);
    List<String> far = new ArrayList<>();
    for (int k = 0; k < deviations.length; k++) {
      if (Math.abs(deviations[k]) > TELLS) {
        far.add(group.readings().items().get(k).key());
      }
    }
    return far;
  }

  /** The probability that what the likeliest state says is so, whatever else is wrong. */
  private double certainty(JointState first) {
    double least = 1;
    boolean any = false;
    for (int g = 0; g < groups.size(); g++) {
      for (int fault : groups.get(g).faultsOf(first.states()[g])) {
        least = Math.min(least, posterior.fault(g, fault));
        any = true;
      }
    }
    return any ? least : first.probability();
  }

  private boolean isUnexplained(JointState joint) {
    for (int g = 0; g < groups.size(); g++) {
      if (joint.states()[g] == groups.get(g).unexplainedState()) {
        return true;
      }
    }
    return false;
  }

  private List<String> faults(JointState joint) {
    List<String> keys = new ArrayList<>();
    for (int g = 0; g < groups.size(); g++) {
      for (int place : groups.get(g).faultsOf(joint.states()[g])) {
        Fault fault = groups.get(g).faults().get(place);
        keys.add(fault.key());
      }
    }
    return keys;
  }

  /** Whether the groups in which two states differ have readings at all. */
  private boolean isMeasured(JointState one, JointState other) {
    for (int g = 0; g < groups.size(); g++) {
      if (one.states()[g] != other.states()[g] && groups.get(g).readings().count() > 0) {
        return true;
      }
    }
    return false;
  }

  /**
   * A reading that would tell two states apart if its instrument had no error and does not with the
   * one in use; null if there is none, or if another reading tells them apart.
   */
  private String tooCoarse(JointState one, JointState other) {
    String coarse = null;
    for (int g = 0; g < groups.size(); g++) {
      Group group = groups.get(g);
      if (one.states()[g] == other.states()[g]
          || one.states()[g] == group.unexplainedState()
          || other.states()[g] == group.unexplainedState()) {
        continue;
      }
      Readings readings = group.readings();
      double[] first = group.likeliestForecast(one.states()[g]);
      double[] second = group.likeliestForecast(other.states()[g]);
      for (int k = 0; k < readings.count(); k++) {
        Item item = readings.items().get(k);
        if (item.likelihood().isValue()) {
          double apart = Math.abs(first[k] - second[k]);
          double spread = readings.spread(first, k);
          if (apart > TELLS * item.likelihood().deviationOf(spread)) {
            return null;
          }
          boolean isCoarse =
              apart > TELLS * spread
                  && apart < DOES_NOT_TELL * item.likelihood().deviationOf(spread);
          coarse = isCoarse ? item.key() : coarse;
        }
      }
    }
    return coarse;
  }

  private static String name(Diagnosis.Suspect suspect) {
    return suspect.component() + "." + suspect.observable();
  }

  private static String names(List<String> keys) {
    return keys.stream().map(Conclusions::words).collect(Collectors.joining(", "));
  }

  private static String words(String key) {
    int dot = key.indexOf('.');
    return key.substring(0, dot) + " " + key.substring(dot + 1).replace('-', ' ');
  }
}

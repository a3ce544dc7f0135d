package kelter.core.diagnosis.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.Explanation;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.likelihood.Group;
import kelter.core.diagnosis.likelihood.Item;
import kelter.core.diagnosis.likelihood.Priors;
import kelter.core.diagnosis.likelihood.Readings;
import kelter.core.diagnosis.symptom.exact.JointState;
import org.apache.commons.numbers.gamma.RegularizedGamma;

/** States and faults in the order of their probability, with what speaks for and against them. */
final class Ranking {

  private static final int PRIORS_TOLD = 6;

  private final List<Group> groups;
  private final JointPosterior posterior;
  private final List<JointState> joints;
  private final List<Diagnosis.FaultProbability> faults;
  private final double[][][] alone;
  private final List<JointPosterior> without = new ArrayList<>();

  Ranking(List<Group> groups, JointPosterior posterior, List<JointState> joints) {
    this.groups = groups;
    this.posterior = posterior;
    this.joints = joints;
    this.faults = byProbability();
    this.alone = new double[groups.size()][][];
    for (int g = 0; g < alone.length; g++) {
      alone[g] = new double[groups.get(g).states()][];
    }
  }

  /** The states shown, the likeliest first. */
  List<Diagnosis.RankedState> states() {
    List<Diagnosis.RankedState> states = new ArrayList<>();
    for (int place = 0; place < joints.size(); place++) {
      JointState next = place + 1 < joints.size() ? joints.get(place + 1) : null;
      states.add(state(joints.get(place), next));
    }
    return states;
  }

  private Diagnosis.RankedState state(JointState joint, JointState next) {
    List<Diagnosis.PresentFault> faults = new ArrayList<>();
    boolean unexplained = false;
    boolean sound = true;
    for (int g = 0; g < groups.size(); g++) {
      Group group = groups.get(g);
      int state = joint.states()[g];
      for (int fault : group.faultsOf(state)) {
        faults.add(
            new Diagnosis.PresentFault(
                group.faults().get(fault), posterior.severity(g, state, fault)));
      }
      unexplained |= state == group.unexplainedState();
      sound &= state == Group.HEALTHY;
    }
    List<Diagnosis.Evidence> evidence = new ArrayList<>();
    for (int g = 0; g < groups.size(); g++) {
      boolean differs = next != null && next.states()[g] != joint.states()[g];
      if (sound || joint.states()[g] != Group.HEALTHY || differs) {
        evidence(g, joint.states()[g], next == null ? -1 : next.states()[g], evidence);
      }
    }
    return new Diagnosis.RankedState(
        faults,
        unexplained,
        joint.probability(),
        evidence,
        reports(known -> known.joint(joint.states())));
  }

  /** What each report says for what a posterior gives a probability. */
  private List<Diagnosis.ReportEvidence> reports(ToDoubleFunction<JointPosterior> probability) {
    List<Diagnosis.ReportEvidence> reports = new ArrayList<>();
    Asked asked = posterior.asked();
    for (int i = 0; i < asked.said().size(); i++) {
      if (without.size() == i) {
        without.add(posterior.without(i));
      }
      double bits =
          bits(probability.applyAsDouble(posterior))
              - bits(probability.applyAsDouble(without.get(i)));
      reports.add(
          new Diagnosis.ReportEvidence(
              asked.symptoms().get(i), asked.said().get(i).answer(), bits));
    }
    return reports;
  }

  /** The log odds of a probability, in bits. */
  private static double bits(double probability) {
    return (Math.log(probability) - Math.log1p(-probability)) / Math.log(2);
  }

  private void evidence(int g, int state, int next, List<Diagnosis.Evidence> into) {
    Group group = groups.get(g);
    double[] own = alone(g, state);
    double[] healthy = alone(g, state == Group.HEALTHY ? group.unexplainedState() : Group.HEALTHY);
    for (int k = 0; k < own.length; k++) {
      Item item = group.readings().items().get(k);
      double other = next < 0 ? Double.NaN : alone(g, next)[k];
      into.add(
          new Diagnosis.Evidence(
              item.question().component(),
              item.question().observable().id(),
              item.shown(),
              (own[k] - healthy[k]) / Math.log(2),
              (own[k] - other) / Math.log(2)));
    }
  }

  /** How likely each reading is by itself in a state, worked out when it is first asked for. */
  private double[] alone(int g, int state) {
    if (alone[g][state] == null) {
      alone[g][state] = groups.get(g).logAlone(state);
    }
    return alone[g][state];
  }

  /** Every fault by itself, whatever else is wrong, the likeliest first. */
  List<Diagnosis.FaultProbability> faults() {
    return faults;
  }

  private List<Diagnosis.FaultProbability> byProbability() {
    List<Diagnosis.FaultProbability> all = new ArrayList<>();
    for (int g = 0; g < groups.size(); g++) {
      for (int fault = 0; fault < groups.get(g).faults().size(); fault++) {
        all.add(
            new Diagnosis.FaultProbability(
                groups.get(g).faults().get(fault), posterior.fault(g, fault), severity(g, fault)));
      }
    }
    all.sort(GreatestFirst.by(Diagnosis.FaultProbability::probability, f -> f.fault().key()));
    return all;
  }

  /** Why a fault, {@code component.fault}, is held for as likely as it is. */
  Optional<Explanation> explain(String key, NextMeasurements next, Priors priors) {
    for (int g = 0; g < groups.size(); g++) {
      for (int place = 0; place < groups.get(g).faults().size(); place++) {
        if (groups.get(g).faults().get(place).key().equals(key)) {
          return Optional.of(explain(g, place, next, priors));
        }
      }
    }
    return Optional.empty();
  }

  private Explanation explain(int g, int place, NextMeasurements next, Priors priors) {
    Group group = groups.get(g);
    Fault fault = group.faults().get(place);
    int rival = Group.HEALTHY;
    for (int state = 0; state < group.states(); state++) {
      if (!group.hasFault(state, place)
          && posterior.marginal(g, state) > posterior.marginal(g, rival)) {
        rival = state;
      }
    }
    List<Diagnosis.Evidence> evidence = new ArrayList<>();
    evidence(g, place + 1, rival, evidence);
    Set<String> asked =
        group.model().questions().stream().map(Question::key).collect(Collectors.toSet());
    return new Explanation(
        faults.stream().filter(each -> each.fault() == fault).findFirst().orElseThrow(),
        prior(fault, priors),
        evidence,
        reports(known -> known.fault(g, place)),
        words(group, rival),
        next.ranked().stream().filter(m -> asked.contains(m.question().key())).toList());
  }

  private static String words(Group group, int state) {
    if (state == group.unexplainedState()) {
      return "something that no known fault explains";
    }
    List<String> titles = new ArrayList<>();
    for (int fault : group.faultsOf(state)) {
      titles.add(group.faults().get(fault).component() + ": " + group.faults().get(fault).title());
    }
    return titles.isEmpty() ? "nothing wrong" : String.join("; and ", titles);
  }

  /** The severity of a fault over all states that hold it. */
  private Diagnosis.Severity severity(int g, int fault) {
    Group group = groups.get(g);
    double mass = 0;
    double mean = 0;
    double square = 0;
    for (int state = 0; state < group.states(); state++) {
      double probability = group.hasFault(state, fault) ? posterior.marginal(g, state) : 0;
      if (probability > 0) {
        Diagnosis.Severity own = posterior.severity(g, state, fault);
        mass += probability;
        mean += probability * own.mean();
        square += probability * (own.mean() * own.mean() + own.sd() * own.sd());
      }
    }
    if (mass == 0) {
      return group.severity(fault + 1, fault);
    }
    mean /= mass;
    return new Diagnosis.Severity(mean, Math.sqrt(Math.max(0, square / mass - mean * mean)));
  }

  /** The tail of the chi-squared distribution beyond the squared deviations of the best state. */
  double misfit() {
    for (JointState joint : joints) {
      double squares = 0;
      double freedom = 0;
      boolean explained = true;
      for (int g = 0; g < groups.size(); g++) {
        Group group = groups.get(g);
        int state = joint.states()[g];
        explained &= state != group.unexplainedState();
        double[] deviations = deviations(group, state);
        double own = 0;
        for (double z : deviations) {
          squares += Double.isNaN(z) ? 0 : z * z;
          own += Double.isNaN(z) ? 0 : 1;
        }
        freedom += Math.max(0, own - group.faultsOf(state).length);
      }
      if (explained) {
        return squares == 0 ? 1 : RegularizedGamma.Q.value(Math.max(1, freedom) / 2, squares / 2);
      }
    }
    return 0;
  }

  /**
   * How far each reading lies from the forecast of a state at its likeliest severity, in standard
   * deviations; NaN for one that is not a value.
   */
  static double[] deviations(Group group, int state) {
    Readings readings = group.readings();
    double[] forecast = group.likeliestForecast(state);
    double[] deviations = new double[readings.count()];
    for (int k = 0; k < deviations.length; k++) {
      deviations[k] =
          readings.items().get(k).likelihood().deviation(forecast[k], readings.spread(forecast, k));
    }
    return deviations;
  }

  /** The prior of each of the likeliest faults, and how much it would have to change to matter. */
  List<Diagnosis.Prior> priors(Priors priors) {
    List<Diagnosis.Prior> told = new ArrayList<>();
    for (Diagnosis.FaultProbability each : faults) {
      if (told.size() < PRIORS_TOLD) {
        told.add(prior(each.fault(), priors));
      }
    }
    return told;
  }

  private Diagnosis.Prior prior(Fault fault, Priors priors) {
    for (int g = 0; g < groups.size(); g++) {
      for (int place = 0; place < groups.get(g).faults().size(); place++) {
        if (groups.get(g).faults().get(place) == fault) {
          return new Diagnosis.Prior(
              fault, priors.of(fault), priors.source(fault), turning(g, place));
        }
      }
    }
    throw new IllegalArgumentException(fault.key());
  }

  /**
   * The odds of a fault enter the weight of each state that holds it as a factor. The likeliest
   * state therefore changes where that factor makes up for what the best state of its group without
   * the fault (or with it, if the likeliest lacks it) falls short.
   */
  private double turning(int g, int fault) {
    Group group = groups.get(g);
    int first = joints.get(0).states()[g];
    boolean there = group.hasFault(first, fault);
    double best = 0;
    for (int state = 0; state < group.states(); state++) {
      if (group.hasFault(state, fault) != there) {
        best = Math.max(best, posterior.marginal(g, state));
      }
    }
    double ratio = best / posterior.marginal(g, first);
    return there ? ratio : 1 / ratio;
  }
}

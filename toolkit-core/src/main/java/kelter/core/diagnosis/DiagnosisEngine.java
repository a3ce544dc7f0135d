package kelter.core.diagnosis;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import kelter.core.safety.Hazard;
import org.apache.commons.numbers.gamma.RegularizedGamma;

/**
 * Weighs the states of a machine by all readings of a job (Bayes' theorem) and says what to measure
 * and what to do next. Free of memory and safe for several threads; the same job gives the same
 * result.
 */
public final class DiagnosisEngine {

  private static final int STATES_SHOWN = 8;
  private static final double WORTH_MEASURING = 0.01;

  private final EngineSettings settings;

  /**
   * An engine.
   *
   * @param settings what it takes for granted
   */
  public DiagnosisEngine(EngineSettings settings) {
    this.settings = Objects.requireNonNull(settings);
  }

  /**
   * Diagnoses a machine.
   *
   * @param job the job, with its readings
   * @param models the fault models of its appliance; no two may share an observable of a component
   * @return what the readings say
   * @throws IllegalArgumentException if two models share an observable of a component
   */
  public Diagnosis diagnose(Job job, List<FaultModel> models) {
    Map<String, Measurement> open = new LinkedHashMap<>();
    for (Measurement measurement : job.measurements()) {
      open.put(open.size() + " " + key(measurement), measurement);
    }
    Set<String> claimed = new HashSet<>();
    List<List<Group.Item>> items = new ArrayList<>();
    for (FaultModel model : models) {
      items.add(items(job, model, open, claimed));
    }
    // Groups share nothing, so they are weighed side by side; their order stays that of the models.
    List<Group> groups =
        IntStream.range(0, models.size())
            .parallel()
            .mapToObj(g -> new Group(models.get(g), items.get(g), settings))
            .toList();
    double priorSound =
        job.complaint().isMade() ? settings.nothingFound() : settings.soundIfUnasked();
    if (groups.isEmpty()) {
      return nothingKnown(priorSound, open.values());
    }
    JointPosterior posterior = new JointPosterior(groups, priorSound);
    List<Diagnosis.FaultProbability> faults = faults(groups, posterior);
    List<JointPosterior.Joint> joints = posterior.likeliest(STATES_SHOWN);
    return new Diagnosis(
        joints.stream().map(joint -> state(joint, groups)).toList(),
        faults,
        posterior.sound(),
        new Diagnosis.Unexplained(posterior.unexplained(), misfit(groups, joints)),
        next(groups, posterior),
        RepairPlan.of(groups, posterior, job.prices()),
        open.values().stream().map(DiagnosisEngine::key).distinct().toList());
  }

  /** Where no model speaks of the machine, only the prior is left: no fault, no misfit. */
  private static Diagnosis nothingKnown(double priorSound, Collection<Measurement> open) {
    return new Diagnosis(
        List.of(),
        List.of(),
        priorSound,
        new Diagnosis.Unexplained(1 - priorSound, 1),
        List.of(),
        List.of(),
        open.stream().map(DiagnosisEngine::key).distinct().toList());
  }

  private static String key(Measurement measurement) {
    return measurement.component() + "." + measurement.observable();
  }

  private static String key(Question question) {
    return question.component() + "." + question.observable().id();
  }

  /** Takes the readings that a model forecasts out of those that are still open. */
  private List<Group.Item> items(
      Job job, FaultModel model, Map<String, Measurement> open, Set<String> claimed) {
    Map<String, Question> known = new LinkedHashMap<>();
    model.questions().forEach(question -> known.putIfAbsent(key(question), question));
    for (String key : known.keySet()) {
      if (!claimed.add(key)) {
        throw new IllegalArgumentException("two fault models forecast " + key);
      }
    }
    List<Group.Item> items = new ArrayList<>();
    open.values()
        .removeIf(
            measurement -> {
              Question question = known.get(key(measurement));
              if (question == null) {
                return false;
              }
              items.add(item(job, measurement, question));
              return true;
            });
    return items;
  }

  private Group.Item item(Job job, Measurement measurement, Question usual) {
    Question asked =
        new Question(measurement.component(), usual.observable(), measurement.conditions());
    String shown =
        measurement.readings().stream().map(Reading::display).collect(Collectors.joining(", "));
    return new Group.Item(
        asked, shown, Likelihood.of(job, measurement, usual.observable(), settings.blunder()));
  }

  private static List<Diagnosis.FaultProbability> faults(
      List<Group> groups, JointPosterior posterior) {
    List<Diagnosis.FaultProbability> faults = new ArrayList<>();
    for (int g = 0; g < groups.size(); g++) {
      Group group = groups.get(g);
      for (int state = 0; state < group.states(); state++) {
        if (group.isFault(state)) {
          faults.add(
              new Diagnosis.FaultProbability(
                  group.fault(state), posterior.marginal(g, state), group.severity(state)));
        }
      }
    }
    faults.sort(
        Comparator.comparingDouble((Diagnosis.FaultProbability f) -> -f.probability())
            .thenComparing(f -> f.fault().key()));
    return faults;
  }

  private static Diagnosis.RankedState state(JointPosterior.Joint joint, List<Group> groups) {
    List<Diagnosis.PresentFault> faults = new ArrayList<>();
    List<Diagnosis.Evidence> evidence = new ArrayList<>();
    boolean unexplained = false;
    boolean sound = true;
    for (int g = 0; g < groups.size(); g++) {
      Group group = groups.get(g);
      int state = joint.state(g);
      if (group.isFault(state)) {
        faults.add(new Diagnosis.PresentFault(group.fault(state), group.severity(state)));
      }
      unexplained |= state == group.unexplainedState();
      sound &= state == Group.HEALTHY;
    }
    for (int g = 0; g < groups.size(); g++) {
      if (sound || joint.state(g) != Group.HEALTHY) {
        evidence.addAll(groups.get(g).evidence(joint.state(g)));
      }
    }
    return new Diagnosis.RankedState(faults, unexplained, joint.probability(), evidence);
  }

  /** The tail of the chi-squared distribution beyond the squared deviations of the best state. */
  private static double misfit(List<Group> groups, List<JointPosterior.Joint> joints) {
    for (JointPosterior.Joint joint : joints) {
      double squares = 0;
      double freedom = 0;
      boolean explained = true;
      for (int g = 0; g < groups.size(); g++) {
        int state = joint.state(g);
        explained &= state != groups.get(g).unexplainedState();
        double[] own = groups.get(g).misfit(state);
        squares += own[0];
        freedom += own[1] - (groups.get(g).isFault(state) && own[1] > 0 ? 1 : 0);
      }
      if (explained) {
        return squares == 0 ? 1 : RegularizedGamma.Q.value(Math.max(1, freedom) / 2, squares / 2);
      }
    }
    return 0;
  }

  private List<Diagnosis.NextMeasurement> next(List<Group> groups, JointPosterior posterior) {
    List<Diagnosis.NextMeasurement> next = new ArrayList<>();
    for (int g = 0; g < groups.size(); g++) {
      Group group = groups.get(g);
      Set<String> done =
          group.items().stream().map(item -> key(item.question())).collect(Collectors.toSet());
      List<Question> open =
          group.model().questions().stream()
              .filter(question -> !done.contains(key(question)))
              .filter(this::mayBeProposed)
              .toList();
      if (open.isEmpty()) {
        continue;
      }
      double[] probability = new double[group.states()];
      for (int state = 0; state < probability.length; state++) {
        probability[state] = posterior.marginal(g, state);
      }
      double[] bits = new Information(group, probability).bits(open);
      for (int k = 0; k < bits.length; k++) {
        if (bits[k] >= WORTH_MEASURING) {
          next.add(new Diagnosis.NextMeasurement(open.get(k), bits[k]));
        }
      }
    }
    next.sort(
        Comparator.comparing((Diagnosis.NextMeasurement m) -> hazard(m) == Hazard.LIVE)
            .thenComparingDouble(m -> -m.bits() / m.question().observable().procedure().minutes())
            .thenComparing(m -> key(m.question())));
    return next;
  }

  private boolean mayBeProposed(Question question) {
    return settings.competentForLiveWork()
        || question.observable().procedure().hazard() != Hazard.LIVE;
  }

  private static Hazard hazard(Diagnosis.NextMeasurement measurement) {
    return measurement.question().observable().procedure().hazard();
  }
}

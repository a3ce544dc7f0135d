package kelter.core.diagnosis.engine;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import kelter.core.diagnosis.Brings;
import kelter.core.diagnosis.Conclusion;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.Explanation;
import kelter.core.diagnosis.FaultHistory;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Knowledge;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.likelihood.Brought;
import kelter.core.diagnosis.likelihood.Group;
import kelter.core.diagnosis.likelihood.Item;
import kelter.core.diagnosis.likelihood.Likelihood;
import kelter.core.diagnosis.likelihood.Priors;
import kelter.core.diagnosis.symptom.cases.TooManySymptoms;
import kelter.core.diagnosis.symptom.exact.JointState;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Prices;
import kelter.core.problem.InputException;

/**
 * Weighs the states of a machine by all readings of a job (Bayes' theorem) and says what to measure
 * and what to do next. Free of memory and safe for several threads; the same job gives the same
 * result, whatever the number of threads.
 */
public final class DiagnosisEngine {

  private static final int STATES_SHOWN = 8;

  private final EngineSettings settings;
  private final FaultHistory history;
  private final boolean sideBySide;
  private final Permit permit;

  /**
   * An engine for a shop that has kept no book. It works in the thread that asks it.
   *
   * @param settings what it takes for granted
   */
  public DiagnosisEngine(EngineSettings settings) {
    this(settings, FaultHistory.NONE, false, Permit.ALL);
  }

  /**
   * An engine that proposes whatever its settings allow.
   *
   * @param settings what it takes for granted
   * @param history what the shop has found before
   * @param sideBySide whether the models of one machine are found on several cores
   */
  public DiagnosisEngine(EngineSettings settings, FaultHistory history, boolean sideBySide) {
    this(settings, history, sideBySide, Permit.ALL);
  }

  /**
   * An engine.
   *
   * @param settings what it takes for granted
   * @param history what the shop has found before
   * @param sideBySide whether the models of one machine are found on several cores, which serves
   *     who waits for one diagnosis and not who makes many
   * @param permit what may be proposed on the machine
   */
  public DiagnosisEngine(
      EngineSettings settings, FaultHistory history, boolean sideBySide, Permit permit) {
    this.settings = Objects.requireNonNull(settings);
    this.history = Objects.requireNonNull(history);
    this.sideBySide = sideBySide;
    this.permit = Objects.requireNonNull(permit);
  }

  /**
   * How long a measurement takes.
   *
   * @param question what is measured
   * @param reached the ids of the components at which a reading was taken that was not a live one,
   *     which saves the way to them
   * @return in min, above 0
   */
  public static double minutes(Question question, Set<String> reached) {
    return NextMeasurements.minutes(question, reached);
  }

  /**
   * Diagnoses a machine.
   *
   * @param job the job, with its reports and readings
   * @param models the fault models of its appliance; no two may share an observable of a component
   * @return what they say
   * @throws IllegalArgumentException if two models share an observable of a component
   */
  public Diagnosis diagnose(Job job, List<FaultModel> models) {
    return diagnose(job, Knowledge.of(models));
  }

  /**
   * Diagnoses a machine.
   *
   * @param job the job, with its reports and readings
   * @param knowledge what is known of such a machine
   * @return what they say
   * @throws IllegalArgumentException if two models share an observable of a component, a report is
   *     of a symptom that is not known, or a fault brings one that it never meets, or more than
   *     certain
   * @throws InputException if more symptoms are reported as there than can be weighed together
   */
  public Diagnosis diagnose(Job job, Knowledge knowledge) {
    Optional<Posterior> found = update(job, knowledge);
    return found.isPresent() ? conclude(found.get(), knowledge) : nothingKnown(job);
  }

  /**
   * Tells why a fault is held for as likely as it is.
   *
   * @param job the job, with its reports and readings
   * @param knowledge what is known of such a machine
   * @param fault the fault, {@code component.fault}
   * @return the reasons, or empty if no model knows the fault
   * @throws IllegalArgumentException as {@link #diagnose}
   * @throws InputException as {@link #diagnose}
   */
  public Optional<Explanation> explain(Job job, Knowledge knowledge, String fault) {
    return update(job, knowledge).flatMap(found -> explain(found, fault));
  }

  private Optional<Explanation> explain(Posterior found, String fault) {
    Ranking ranking = found.ranking();
    Permit.Granted granted = permit.after(ranking.faults());
    NextMeasurements next =
        NextMeasurements.of(found.groups, found.posterior, found.plan(granted), settings, granted);
    return ranking.explain(fault, next, found.priors());
  }

  /** What all models say, put together. */
  record Posterior(
      Job job,
      List<Group> groups,
      Priors priors,
      JointPosterior posterior,
      List<JointState> joints,
      List<String> notUsed) {

    Ranking ranking() {
      return new Ranking(groups, posterior, joints);
    }

    RepairPlan plan(Permit.Granted granted) {
      return RepairPlan.of(groups, posterior, job.prices().map(Prices::asPaid), granted::mends);
    }
  }

  private double priorSound(Job job) {
    return job.complaint().isMade() ? settings.nothingFound() : settings.soundIfUnasked();
  }

  /** Weighs all states, and does no more; empty if no model speaks of the machine. */
  Optional<Posterior> update(Job job, Knowledge knowledge) {
    Map<String, Measurement> open = new LinkedHashMap<>();
    for (Measurement measurement : job.pooled().measurements()) {
      open.put(open.size() + " " + key(measurement), measurement);
    }
    Set<String> claimed = new HashSet<>();
    List<List<Item>> items = new ArrayList<>();
    List<FaultModel> models = knowledge.allModels();
    for (FaultModel model : models) {
      items.add(items(job, model, open, claimed));
    }
    if (models.isEmpty()) {
      return Optional.empty();
    }
    Priors priors = new Priors(job.appliance(), history);
    Asked asked = Asked.of(knowledge.symptoms(), job.complaint().symptoms());
    JointPosterior posterior =
        posterior(models, knowledge.brings(), items, priors, asked, priorSound(job));
    return Optional.of(
        new Posterior(
            job,
            posterior.groups(),
            priors,
            posterior,
            posterior.likeliest(STATES_SHOWN),
            keys(open.values())));
  }

  private JointPosterior posterior(
      List<FaultModel> models,
      List<Brings> brings,
      List<List<Item>> items,
      Priors priors,
      Asked asked,
      double priorSound) {
    List<List<Brought>> within = new ArrayList<>();
    for (FaultModel model : models) {
      within.add(Brought.within(model, brings));
    }
    List<Group> singles =
        GroupWork.of(
            models,
            sideBySide,
            g -> Group.of(models.get(g), items.get(g), priors, within.get(g), settings));
    List<BroughtAcross> brought = BroughtAcross.among(singles, brings);
    if (asked.said().isEmpty() && brought.isEmpty()) {
      List<Group> groups = GroupWork.of(models, sideBySide, g -> singles.get(g).withPairs());
      return JointPosterior.of(groups, asked, brought, priorSound);
    }
    JointPosterior ofSingles;
    try {
      ofSingles = JointPosterior.of(singles, asked, brought, priorSound);
    } catch (TooManySymptoms tooMany) {
      throw new InputException(
          "symptoms",
          tooMany.getMessage(),
          "leave out those that tell least, such as what hides another");
    }
    List<Group.Outside> outside = new ArrayList<>();
    for (int g = 0; g < singles.size(); g++) {
      outside.add(ofSingles.outside(g));
    }
    List<Group> groups =
        GroupWork.of(models, sideBySide, g -> singles.get(g).withPairs(outside.get(g)));
    return ofSingles.withPairs(groups, brought);
  }

  private Diagnosis conclude(Posterior found, Knowledge knowledge) {
    List<Group> groups = found.groups;
    JointPosterior posterior = found.posterior;
    Ranking ranking = found.ranking();
    List<Diagnosis.FaultProbability> faults = ranking.faults();
    Permit.Granted granted = permit.after(faults);
    RepairPlan plan = found.plan(granted);
    NextMeasurements next = NextMeasurements.of(groups, posterior, plan, settings, granted);
    double misfit = ranking.misfit();
    List<Diagnosis.Suspect> suspects = Suspects.among(groups, posterior);
    Conclusion conclusion =
        new Conclusions(groups, found.joints, posterior, misfit, next.ranked(), suspects, granted)
            .reached();
    return new Diagnosis(
        ranking.states(),
        faults,
        posterior.sound(),
        new Diagnosis.Unexplained(posterior.unexplained(), misfit),
        NextQuestions.of(posterior, found.joints, knowledge.symptoms()),
        next.ranked(),
        plan.steps(),
        PartsNeeded.of(groups, posterior, plan),
        found.notUsed,
        new Diagnosis.Basis(
            conclusion,
            suspects,
            ranking.priors(found.priors),
            posterior.leftOut(),
            next.enough() && isAssessed(conclusion),
            granted.staysUnplugged(),
            barred(faults, granted)));
  }

  /** The components on which no work may be proposed. */
  private static Set<String> barred(
      List<Diagnosis.FaultProbability> faults, Permit.Granted granted) {
    Set<String> barred = new HashSet<>();
    for (Diagnosis.FaultProbability each : faults) {
      if (!granted.mends(each.fault().component())) {
        barred.add(each.fault().component());
      }
    }
    return barred;
  }

  /** Whether enough fits, and enough was read, to say that no more needs to be. */
  private static boolean isAssessed(Conclusion conclusion) {
    return conclusion.reason() != Conclusion.Reason.NO_CAUSE_FITS
        && conclusion.reason() != Conclusion.Reason.NOT_MEASURED;
  }

  /** Where no model speaks of the machine, only the prior is left: no fault, no misfit. */
  private Diagnosis nothingKnown(Job job) {
    List<String> notUsed = keys(job.measurements());
    Conclusion conclusion =
        new Conclusion(
            Conclusion.Reason.NOT_MEASURED,
            notUsed,
            Conclusion.Advice.NAME_COMPONENT,
            "name a component with its figures that a module knows faults of",
            true);
    return new Diagnosis(
        List.of(),
        List.of(),
        priorSound(job),
        new Diagnosis.Unexplained(1 - priorSound(job), 1),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        notUsed,
        new Diagnosis.Basis(
            conclusion,
            List.of(),
            List.of(),
            0,
            false,
            permit.after(List.of()).staysUnplugged(),
            Set.of()));
  }

  /** What some measurements are of, each once. */
  private static List<String> keys(Collection<Measurement> measurements) {
    Set<String> keys = new LinkedHashSet<>();
    for (Measurement measurement : measurements) {
      keys.add(key(measurement));
    }
    return List.copyOf(keys);
  }

  private static String key(Measurement measurement) {
    return measurement.component() + "." + measurement.observable();
  }

  /** Takes the readings that a model forecasts out of those that are still open. */
  private List<Item> items(
      Job job, FaultModel model, Map<String, Measurement> open, Set<String> claimed) {
    Map<String, Question> known = new LinkedHashMap<>();
    for (Question question : model.questions()) {
      known.putIfAbsent(question.key(), question);
    }
    for (String key : known.keySet()) {
      if (!claimed.add(key)) {
        throw new IllegalArgumentException("two fault models forecast " + key);
      }
    }
    List<Item> items = new ArrayList<>();
    Iterator<Measurement> rest = open.values().iterator();
    while (rest.hasNext()) {
      Measurement measurement = rest.next();
      Question question = known.get(key(measurement));
      if (question != null) {
        items.add(item(job, measurement, question));
        rest.remove();
      }
    }
    return items;
  }

  private Item item(Job job, Measurement measurement, Question usual) {
    Question asked =
        new Question(measurement.component(), usual.observable(), measurement.conditions());
    Likelihood likelihood = Likelihood.of(job, measurement, usual.observable(), settings.blunder());
    return new Item(
        asked,
        measurement.shown(),
        likelihood,
        Likelihood.isOfInstrument(measurement) ? measurement.instrument() : Optional.empty());
  }
}

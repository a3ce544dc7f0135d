package kelter.core.workshop;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import kelter.core.book.learned.Learned;
import kelter.core.catalogue.Kind;
import kelter.core.check.Checker;
import kelter.core.check.Finding;
import kelter.core.check.Settling;
import kelter.core.check.Verdict;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.Explanation;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultHistory;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Knowledge;
import kelter.core.diagnosis.Remedy;
import kelter.core.diagnosis.SharedQuantity;
import kelter.core.diagnosis.engine.DiagnosisEngine;
import kelter.core.diagnosis.engine.Permit;
import kelter.core.diagnosis.model.ModelDefect;
import kelter.core.job.Component;
import kelter.core.job.Job;
import kelter.core.job.Market;
import kelter.core.job.Measurement;
import kelter.core.job.rule.JobRules;
import kelter.core.module.CalculationModule;
import kelter.core.option.CarbonBalance;
import kelter.core.option.Explained;
import kelter.core.option.Weigher;
import kelter.core.option.Weighing;
import kelter.core.problem.InputException;
import kelter.core.quantity.Nearest;
import kelter.core.safety.Caution;
import kelter.core.safety.lockout.LockOut;
import kelter.core.safety.lockout.Situation;
import kelter.core.safety.lockout.StepsFor;
import kelter.core.vocabulary.Symptom;
import kelter.core.vocabulary.Vocabulary;
import kelter.core.workshop.kind.MachineKnowledge;
import kelter.core.workshop.kind.TypicalFindings;

/**
 * A job that a workshop has taken on. Findings, fault models and diagnosis are worked out once,
 * when somebody first asks for them. What the lock-out table forbids is not proposed. It is safe
 * for several threads.
 */
public final class Case {

  private final Workshop workshop;
  private final Job job;
  private final Checker checker;
  private List<Finding> findings;

  /** What somebody tells of machines of the kind in place of the kind itself. */
  private final Optional<Knowledge> told;

  private MachineKnowledge known;
  private Diagnosis diagnosis;
  private Optional<AsLeft> left;
  private Locking locking;
  private LockOut lockOut;

  Case(Workshop workshop, Job job, Optional<Knowledge> told) {
    this.workshop = workshop;
    this.job = JobRules.require(job.with(workshop.whole(job)), workshop.vocabulary());
    this.told = told;
    this.checker =
        new Checker(
            workshop.parts().on(this.job.appliance()).checks(),
            workshop.vocabulary(),
            workshop.typicalInstruments(),
            workshop.shop().rule());
  }

  /**
   * The job.
   *
   * @return the job as it was taken on
   */
  public Job job() {
    return job;
  }

  /**
   * The words in which it is told.
   *
   * @return kinds of components and symptoms of all modules
   */
  public Vocabulary vocabulary() {
    return workshop.vocabulary();
  }

  /**
   * What to mind before anything is done, such as an instrument whose calibration ran out, or a
   * reported symptom after which the machine stays unplugged.
   *
   * @return cautions for this job
   */
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>(workshop.shop().cautions(job));
    cautions.addAll(0, locking().cautions());
    return cautions;
  }

  /**
   * What the lock-out table says of the machine: of the complaint, the readings and the kind, and
   * of faults that are likely as found. Work alone ends no suspicion: its test does.
   *
   * @return what may be proposed, and what has to be done first
   */
  public synchronized LockOut lockOut() {
    if (lockOut == null) {
      lockOut = locking().with(diagnosis().faults());
    }
    return lockOut;
  }

  /**
   * The same before any fault is weighed, which takes no diagnosis.
   *
   * @return what complaint, readings and kind say
   */
  public LockOut lockOutAsFound() {
    return locking().withoutSuspicions();
  }

  /**
   * How the machine is isolated, in order.
   *
   * @return the steps for its kind and market
   */
  public List<StepsFor> isolation() {
    return locking().isolation();
  }

  /**
   * The tests before and after power is put on again, in order, each with its limit. The first that
   * fails ends them.
   *
   * @return the steps for its kind and market
   */
  public List<StepsFor> backToPower() {
    return locking().backToPower();
  }

  private synchronized Locking locking() {
    if (locking == null) {
      locking = new Locking(situation());
    }
    return locking;
  }

  private Situation situation() {
    // By identity, since to hash the record of a reading is dear at a start.
    Map<Measurement, List<Finding>> judged = Collections.synchronizedMap(new IdentityHashMap<>());
    return new Situation(
        job,
        findings(),
        each -> judged.computeIfAbsent(each, this::judged),
        kind(),
        known().market(),
        workshop.vocabulary());
  }

  /**
   * The readings held against their limits.
   *
   * @return the findings, in the order of modules and parts
   */
  public synchronized List<Finding> findings() {
    if (findings == null) {
      List<Finding> all = new ArrayList<>();
      for (Measurement.Stage stage : Measurement.Stage.values()) {
        boolean found = stage == Measurement.Stage.AS_FOUND;
        List<Measurement> read = new ArrayList<>(found ? job.measurements() : job.asLeft());
        read.removeIf(each -> each.stage() != stage);
        if (found || !read.isEmpty()) {
          Job staged = job.with(job.complaint(), read);
          TypicalFindings.of(checker, staged, known().machine())
              .forEach(each -> all.add(found ? each : each.asLeft()));
        }
      }
      findings = List.copyOf(all);
    }
    return findings;
  }

  /**
   * One measurement of the job by itself, held against its limits.
   *
   * @param measurement a measurement of the job
   * @return the findings; none where there is no limit
   */
  public List<Finding> judged(Measurement measurement) {
    Job alone = job.with(job.complaint(), List.of(measurement));
    return TypicalFindings.of(checker, alone, known().machine());
  }

  /**
   * How undecided findings could be settled.
   *
   * @return what tells it
   */
  public Settling settling() {
    return checker.settling(job).where(locking()::mayBeRead);
  }

  /**
   * What the readings say is wrong, what to measure and what to do next.
   *
   * @return the diagnosis
   * @throws IllegalArgumentException if a cause brings one that it never meets, or several with
   *     chances that sum to 1 or more
   */
  public synchronized Diagnosis diagnosis() {
    if (diagnosis == null) {
      diagnosis = naming(() -> engine().diagnose(Locking.weighed(job), knowledge()));
    }
    return diagnosis;
  }

  /**
   * What is held of the machine after the work, by what was found to be wrong, by the chances that
   * the work cures and by what was read and seen after it.
   *
   * @return what is held of it; empty if no work is recorded and nothing was read after it
   */
  public synchronized Optional<AsLeft> asLeft() {
    if (left == null) {
      Job after =
          AfterWork.left(
              job,
              backToPower(),
              kind()
                  .map(Kind::symptoms)
                  .orElseGet(
                      () -> Set.copyOf(vocabulary().weighed().stream().map(Symptom::id).toList())));
      boolean begun =
          job.progress().isWorked()
              || !after.measurements().isEmpty()
              || !after.complaint().symptoms().isEmpty();
      boolean known = !knowledge().allModels().isEmpty();
      left = begun && known ? Optional.of(naming(() -> asLeft(after))) : Optional.empty();
    }
    return left;
  }

  private AsLeft asLeft(Job after) {
    AfterWork work = new AfterWork(withWhatWasFound(), known().settings(), job);
    Knowledge remaining = work.knowledge(knowledge());
    Diagnosis now =
        new DiagnosisEngine(
                work.settings(knowledge(), remaining), FaultHistory.NONE, true, locking())
            .diagnose(Locking.weighed(after, Measurement.Stage.AS_LEFT), remaining);
    return work.judged(knowledge(), now, outsideAsLeft());
  }

  /** What was read after the work and does not conform; a later reading of the same counts. */
  private List<Finding> outsideAsLeft() {
    return job.asLeft().stream()
        .flatMap(each -> judged(each).stream())
        .filter(each -> each.verdict() == Verdict.DOES_NOT_CONFORM)
        .map(Finding::asLeft)
        .toList();
  }

  /** The diagnosis as found, weighed with what the technician found to be wrong. */
  private Diagnosis withWhatWasFound() {
    WhatWasFound found = WhatWasFound.of(job, diagnosis(), known().settings());
    return found.isNothing()
        ? diagnosis()
        : new DiagnosisEngine(found.in(known().settings()), FaultHistory.NONE, true, locking())
            .diagnose(Locking.weighed(job), found.in(knowledge()));
  }

  /**
   * Why a fault is held for as likely as it is.
   *
   * @param word {@code component.fault}, or only the id of the fault if no other has it
   * @return the reasons
   * @throws InputException if there is no such fault, or there are several
   */
  public Explanation explain(String word) {
    return naming(
        () -> engine().explain(Locking.weighed(job), knowledge(), faultKey(word)).orElseThrow());
  }

  /**
   * The options for the owner, weighed.
   *
   * @param seed the seed of all draws: the same seed gives the same figures
   * @return the options
   * @throws InputException if no module weighs, or the job lacks what the weighing needs
   */
  public Weighing options(long seed) {
    return weigher().weigh(job, diagnosis(), seed);
  }

  /**
   * The options, and why they come out as they do; this takes longer.
   *
   * @param seed the seed of all draws: the same seed gives the same figures
   * @return options and reasons
   * @throws InputException if no module weighs, or the job lacks what the weighing needs
   */
  public Explained explainedOptions(long seed) {
    return weigher().weighAndExplain(job, diagnosis(), seed);
  }

  /**
   * What keeping the machine and replacing it emit.
   *
   * @return the balance, or empty if the weigher makes none
   * @throws InputException if no module weighs, or the job lacks what the balance needs
   */
  public Optional<CarbonBalance> carbon() {
    return weigher().carbon(job, diagnosis());
  }

  /**
   * What may be wrong with its machine.
   *
   * @return the faults of all models and the causes without one
   */
  public List<Fault> faults() {
    return knowledge().allModels().stream().flatMap(model -> model.faults().stream()).toList();
  }

  /**
   * What can be done about the faults that its machine may have, as far as it is for this tool.
   *
   * @return remedies, one once for each fault that it is meant for
   */
  public List<Remedy> remedies() {
    List<Remedy> remedies = new ArrayList<>();
    for (Fault fault : faults()) {
      for (Remedy remedy : fault.remedies()) {
        if (locking().withoutSuspicions().mends(remedy.component())) {
          remedies.add(remedy);
        }
      }
    }
    return remedies;
  }

  /**
   * The components of the job whose faults no module knows, or not without further figures. Parts
   * that only the kind of machine has do not count, nor do causes without a model: they are
   * weighed, but no measurement of them is known.
   *
   * @return their ids, in the order of the appliance, with why in brackets where figures contradict
   *     each other or a part has to be listed beside it
   * @see Fault#modelled()
   */
  public List<String> notAssessed() {
    Set<String> assessed = new HashSet<>();
    for (FaultModel model : knowledge().models()) {
      for (Fault fault : model.faults()) {
        assessed.add(fault.component());
      }
    }
    List<String> rest = new ArrayList<>();
    for (Component component : job.appliance().components()) {
      if (!assessed.contains(component.id()) && !isOnlyAdded(component)) {
        String why = whyNot(component);
        rest.add(why.isEmpty() ? component.id() : component.id() + " (" + why + ")");
      }
    }
    return rest;
  }

  /**
   * What stands in for figures that the job could state and does not.
   *
   * @return the words for a person with their standing, in the order of the models
   */
  public List<String> standIns() {
    Set<String> told = new LinkedHashSet<>();
    if (known().marketTaken()) {
      told.add("market " + known().market() + ", since nobody says where the machine stands");
    }
    for (FaultModel model : knowledge().models()) {
      for (SharedQuantity quantity : model.shared()) {
        if (quantity.standsIn()) {
          told.add(quantity.title() + ", typical, " + quantity.source().standing().words());
        }
      }
    }
    return List.copyOf(told);
  }

  /**
   * What the shop's book counts for in the diagnosis.
   *
   * @return the words for a person: from how many jobs the shares of causes come and how much these
   *     count, then the faults whose share it moved most, and the work and readings whose time or
   *     cure it moved most; none if it has no job of such a machine
   */
  public List<String> fromBook() {
    if (workshop.shop().learned().isEmpty() || kind().isEmpty() || told.isPresent()) {
      return List.of();
    }
    List<String> words = new ArrayList<>();
    workshop
        .learned(job.appliance().kind())
        .ifPresent(each -> words.addAll(BookWords.of(each, kind().get(), job.appliance())));
    words.addAll(
        BookWords.ofWork(workshop.shop().learned().get(), job.appliance().kind(), known().moved()));
    return words;
  }

  /**
   * Where the machine stands.
   *
   * @return what the job tells, else what its nameplate speaks for, else the EU
   */
  public Market market() {
    return job.market().or(() -> Market.of(job.appliance().nameplate())).orElse(Market.EU);
  }

  /**
   * The kind of the machine.
   *
   * @return what is known of it, or empty if the kind is not known
   */
  public Optional<Kind> kind() {
    return workshop.kinds().kind(job.appliance().kind());
  }

  /** Whether the job says nothing of a component that machines of its kind have. */
  private boolean isOnlyAdded(Component component) {
    return workshop
        .machine(job.appliance())
        .filter(machine -> machine.isOnlyAdded(component))
        .isPresent();
  }

  private String whyNot(Component component) {
    for (CalculationModule module : workshop.modules()) {
      String why = module.parts().whyNot(job.appliance(), component);
      if (!why.isEmpty()) {
        return why;
      }
    }
    return "";
  }

  private synchronized MachineKnowledge known() {
    if (known == null) {
      known = workshop.known(job.appliance(), job.market());
    }
    return known;
  }

  private Knowledge knowledge() {
    return told.isPresent()
        ? known().with(told.get().brings(), told.get().causes())
        : known().knowledge();
  }

  /** What is worked out; a model that forecasts what cannot be is named with its module. */
  private <T> T naming(Supplier<T> worked) {
    try {
      return worked.get();
    } catch (ModelDefect defect) {
      throw defect.of(known().moduleOf(defect.model()));
    }
  }

  private DiagnosisEngine engine() {
    Permit permit = new WhatOpenedIt(locking(), known().machine().usual(), knowledge().brings());
    return new DiagnosisEngine(known().settings(), FaultHistory.NONE, true, permit);
  }

  private Weigher weigher() {
    Optional<Weigher> weigher = workshop.weigher();
    if (weigher.isEmpty()) {
      throw new InputException("weigh", "no module that weighs is loaded", "");
    }
    Optional<Learned> learned = workshop.shop().learned();
    return learned.isPresent() && kind().isPresent()
        ? weigher.get().learning(new BookLives(learned.get(), kind().get()))
        : weigher.get();
  }

  private String faultKey(String word) {
    List<String> keys = new ArrayList<>();
    List<String> found = new ArrayList<>();
    for (Fault fault : faults()) {
      keys.add(fault.key());
      if (fault.key().equals(word) || fault.id().equals(word)) {
        found.add(fault.key());
      }
    }
    if (found.size() == 1) {
      return found.get(0);
    }
    String remedy =
        found.isEmpty()
            ? Nearest.of(word, keys)
                .map(near -> "did you mean '" + near + "'?")
                .orElse("known are: " + String.join(", ", keys))
            : "say which: " + String.join(", ", found);
    throw new InputException(
        word, "is " + (found.isEmpty() ? "no fault" : "several faults") + " of this job", remedy);
  }
}

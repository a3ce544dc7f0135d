package kelter.costing.choice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.Remedy;
import kelter.core.job.Job;
import kelter.core.option.Option;

/** Finds the options that are worth putting to the owner. */
public final class Candidates {

  /** A single remedy is offered if the chance that it cures a fault is at least this. */
  private static final double LEAST_CHANCE = 0.05;

  /** A step of the plan is taken along if its chance of cure is at least this. */
  private static final double LEAST_CHANCE_IN_PLAN = 0.02;

  /** Doing nothing is offered if it is at least this likely that nothing is wrong. */
  private static final double LIKELY_IN_ORDER = 0.5;

  private static final int MOST_SINGLE = 4;
  private static final int MOST_STEPS = 6;

  private Candidates() {}

  /**
   * The options of a job: replacing unless the job says that no new machine can be had, each likely
   * remedy by itself, the plan stopped after each of its steps, renewing all components with a
   * likely fault, and doing nothing where that makes sense.
   *
   * @param job the job
   * @param diagnosis its diagnosis
   * @param states the states of the machine
   * @param work all remedies
   * @return the options; the plan comes once for each length, doing nothing once for each way in
   *     which it may go on
   */
  public static List<Candidate> of(Job job, Diagnosis diagnosis, States states, PlannedWork work) {
    List<Candidate> candidates = new ArrayList<>();
    for (PlannedWork.Step step : singles(states, work)) {
      candidates.add(mend(step.key(), step.remedy().title(), List.of(step)));
    }
    List<Candidate> plans = plans(diagnosis, work);
    candidates.addAll(plans);
    List<PlannedWork.Step> thorough = thorough(diagnosis, work);
    if (thorough.size() > 1 && !isAmong(plans, thorough)) {
      candidates.add(
          mend(Candidate.RENEW, "Renew rather than mend: " + titles(thorough), thorough));
    }
    boolean mayStay = !diagnosis.basis().staysUnplugged();
    if (mayStay && (!job.complaint().isMade() || states.healthy() >= LIKELY_IN_ORDER)) {
      candidates.addAll(waits(candidates));
    }
    if (isReplaceable(job)) {
      candidates.add(
          new Candidate(Option.REPLACE, "Replace the machine", List.of(), Candidate.Kind.REPLACE));
    } else if (candidates.isEmpty()) {
      candidates.add(wait(List.of()));
    }
    return candidates;
  }

  /**
   * Whether a new machine can be had.
   *
   * @param job the job
   * @return false only if the job says so
   */
  public static boolean isReplaceable(Job job) {
    return job.prices().flatMap(prices -> prices.terms().replacementAvailable()).orElse(true);
  }

  private static Candidate mend(String id, String title, List<PlannedWork.Step> steps) {
    return new Candidate(id, title, steps, Candidate.Kind.MEND);
  }

  /** Nothing now, and later each of the repairs or a new machine if there is a fault after all. */
  private static List<Candidate> waits(List<Candidate> repairs) {
    return Stream.concat(
            Stream.of(List.<PlannedWork.Step>of()), repairs.stream().map(Candidate::steps))
        .map(Candidates::wait)
        .toList();
  }

  private static Candidate wait(List<PlannedWork.Step> later) {
    return new Candidate(Option.NOTHING, "Leave it as it is for now", later, Candidate.Kind.WAIT);
  }

  /**
   * A remedy that may be offered by itself.
   *
   * @param step the remedy
   * @param chance the chance that the machine works after it
   */
  private record Likely(PlannedWork.Step step, double chance) {

    static final Comparator<Likely> FIRST =
        Comparator.comparingDouble(Likely::chance)
            .reversed()
            .thenComparing(likely -> likely.step().key());
  }

  /** The likeliest remedy of each depth of work first, then the next likeliest. */
  private static List<PlannedWork.Step> singles(States states, PlannedWork work) {
    List<Likely> likely = likeliestFirst(states, work);
    Map<String, PlannedWork.Step> chosen = new LinkedHashMap<>();
    Set<Remedy.Restores> depths = EnumSet.noneOf(Remedy.Restores.class);
    for (Likely each : likely) {
      if (depths.add(each.step().remedy().restores())) {
        chosen.put(each.step().key(), each.step());
      }
    }
    for (Likely each : likely) {
      if (chosen.size() < MOST_SINGLE) {
        chosen.put(each.step().key(), each.step());
      }
    }
    return List.copyOf(chosen.values());
  }

  private static List<Likely> likeliestFirst(States states, PlannedWork work) {
    return work.steps().values().stream()
        .map(step -> new Likely(step, states.chanceOfCure(List.of(step))))
        .filter(likely -> likely.chance() - states.healthy() >= LEAST_CHANCE)
        .sorted(Likely.FIRST)
        .toList();
  }

  /** Of each component with a likely fault the deepest work, the likeliest component first. */
  private static List<PlannedWork.Step> thorough(Diagnosis diagnosis, PlannedWork work) {
    Map<String, PlannedWork.Step> deepest = new LinkedHashMap<>();
    for (Diagnosis.FaultProbability likely : diagnosis.faults()) {
      if (likely.probability() >= LEAST_CHANCE) {
        String component = likely.fault().component();
        for (Remedy remedy : diagnosis.basis().remedies(likely.fault())) {
          PlannedWork.Step known = deepest.get(component);
          if (known == null || isDeeper(remedy, known.remedy())) {
            deepest.put(component, work.step(remedy.key()));
          }
        }
      }
    }
    return List.copyOf(deepest.values());
  }

  private static boolean isDeeper(Remedy one, Remedy other) {
    return one.restores().compareTo(other.restores()) > 0;
  }

  /** Whether a plan does just the same work, in whatever order. */
  private static boolean isAmong(List<Candidate> plans, List<PlannedWork.Step> steps) {
    Set<String> keys = keys(steps);
    return plans.stream().anyMatch(plan -> keys(plan.steps()).equals(keys));
  }

  private static Set<String> keys(List<PlannedWork.Step> steps) {
    return steps.stream().map(PlannedWork.Step::key).collect(Collectors.toSet());
  }

  private static String titles(List<PlannedWork.Step> steps) {
    return steps.stream().map(step -> step.remedy().title()).collect(Collectors.joining("; then "));
  }

  private static List<Candidate> plans(Diagnosis diagnosis, PlannedWork work) {
    Map<String, PlannedWork.Step> planned = new LinkedHashMap<>();
    for (Diagnosis.PlanStep step : diagnosis.plan()) {
      if (step.probabilityOfCure() >= LEAST_CHANCE_IN_PLAN && planned.size() < MOST_STEPS) {
        String key = step.remedy().key();
        planned.put(key, work.step(key));
      }
    }
    List<PlannedWork.Step> steps = List.copyOf(planned.values());
    List<Candidate> plans = new ArrayList<>();
    for (int length = 2; length <= steps.size(); length++) {
      List<PlannedWork.Step> first = steps.subList(0, length);
      plans.add(mend(Candidate.PLAN, "Step by step: " + titles(first), first));
    }
    return plans;
  }
}

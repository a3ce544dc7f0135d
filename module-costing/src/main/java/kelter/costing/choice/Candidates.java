package kelter.costing.choice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.Remedy;
import kelter.core.job.Job;

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
  public static List<Candidate> of(Job job, Diagnosis diagnosis, States states, Work work) {
    List<Candidate> candidates = new ArrayList<>();
    for (Work.Step step : singles(states, work)) {
      candidates.add(mend(step.key(), step.remedy().title(), List.of(step)));
    }
    List<Candidate> plans = plans(diagnosis, work);
    candidates.addAll(plans);
    thorough(diagnosis, work, plans).ifPresent(candidates::add);
    if (!job.complaint().isMade() || states.healthy() >= LIKELY_IN_ORDER) {
      candidates.addAll(waits(candidates));
    }
    if (isReplaceable(job)) {
      candidates.add(
          new Candidate(
              Candidate.REPLACE, "Replace the machine", List.of(), Candidate.Kind.REPLACE));
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
    return job.prices().flatMap(p -> p.terms().replacementAvailable()).orElse(true);
  }

  private static Candidate mend(String id, String title, List<Work.Step> steps) {
    return new Candidate(id, title, steps, Candidate.Kind.MEND);
  }

  /** Nothing now, and later each of the repairs or a new machine if there is a fault after all. */
  private static List<Candidate> waits(List<Candidate> repairs) {
    List<Candidate> waits = new ArrayList<>();
    waits.add(wait(List.of()));
    repairs.forEach(repair -> waits.add(wait(repair.steps())));
    return waits;
  }

  private static Candidate wait(List<Work.Step> later) {
    return new Candidate(
        Candidate.NOTHING, "Leave it as it is for now", later, Candidate.Kind.WAIT);
  }

  /** The likeliest remedy of each depth of work first, then the next likeliest. */
  private static List<Work.Step> singles(States states, Work work) {
    double healthy = states.healthy();
    List<Work.Step> likely =
        work.steps().values().stream()
            .filter(step -> states.chanceOfCure(List.of(step)) - healthy >= LEAST_CHANCE)
            .sorted(
                Comparator.comparingDouble((Work.Step s) -> -states.chanceOfCure(List.of(s)))
                    .thenComparing(Work.Step::key))
            .toList();
    Set<Work.Step> chosen = new LinkedHashSet<>();
    Set<Remedy.Restores> depths = EnumSet.noneOf(Remedy.Restores.class);
    likely.stream().filter(step -> depths.add(step.remedy().restores())).forEach(chosen::add);
    likely.stream().filter(step -> chosen.size() < MOST_SINGLE).forEach(chosen::add);
    return List.copyOf(chosen);
  }

  /**
   * Of each component with a likely fault the deepest work, the likeliest component first; empty if
   * there is only one such component, or if a plan does just the same.
   */
  private static Optional<Candidate> thorough(
      Diagnosis diagnosis, Work work, List<Candidate> plans) {
    Map<String, Work.Step> deepest = new LinkedHashMap<>();
    for (Diagnosis.FaultProbability likely : diagnosis.faults()) {
      if (likely.probability() >= LEAST_CHANCE) {
        likely.fault().remedies().stream()
            .map(remedy -> work.step(Work.key(remedy)))
            .max(Comparator.comparing(step -> step.remedy().restores()))
            .ifPresent(step -> deepest.merge(likely.fault().component(), step, Candidates::deeper));
      }
    }
    List<Work.Step> steps = List.copyOf(deepest.values());
    boolean planned =
        plans.stream().anyMatch(plan -> Set.copyOf(plan.steps()).equals(Set.copyOf(steps)));
    if (steps.size() < 2 || planned) {
      return Optional.empty();
    }
    return Optional.of(mend(Candidate.RENEW, "Renew rather than mend: " + titles(steps), steps));
  }

  private static Work.Step deeper(Work.Step one, Work.Step other) {
    return other.remedy().restores().compareTo(one.remedy().restores()) > 0 ? other : one;
  }

  private static String titles(List<Work.Step> steps) {
    return steps.stream().map(s -> s.remedy().title()).collect(Collectors.joining("; then "));
  }

  private static List<Candidate> plans(Diagnosis diagnosis, Work work) {
    List<Work.Step> steps =
        diagnosis.plan().stream()
            .filter(step -> step.probabilityOfCure() >= LEAST_CHANCE_IN_PLAN)
            .map(step -> work.step(Work.key(step.remedy())))
            .distinct()
            .limit(MOST_STEPS)
            .toList();
    List<Candidate> plans = new ArrayList<>();
    for (int length = 2; length <= steps.size(); length++) {
      List<Work.Step> first = steps.subList(0, length);
      plans.add(mend(Candidate.PLAN, "Step by step: " + titles(first), first));
    }
    return plans;
  }
}

package kelter.core.diagnosis;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import kelter.core.job.SymptomReport;
import kelter.core.source.Source;
import kelter.core.vocabulary.Symptom;

/**
 * What the readings of a job say about the machine.
 *
 * @param ranking the states of the machine, the likeliest first
 * @param faults every fault by its own probability, the likeliest first
 * @param healthy the probability that nothing is wrong, from 0 to 1
 * @param unexplained what no known fault explains
 * @param ask what to ask the owner, what tells most first
 * @param next what to measure next, in the order in which it should be done
 * @param plan the remedies in the order in which they should be tried
 * @param takeAlong the remedies that need a part, by the chance that they come to be done, the
 *     likeliest first; less than 2 % is left out
 * @param notUsed readings that no fault model forecasts, {@code component.observable}
 * @param basis what the result rests on
 */
public record Diagnosis(
    List<RankedState> ranking,
    List<FaultProbability> faults,
    double healthy,
    Unexplained unexplained,
    List<NextQuestion> ask,
    List<NextMeasurement> next,
    List<PlanStep> plan,
    List<Needed> takeAlong,
    List<String> notUsed,
    Basis basis) {

  public Diagnosis {
    ranking = List.copyOf(ranking);
    faults = List.copyOf(faults);
    ask = List.copyOf(ask);
    next = List.copyOf(next);
    plan = List.copyOf(plan);
    takeAlong = List.copyOf(takeAlong);
    notUsed = List.copyOf(notUsed);
    Objects.requireNonNull(unexplained);
    Objects.requireNonNull(basis);
  }

  /**
   * A fault by its own probability.
   *
   * @param key {@code component.fault}
   * @return the fault, if it was weighed
   */
  public Optional<FaultProbability> fault(String key) {
    return faults.stream().filter(each -> each.fault().key().equals(key)).findFirst();
  }

  /**
   * The work that is needed in any case: of the plan the first remedy of each fault that is as good
   * as sure. Where two faults are sure, mending one of them alone is no repair.
   *
   * @return remedies in the order of the plan; none if no fault is that likely
   */
  public List<Remedy> surelyNeeded() {
    Set<String> open = new LinkedHashSet<>();
    for (FaultProbability each : faults) {
      if (each.probability() >= SURE) {
        open.add(each.fault().key());
      }
    }
    List<Remedy> needed = new ArrayList<>();
    for (PlanStep step : plan) {
      if (open.removeAll(step.cures())) {
        needed.add(step.remedy());
      }
    }
    return List.copyOf(needed);
  }

  /** From this chance on a fault is there, whatever else is; own choice. */
  private static final double SURE = 0.9;

  /**
   * What a result rests on, and how far it goes.
   *
   * @param conclusion whether the cause is decided, and if not, why not
   * @param suspects readings that are likelier wrong than right, the likeliest to be wrong first
   * @param priors the chances before measuring that matter here, the likeliest faults first
   * @param leftOut a bound of the probability of the pairs of faults that were left out, from 0 to
   *     1
   * @param enough whether no further reading is worth its time: it would not change what is done
   * @param staysUnplugged whether the machine must not be powered before something is mended, so
   *     that to leave it as it is is no choice
   * @param barred the ids of components that are not for this tool to mend or to price
   */
  public record Basis(
      Conclusion conclusion,
      List<Suspect> suspects,
      List<Prior> priors,
      double leftOut,
      boolean enough,
      boolean staysUnplugged,
      Set<String> barred) {

    public Basis {
      Objects.requireNonNull(conclusion);
      suspects = List.copyOf(suspects);
      priors = List.copyOf(priors);
      barred = Set.copyOf(barred);
    }

    /**
     * The remedies of a fault that may be proposed.
     *
     * @param fault a fault
     * @return its remedies but for those on a barred component
     */
    public List<Remedy> remedies(Fault fault) {
      return fault.remedies().stream()
          .filter(remedy -> !barred.contains(remedy.component()))
          .toList();
    }
  }

  /**
   * A reading that does not fit, to be taken again.
   *
   * @param component the id of the component
   * @param observable the word for the observable
   * @param shown the reading as it is told to a person
   * @param probability that the reading is wrong altogether, from 0 to 1
   */
  public record Suspect(String component, String observable, String shown, double probability) {}

  /**
   * What was held of a fault before anything was measured.
   *
   * @param fault the fault
   * @param probability its prior probability, as used
   * @param source where it comes from
   * @param turning by what the prior odds of the fault would have to be multiplied for the
   *     likeliest state of its group of components to change: below 1 for a fault of that state,
   *     above 1 for another
   */
  public record Prior(Fault fault, double probability, Source source, double turning) {}

  /** From this chance on that nothing is wrong, that is what is told. */
  private static final double MORE_LIKELY_THAN_NOT = 0.5;

  /**
   * Whether it is likelier than not that nothing is wrong with the machine.
   *
   * @return true if it is
   */
  public boolean isNothingWrong() {
    return chanceOfNothing() >= MORE_LIKELY_THAN_NOT;
  }

  /**
   * How likely it is that nothing is wrong with the machine.
   *
   * @return a probability from 0 to 1; 0 where that state is not among the likeliest
   */
  public double chanceOfNothing() {
    return ranking.stream()
        .filter(state -> state.faults().isEmpty() && !state.unexplained())
        .mapToDouble(RankedState::probability)
        .findFirst()
        .orElse(0);
  }

  /**
   * A state of the machine.
   *
   * @param faults what is wrong in this state; empty if nothing is
   * @param unexplained whether a part of the machine does what no known fault explains
   * @param probability its probability, from 0 to 1
   * @param evidence what each reading says for it (above 0) or against it (below 0)
   * @param reports what each report of a symptom says for it or against it
   */
  public record RankedState(
      List<PresentFault> faults,
      boolean unexplained,
      double probability,
      List<Evidence> evidence,
      List<ReportEvidence> reports) {

    public RankedState {
      faults = List.copyOf(faults);
      evidence = List.copyOf(evidence);
      reports = List.copyOf(reports);
    }
  }

  /**
   * What one report of a symptom says, everything else known: the log odds with it less those
   * without it. A report that another fault explains says nearly nothing, and what several say is
   * not the sum of what each says.
   *
   * @param symptom the symptom
   * @param answer what was said
   * @param bits in bits, above 0 if it speaks for the state or fault
   */
  public record ReportEvidence(Symptom symptom, SymptomReport.Answer answer, double bits) {}

  /**
   * A symptom that is worth asking for.
   *
   * @param symptom the symptom
   * @param bits what the answer is expected to tell about the state at least, in bits
   */
  public record NextQuestion(Symptom symptom, double bits) {}

  /**
   * A fault that is there in a state.
   *
   * @param fault the fault
   * @param severity how bad it is
   */
  public record PresentFault(Fault fault, Severity severity) {}

  /**
   * How bad a fault is if it is there, from 0 (none) to 1 (total).
   *
   * @param mean the mean of its distribution
   * @param sd the standard deviation of its distribution
   */
  public record Severity(double mean, double sd) {

    /** Above this spread the readings tell nothing of a severity; the prior's is 0.29. */
    private static final double TOLD = 0.25;

    /**
     * Whether what was read and reported tells how bad it is.
     *
     * @return false where that is nearly as open as before
     */
    public boolean isTold() {
      return sd <= TOLD;
    }
  }

  /**
   * What one reading says for a state against the machine being in order, by itself.
   *
   * @param component the id of the component
   * @param observable the word for the observable
   * @param shown the reading as it is told to a person
   * @param bits the binary logarithm of how many times likelier the reading is in this state than
   *     with nothing wrong in its group of components; against "something is wrong that no fault
   *     explains" for the state in which nothing is wrong
   * @param againstNext the same against the next state of the ranking; NaN if there is none
   */
  public record Evidence(
      String component, String observable, String shown, double bits, double againstNext) {}

  /**
   * A fault by itself, whatever else is wrong.
   *
   * @param fault the fault
   * @param probability that it is there, from 0 to 1
   * @param severity how bad it is if it is there
   */
  public record FaultProbability(Fault fault, double probability, Severity severity) {}

  /**
   * What no known fault explains.
   *
   * @param probability that a group of components does what no known fault explains, from 0 to 1
   * @param misfit the probability that readings would lie as far from the best state as these do,
   *     or farther, if that state were true; from 0 (they contradict it) to 1
   */
  public record Unexplained(double probability, double misfit) {}

  /**
   * A measurement that would help, or the one that has to be taken before it may be.
   *
   * @param question what to measure
   * @param bits what it, or what it lets be measured, is expected to tell about the state, in bits
   * @param minutes how long that takes, from above 0; less where a reading already taken has opened
   *     the way
   * @param worth by how much it is expected to lower the cost of the repair, its own time left out,
   *     in the currency of the job or, where prices are missing, in minutes; not negative; NaN
   *     where it was not looked at
   */
  public record NextMeasurement(Question question, double bits, double minutes, double worth) {}

  /**
   * A remedy in its place of the plan.
   *
   * @param remedy what to do
   * @param cures the faults that it cures, {@code component.fault}
   * @param probabilityOfCure the chance that one of these faults is there and that it cures it
   * @param cost what it costs, in units of the job's currency and with its tax where that is known;
   *     NaN if the job does not say
   */
  public record PlanStep(Remedy remedy, List<String> cures, double probabilityOfCure, double cost) {

    public PlanStep {
      cures = List.copyOf(cures);
    }
  }

  /**
   * A part that may be needed.
   *
   * @param remedy the remedy that needs it, and names it
   * @param chance that the remedy comes to be done, from 0 to 1: the remedies of a fault are done
   *     in the order of least expected cost until one cures it
   */
  public record Needed(Remedy remedy, double chance) {}
}

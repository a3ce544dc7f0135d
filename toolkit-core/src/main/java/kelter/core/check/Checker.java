package kelter.core.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kelter.core.job.Instrument;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.rule.JobRules;
import kelter.core.problem.InputException;
import kelter.core.vocabulary.Vocabulary;

/**
 * Applies all checks of some modules to jobs.
 *
 * @param checks the checks, in the order in which their findings are told
 * @param vocabulary the words of those modules
 * @param instruments the instruments of those modules, typical of their class
 * @param rule the rule by which verdicts are given
 */
public record Checker(
    List<Check> checks, Vocabulary vocabulary, List<Instrument> instruments, DecisionRule rule) {

  public Checker {
    checks = List.copyOf(checks);
    instruments = List.copyOf(instruments);
  }

  /**
   * Applies every check, and holds repeated readings against each other.
   *
   * @param job the job
   * @return the findings, in the order of the checks, each with an id of its own; those about
   *     repeated readings last
   * @throws InputException with all that is wrong with the job if it does not keep {@link JobRules}
   */
  public List<Finding> findings(Job job) {
    JobRules.require(job, vocabulary);
    return findingsOf(job.pooled());
  }

  private List<Finding> findingsOf(Job job) {
    List<Finding> findings = new ArrayList<>();
    for (Check check : checks) {
      findings.addAll(check.apply(job, rule));
    }
    if (isRepeated(job)) {
      findings.addAll(new RepeatsCheck(vocabulary).apply(job, rule));
    }
    return numbered(findings);
  }

  /**
   * The same with only those checks that find something in a job, to be made again on jobs that
   * differ from it in figures of the machine alone.
   *
   * @param job the job, which keeps {@link JobRules}
   * @return a checker with fewer checks
   */
  public Checker findingIn(Job job) {
    Job pooled = job.pooled();
    List<Check> finding = new ArrayList<>(checks);
    finding.removeIf(check -> check.apply(pooled, rule).isEmpty());
    return new Checker(finding, vocabulary, instruments, rule);
  }

  /** The second finding of an id gets a 2 behind it, the third a 3. */
  private static List<Finding> numbered(List<Finding> findings) {
    Map<String, Integer> counts = new HashMap<>();
    List<Finding> numbered = new ArrayList<>();
    for (Finding finding : findings) {
      int count = counts.getOrDefault(finding.id(), 0) + 1;
      counts.put(finding.id(), count);
      numbered.add(count == 1 ? finding : finding.named(finding.id() + "-" + count));
    }
    return numbered;
  }

  /**
   * Whether a machine must stay unplugged.
   *
   * @param findings what was found on it
   * @return true if one of them says so
   */
  public static boolean keepUnplugged(List<Finding> findings) {
    for (Finding finding : findings) {
      if (finding.keepsUnplugged()) {
        return true;
      }
    }
    return false;
  }

  private static boolean isRepeated(Job job) {
    for (Measurement measurement : job.measurements()) {
      if (measurement.readings().size() > 1) {
        return true;
      }
    }
    return false;
  }

  /**
   * How undecided findings of a job could be settled.
   *
   * @param job the job
   * @return what tells it
   */
  public Settling settling(Job job) {
    return new Settling(job, vocabulary, instruments, rule);
  }
}

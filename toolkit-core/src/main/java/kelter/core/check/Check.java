package kelter.core.check;

import java.util.List;
import kelter.core.job.Job;

/**
 * A calculation applied to a job.
 *
 * <p>A check must not change anything, must give the same findings for the same job, must be safe
 * for use by several threads, and must leave out what the job has no readings for.
 */
public interface Check {

  /**
   * Its id, unique among all modules.
   *
   * @return lower-case letters, digits and hyphens
   */
  String id();

  /**
   * What it asks, for a person.
   *
   * @return a short sentence
   */
  String title();

  /**
   * Holds the readings of a job against the limits.
   *
   * @param job the job
   * @param rule when a verdict may be given
   * @return the findings in the order of the job's components and readings; empty if the job has
   *     nothing to check
   */
  List<Finding> apply(Job job, DecisionRule rule);
}

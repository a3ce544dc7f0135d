package kelter.testkit.trial;

import java.util.ArrayList;
import java.util.List;
import kelter.core.check.Check;
import kelter.core.check.DecisionRule;
import kelter.core.check.Finding;
import kelter.core.job.Appliance;
import kelter.core.job.Job;
import kelter.core.module.CalculationModule;

/** What the checks of a module find in readings of all sizes. */
public final class TrialFindings {

  private TrialFindings() {}

  /**
   * What is found on a machine; a check that fails is another rule's.
   *
   * @param module the module
   * @param appliance the machine
   * @return the findings of each reading by itself and of all together
   */
  public static List<Finding> of(CalculationModule module, Appliance appliance) {
    List<Job> jobs = new ArrayList<>(TrialJobs.each(module, appliance));
    jobs.add(TrialJobs.together(module, appliance));
    List<Finding> all = new ArrayList<>();
    for (Check check : module.parts().checks()) {
      for (Job job : jobs) {
        all.addAll(of(check, job));
      }
    }
    return all;
  }

  static List<Finding> of(Check check, Job job) {
    try {
      return check.apply(job, DecisionRule.USUAL);
    } catch (RuntimeException | StackOverflowError | LinkageError failed) {
      return List.of();
    }
  }
}

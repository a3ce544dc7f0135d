package kelter.testkit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.check.Check;
import kelter.core.check.DecisionRule;
import kelter.core.check.Finding;
import kelter.core.check.Verdict;
import kelter.core.job.Appliance;
import kelter.core.job.Complaint;
import kelter.core.job.Job;
import kelter.core.module.CalculationModule;

/** What a module holds against limits. */
public final class CheckRules {

  private CheckRules() {}

  /**
   * On a job without readings a check must not fail, must not say that anything conforms or does
   * not, and must answer the same again.
   *
   * @param module the module
   * @param appliances the appliances to try
   * @return the breaches
   */
  public static List<String> withoutReadings(CalculationModule module, List<Appliance> appliances) {
    List<String> breaches = new ArrayList<>();
    for (Appliance appliance : appliances) {
      Job job =
          new Job(
              "nothing-read",
              "",
              appliance,
              Complaint.NONE,
              List.of(),
              List.of(),
              Optional.empty());
      module.parts().checks().forEach(check -> judge(check, job, breaches));
    }
    return breaches;
  }

  private static void judge(Check check, Job job, List<String> breaches) {
    try {
      List<Finding> findings = check.apply(job, DecisionRule.USUAL);
      for (Finding finding : findings) {
        if (finding.verdict() != Verdict.NOT_MEASURED) {
          breaches.add(
              "%s says '%s' of %s, of which nothing was read"
                  .formatted(check.id(), finding.verdict().words(), finding.component()));
        }
      }
      if (!findings.equals(check.apply(job, DecisionRule.USUAL))) {
        breaches.add(check.id() + " answers differently when asked again");
      }
    } catch (RuntimeException defect) {
      breaches.add(check.id() + " threw " + defect + " on a job without readings");
    }
  }
}

package kelter.testkit.trial;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import kelter.core.check.Check;
import kelter.core.check.DecisionRule;
import kelter.core.check.Finding;
import kelter.core.check.Verdict;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Question;
import kelter.core.job.Appliance;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.module.CalculationModule;

/** What the checks of a module make of readings. */
public final class ReadingRules {

  private ReadingRules() {}

  /**
   * A check must not fail whatever is read, and must speak of components of the machine only. Each
   * must find something in one of the readings: one that never does looks at a kind or an
   * observable that is not there.
   *
   * @param module the module
   * @param appliances the machines of the test
   * @return the breaches
   */
  public static List<String> checks(CalculationModule module, List<Appliance> appliances) {
    Set<String> breaches = new LinkedHashSet<>();
    Set<String> silent = new LinkedHashSet<>();
    module.parts().checks().forEach(check -> silent.add(check.id()));
    for (Appliance appliance : appliances) {
      List<Job> jobs = new ArrayList<>(TrialJobs.each(module, appliance));
      jobs.add(TrialJobs.together(module, appliance));
      for (Job job : jobs) {
        for (Check check : module.parts().checks()) {
          if (finds(check, job, breaches)) {
            silent.remove(check.id());
          }
        }
      }
    }
    for (String id : silent) {
      breaches.add(
          "check %s finds nothing in any reading of the machines of the test: is its kind or its"
                  .formatted(id)
              + " observable misspelt, or does no machine have the figures that it needs?");
    }
    return List.copyOf(breaches);
  }

  /**
   * No check may fail a machine on which nothing is wrong, as its own model forecasts it.
   *
   * @param module the module
   * @param appliances the machines of the test
   * @return the breaches
   */
  public static List<String> inOrder(CalculationModule module, List<Appliance> appliances) {
    Set<String> breaches = new LinkedHashSet<>();
    for (Appliance appliance : appliances) {
      for (FaultModel model : module.parts().faultModels(appliance)) {
        List<Question> questions = model.questions();
        double[] value = new double[questions.size()];
        model
            .forecaster(questions)
            .forecast(
                new double[model.faults().size() + model.shared().size()],
                value,
                new double[questions.size()]);
        for (int i = 0; i < value.length; i++) {
          Job job = TrialJobs.forecast(appliance, questions.get(i), value[i]);
          module.parts().checks().forEach(check -> inOrder(check, job, breaches));
        }
      }
    }
    return List.copyOf(breaches);
  }

  private static void inOrder(Check check, Job job, Set<String> breaches) {
    for (Finding finding : TrialFindings.of(check, job)) {
      if (finding.verdict() == Verdict.DOES_NOT_CONFORM) {
        breaches.add(
            ("check %s fails %s, which the model forecasts where nothing is wrong: are the limits"
                    + " in the coherent SI unit, and the right way round?")
                .formatted(check.id(), told(job)));
      }
    }
  }

  private static boolean finds(Check check, Job job, Set<String> breaches) {
    try {
      List<Finding> findings = check.apply(job, DecisionRule.USUAL);
      for (Finding finding : findings) {
        if (job.appliance().component(finding.component()).isEmpty()) {
          breaches.add(
              "check %s speaks of '%s', which the machine lacks"
                  .formatted(check.id(), finding.component()));
        }
      }
      return !findings.isEmpty();
    } catch (RuntimeException | StackOverflowError | LinkageError thrown) {
      breaches.add("check %s threw %s on %s".formatted(check.id(), thrown, told(job)));
      return true;
    }
  }

  private static String told(Job job) {
    Measurement first = job.measurements().get(0);
    return job.measurements().size() > 1
        ? "readings of all there is"
        : "%s.%s = %s".formatted(first.component(), first.observable(), first.shown());
  }
}

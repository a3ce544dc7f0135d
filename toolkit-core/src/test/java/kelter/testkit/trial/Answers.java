package kelter.testkit.trial;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import kelter.core.check.Check;
import kelter.core.check.DecisionRule;
import kelter.core.check.Finding;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.Remedy;
import kelter.core.job.Appliance;
import kelter.core.job.Job;
import kelter.core.module.Calculation;
import kelter.core.module.CalculationModule;
import kelter.core.module.Parameter;

/** All that a module says of itself and of a machine, a line each, to be compared. */
final class Answers {

  private static final double SEVERITY = 0.7;

  private final List<String> lines = new ArrayList<>();

  private Answers() {}

  /** What a module says of itself. */
  static List<String> ofItself(CalculationModule module) {
    Answers answers = new Answers();
    answers.line("the module", module.about());
    for (Calculation calculation : module.calculations()) {
      answers.calculation(calculation);
    }
    for (Check check : module.parts().checks()) {
      answers.line("check " + check.id(), check.title());
    }
    module.parts().kinds().forEach(kind -> answers.line("component kind " + kind.id(), kind));
    module.symptoms().forEach(symptom -> answers.line("symptom " + symptom.id(), symptom));
    module.cautions().forEach(caution -> answers.line("caution " + caution.id(), caution));
    module
        .instruments()
        .forEach(instrument -> answers.line("instrument " + instrument.id(), instrument.title()));
    return answers.lines;
  }

  /** What a module says of a machine. */
  static List<String> of(CalculationModule module, Appliance appliance) {
    Answers answers = new Answers();
    for (FaultModel model : module.parts().faultModels(appliance)) {
      answers.model(model);
    }
    Job together = TrialJobs.together(module, appliance);
    for (Check check : module.parts().checks()) {
      answers.check(check, together);
    }
    return answers.lines;
  }

  private void line(String of, Object said) {
    lines.add(of + ": " + said);
  }

  private void calculation(Calculation calculation) {
    String of = "calculation " + calculation.id();
    line(of, calculation.title() + ", " + calculation.formula() + ", " + calculation.range());
    double[] values = calculation.parameters().stream().mapToDouble(Answers::ordinary).toArray();
    try {
      line(of, Arrays.toString(calculation.law().apply(values)));
    } catch (RuntimeException refused) {
      line(of, refused);
    }
  }

  static double ordinary(Parameter parameter) {
    if (!parameter.choices().isEmpty()) {
      return 0;
    }
    double low = Math.max(parameter.low(), -1e9);
    double high = Math.min(parameter.high(), 1e9);
    return low > 0 ? Math.sqrt(low) * Math.sqrt(high) : low / 2 + high / 2;
  }

  private void model(FaultModel model) {
    String of = "fault model " + model.id();
    for (Fault fault : model.faults()) {
      line(of, fault.key() + ", " + fault.title() + ", " + fault.prior());
      for (Remedy remedy : fault.remedies()) {
        line(of, remedy.component() + "." + remedy.id() + ", " + remedy.title());
      }
    }
    List<Question> questions = model.questions();
    for (int fault = -1; fault < model.faults().size(); fault++) {
      double[] severity = new double[model.faults().size() + model.shared().size()];
      if (fault >= 0) {
        severity[fault] = SEVERITY;
      }
      double[] value = new double[questions.size()];
      double[] spread = new double[questions.size()];
      model.forecaster(questions).forecast(severity, value, spread);
      line(of, Arrays.toString(value) + Arrays.toString(spread));
    }
  }

  private void check(Check check, Job job) {
    String of = "check " + check.id();
    try {
      for (Finding finding : check.apply(job, DecisionRule.USUAL)) {
        line(
            of,
            "%s, %s, %s %s, %s to %s, %s, %s"
                .formatted(
                    finding.id(),
                    finding.title(),
                    finding.shown(),
                    finding.verdict(),
                    finding.limits().low(),
                    finding.limits().high(),
                    finding.judgement().probabilityOfConformity(),
                    finding.remark()));
      }
    } catch (RuntimeException thrown) {
      line(of, thrown); // told by the rule on checks
    }
  }
}

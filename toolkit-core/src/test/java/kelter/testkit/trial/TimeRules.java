package kelter.testkit.trial;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import kelter.core.check.Check;
import kelter.core.check.DecisionRule;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Forecaster;
import kelter.core.job.Appliance;
import kelter.core.job.Job;
import kelter.core.module.Calculation;
import kelter.core.module.CalculationModule;

/** How long a module takes to answer. */
public final class TimeRules {

  /**
   * How long one answer may take at its quickest, ms. The contract asks for well under one; the
   * rest is for slow and busy machines.
   */
  public static final double LIMIT = 5;

  private static final int ROUNDS = 7;
  private static final double NANOSECONDS = 1e6; // in a millisecond

  private TimeRules() {}

  /**
   * How long an answer takes.
   *
   * @param call what was asked
   * @param milliseconds the quickest of some answers, ms
   */
  public record Answer(String call, double milliseconds) {}

  /**
   * Measures every kind of answer.
   *
   * @param module the module
   * @param appliances the machines of the test
   * @return the answers, the slowest first
   */
  public static List<Answer> measured(CalculationModule module, List<Appliance> appliances) {
    List<Answer> answers = new ArrayList<>();
    answers.add(answer("about()", module::about));
    answers.add(answer("calculations()", module::calculations));
    answers.add(answer("parts()", () -> module.parts().kinds()));
    answers.add(answer("symptoms()", module::symptoms));
    answers.add(answer("cautions()", module::cautions));
    answers.add(answer("instruments()", module::instruments));
    answers.add(answer("weigher()", module::weigher));
    for (Calculation each : module.calculations()) {
      answers.add(answer("calculation " + each.id(), () -> apply(each)));
    }
    for (Appliance appliance : appliances) {
      measure(module, appliance, answers);
    }
    answers.sort(Comparator.comparingDouble(Answer::milliseconds).reversed());
    return answers;
  }

  private static void measure(CalculationModule module, Appliance appliance, List<Answer> answers) {
    String of = " of a " + appliance.kind();
    answers.add(answer("fault models" + of, () -> module.parts().faultModels(appliance)));
    for (FaultModel model : module.parts().faultModels(appliance)) {
      double[] state = new double[model.faults().size() + model.shared().size()];
      double[] value = new double[model.questions().size()];
      double[] spread = new double[model.questions().size()];
      String name = "fault model " + model.id() + of;
      Forecaster forecaster = model.forecaster(model.questions());
      answers.add(answer(name + ", forecaster", () -> model.forecaster(model.questions())));
      answers.add(
          answer(name + ", forecast", () -> forecaster.forecast(state.clone(), value, spread)));
    }
    Job job = TrialJobs.together(module, appliance);
    for (Check check : module.parts().checks()) {
      answers.add(answer("check " + check.id() + of, () -> check.apply(job, DecisionRule.USUAL)));
    }
  }

  private static void apply(Calculation calculation) {
    calculation
        .law()
        .apply(calculation.parameters().stream().mapToDouble(Answers::ordinary).toArray());
  }

  private static Answer answer(String call, Runnable asked) {
    double quickest = Double.POSITIVE_INFINITY;
    for (int round = 0; round < ROUNDS; round++) {
      long begun = System.nanoTime();
      try {
        asked.run();
      } catch (RuntimeException refused) {
        // What may be thrown other rules hold; to refuse takes time, too.
      }
      quickest = Math.min(quickest, (System.nanoTime() - begun) / NANOSECONDS);
    }
    return new Answer(call, quickest);
  }

  /**
   * Every answer must come within {@link #LIMIT} at its quickest.
   *
   * @param answers what was measured
   * @return the breaches, each with the time
   */
  public static List<String> quick(List<Answer> answers) {
    return answers.stream()
        .filter(answer -> answer.milliseconds() > LIMIT)
        .map(
            answer ->
                String.format(
                    java.util.Locale.ROOT,
                    "%s took %.1f ms at its quickest of %d, more than %.0f ms",
                    answer.call(),
                    answer.milliseconds(),
                    ROUNDS,
                    LIMIT))
        .toList();
  }
}

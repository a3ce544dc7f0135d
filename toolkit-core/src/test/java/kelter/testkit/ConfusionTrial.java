package kelter.testkit;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.engine.DiagnosisEngine;
import kelter.core.job.Appliance;
import kelter.core.job.Complaint;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import kelter.core.quantity.Quantity;
import kelter.core.safety.Hazard;
import kelter.core.vocabulary.Observable;

/**
 * Breaks a machine in each way in turn, at one severity, takes every reading that needs no live
 * work with an ordinary instrument, and counts what the diagnosis says first. What the model's
 * readings share is drawn for each machine. The seed makes it the same every time.
 */
public final class ConfusionTrial {

  /** What is said of a machine with nothing wrong. */
  public static final String HEALTHY = "healthy";

  private static final String UNEXPLAINED = "unexplained";
  private static final long SEED = 5;

  private final Random random = new Random(SEED);
  private final DiagnosisEngine engine = new DiagnosisEngine(EngineSettings.USUAL);
  private final Appliance appliance;
  private final FaultModel model;

  /**
   * A trial of one model.
   *
   * @param appliance the machine
   * @param model one of its fault models
   */
  public ConfusionTrial(Appliance appliance, FaultModel model) {
    this.appliance = appliance;
    this.model = model;
  }

  /**
   * Tries every fault of the model, and the machine in order.
   *
   * @param severity the severity of each fault, above 0, at most 1
   * @param trials how many machines for each
   * @return for each true state, how often each state was named first
   */
  public Map<String, Map<String, Integer>> run(double severity, int trials) {
    Map<String, Map<String, Integer>> matrix = new TreeMap<>();
    for (int fault = -1; fault < model.faults().size(); fault++) {
      Map<String, Integer> said = new TreeMap<>();
      for (int trial = 0; trial < trials; trial++) {
        said.merge(first(fault, severity), 1, Integer::sum);
      }
      matrix.put(fault < 0 ? HEALTHY : model.faults().get(fault).key(), said);
    }
    return matrix;
  }

  /**
   * Runs and prints the trials of several severities.
   *
   * @param trials how many machines for each fault
   * @param out where they are printed
   */
  public void print(int trials, PrintStream out) {
    for (double severity : new double[] {0.8, 0.3}) {
      out.printf("%n%s, severity %.1f, %d trials each%n", model.id(), severity, trials);
      run(severity, trials).forEach((fault, said) -> out.printf("  %-30s %s%n", fault, said));
    }
  }

  private String first(int fault, double severity) {
    int faults = model.faults().size();
    double[] state = new double[faults + model.shared().size()];
    if (fault >= 0) {
      state[fault] = severity;
    }
    for (int j = faults; j < state.length; j++) {
      state[j] = random.nextGaussian();
    }
    Job job =
        new Job(
            "trial",
            "",
            appliance,
            new Complaint("it does not work", ""),
            List.of(),
            readings(state),
            Optional.empty());
    Diagnosis.RankedState best = engine.diagnose(job, List.of(model)).ranking().get(0);
    if (best.unexplained()) {
      return UNEXPLAINED;
    }
    return best.faults().isEmpty()
        ? HEALTHY
        : String.join("+", best.faults().stream().map(f -> f.fault().key()).toList());
  }

  private List<Measurement> readings(double[] state) {
    List<Question> questions = model.questions();
    double[] value = new double[questions.size()];
    double[] spread = new double[questions.size()];
    model.forecaster(questions).forecast(state, value, spread);
    List<Measurement> read = new ArrayList<>();
    for (int i = 0; i < value.length; i++) {
      Question question = questions.get(i);
      if (question.observable().procedure().hazard() != Hazard.LIVE) {
        read.add(
            new Measurement(
                question.component(),
                question.observable().id(),
                List.of(reading(question.observable(), value[i], spread[i])),
                question.conditions(),
                Optional.empty(),
                ""));
      }
    }
    return read;
  }

  private Reading reading(Observable observable, double value, double spread) {
    return switch (observable.type()) {
      case YES_NO -> new Reading.YesNo(random.nextDouble() < value);
      case GRADE -> {
        int words = observable.grades().size();
        double place = value + spread * random.nextGaussian();
        int rank = Math.max(0, Math.min(words - 1, (int) Math.floor(place * words)));
        yield new Reading.Grade(observable.grades().get(rank), rank);
      }
      case QUANTITY -> {
        double instrument = observable.procedure().typical().standardUncertainty(value);
        double machine =
            observable.logarithmic()
                ? value * Math.exp(spread * random.nextGaussian())
                : value + spread * random.nextGaussian();
        double shown = machine + instrument * random.nextGaussian();
        double inSpan =
            Math.max(observable.span().low(), Math.min(observable.span().high(), shown));
        yield new Reading.Value(Quantity.ofSi(inSpan, 0, observable.kind()), 0);
      }
    };
  }
}

package kelter.hydraulics.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Forecaster;
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
import kelter.hydraulics.HydraulicsModule;
import kelter.hydraulics.SampleMachines;

/**
 * Breaks a machine that was made up in each way in turn, reads it with ordinary instruments, and
 * counts what the diagnosis says first. Run it by its main method; the seed makes it the same every
 * time.
 */
public final class ConfusionMatrix {

  private static final long SEED = 5;
  private static final String HEALTHY = "healthy";
  private static final String UNEXPLAINED = "unexplained";

  private final Random random = new Random(SEED);
  private final DiagnosisEngine engine = new DiagnosisEngine(EngineSettings.USUAL);

  private final boolean instrumentsOnly;

  private ConfusionMatrix(boolean instrumentsOnly) {
    this.instrumentsOnly = instrumentsOnly;
  }

  /**
   * Prints the tables.
   *
   * @param arguments the number of trials for each fault, 50 where none is given; then {@code
   *     instruments} to leave out all that is seen or heard or found when something is opened
   */
  public static void main(String[] arguments) {
    int trials = arguments.length == 0 ? 50 : Integer.parseInt(arguments[0]);
    boolean instrumentsOnly = arguments.length > 1 && arguments[1].equals("instruments");
    ConfusionMatrix matrix = new ConfusionMatrix(instrumentsOnly);
    for (Appliance appliance : SampleMachines.all()) {
      for (FaultModel model : new HydraulicsModule().faultModels(appliance)) {
        for (double severity : new double[] {0.8, 0.3}) {
          matrix.print(appliance, model, severity, trials);
        }
      }
    }
  }

  private void print(Appliance appliance, FaultModel model, double severity, int trials) {
    System.out.printf("%n%s, severity %.1f, %d trials each%n", model.id(), severity, trials);
    for (int fault = -1; fault < model.faults().size(); fault++) {
      double[] state = new double[model.faults().size()];
      if (fault >= 0) {
        state[fault] = severity;
      }
      Map<String, Integer> counts = new LinkedHashMap<>();
      for (int trial = 0; trial < trials; trial++) {
        counts.merge(first(appliance, model, state), 1, Integer::sum);
      }
      String name = fault < 0 ? HEALTHY : model.faults().get(fault).id();
      System.out.printf("%-18s %s%n", name, counts);
    }
  }

  private String first(Appliance appliance, FaultModel model, double[] state) {
    List<Question> questions = model.questions();
    Forecaster forecaster = model.forecaster(questions);
    double[] value = new double[questions.size()];
    double[] spread = new double[questions.size()];
    forecaster.forecast(state, value, spread);
    List<Measurement> read = new ArrayList<>();
    for (int i = 0; i < value.length; i++) {
      Question question = questions.get(i);
      if (instrumentsOnly && !isReadWhileItRuns(question.observable())) {
        continue;
      }
      read.add(
          new Measurement(
              question.component(),
              question.observable().id(),
              List.of(reading(question.observable(), value[i], spread[i])),
              question.conditions(),
              Optional.empty(),
              ""));
    }
    Job job =
        new Job(
            "trial",
            "",
            appliance,
            new Complaint("it does not work", ""),
            List.of(),
            read,
            Optional.empty());
    Diagnosis.RankedState best = engine.diagnose(job, List.of(model)).ranking().get(0);
    if (best.unexplained()) {
      return UNEXPLAINED;
    }
    return best.faults().isEmpty()
        ? HEALTHY
        : String.join("+", best.faults().stream().map(present -> present.fault().id()).toList());
  }

  private static boolean isReadWhileItRuns(Observable observable) {
    return observable.type() == Observable.Type.QUANTITY
        && observable.procedure().hazard() == Hazard.RUNNING;
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
        double shown = value + Math.hypot(spread, instrument) * random.nextGaussian();
        double inSpan =
            Math.max(observable.span().low(), Math.min(observable.span().high(), shown));
        yield new Reading.Value(Quantity.ofSi(inSpan, 0, observable.kind()), 0);
      }
    };
  }
}

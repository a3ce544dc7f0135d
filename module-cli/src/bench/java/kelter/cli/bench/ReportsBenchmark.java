package kelter.cli.bench;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.ServiceLoader;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.FaultSymptom;
import kelter.core.diagnosis.Forecaster;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.engine.DiagnosisEngine;
import kelter.core.job.Complaint;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import kelter.core.job.SymptomReport;
import kelter.core.module.CalculationModule;
import kelter.core.quantity.Quantity;
import kelter.core.vocabulary.Observable;
import kelter.core.workshop.Workshop;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What reports of symptoms add to the time of a diagnosis: the washer-extractor of the demo with 40
 * readings as a machine with a clogged drain hose gives them. To be held: eight reported as there,
 * or fifteen asked of which five are, at most 3 times the time of none; twenty asked in 0.2 s.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 2)
@org.openjdk.jmh.annotations.Measurement(iterations = 5, time = 2)
@Fork(1)
public class ReportsBenchmark {

  private static final int READINGS = 40;

  /** How many symptoms are reported as there, and how many as not there. */
  @Param({"0+0", "2+0", "4+0", "6+0", "8+0", "5+10", "6+14"})
  public String reports;

  private Job job;
  private List<FaultModel> models;
  private DiagnosisEngine engine;

  /** Reads the machine and makes its readings and reports. */
  @Setup
  public void prepare() {
    Workshop workshop = Workshop.of(ServiceLoader.load(CalculationModule.class));
    Job read = workshop.read(Path.of("../demo/jobs/washer-extractor.json"));
    models = new ArrayList<>();
    for (CalculationModule module : workshop.modules()) {
      models.addAll(module.parts().faultModels(read.appliance()));
    }
    List<Measurement> readings = new ArrayList<>();
    for (FaultModel model : models) {
      readings.addAll(readings(model));
    }
    String[] counts = reports.split("\\+");
    job =
        new Job(
            read.id(),
            read.date(),
            read.appliance(),
            new Complaint(
                Complaint.Reason.FAULT,
                "",
                "",
                symptoms(Integer.parseInt(counts[0]), Integer.parseInt(counts[1]))),
            read.instruments(),
            readings.subList(0, Math.min(READINGS, readings.size())),
            read.prices());
    engine = new DiagnosisEngine(EngineSettings.USUAL);
    System.out.println(models.size() + " models, " + job.measurements().size() + " readings");
  }

  private static List<Measurement> readings(FaultModel model) {
    List<Question> questions = model.questions();
    Forecaster forecaster = model.forecaster(questions);
    double[] severity = new double[model.faults().size() + model.shared().size()];
    for (int i = 0; i < model.faults().size(); i++) {
      severity[i] = model.faults().get(i).id().equals("hose-clogged") ? 0.7 : 0;
    }
    double[] value = new double[questions.size()];
    forecaster.forecast(severity, value, new double[questions.size()]);
    List<Measurement> readings = new ArrayList<>();
    for (int k = 0; k < value.length; k++) {
      Question question = questions.get(k);
      readings.add(
          new Measurement(
              question.component(),
              question.observable().id(),
              List.of(reading(question.observable(), value[k])),
              question.conditions(),
              Optional.empty(),
              ""));
    }
    return readings;
  }

  private static Reading reading(Observable observable, double value) {
    return switch (observable.type()) {
      case YES_NO -> new Reading.YesNo(value > 0.5);
      case GRADE -> {
        int last = observable.grades().size() - 1;
        int rank = Math.min(last, (int) (value * (last + 1)));
        yield new Reading.Grade(observable.grades().get(rank), rank);
      }
      case QUANTITY -> new Reading.Value(Quantity.ofSi(value, 0, observable.kind()), 0);
    };
  }

  /** Those that most faults make, so that the tables are as large as they get. */
  private List<SymptomReport> symptoms(int there, int absent) {
    Map<String, Integer> makers = new TreeMap<>();
    for (FaultModel model : models) {
      model
          .faults()
          .forEach(
              fault -> {
                for (FaultSymptom made : fault.symptoms()) {
                  makers.merge(made.symptom(), 1, Integer::sum);
                }
              });
    }
    List<String> order = new ArrayList<>(makers.keySet());
    order.sort(Comparator.comparing(id -> -makers.get(id)));
    List<SymptomReport> reports = new ArrayList<>();
    for (String id : order.subList(0, there + absent)) {
      boolean yes = reports.size() < there;
      reports.add(new SymptomReport(id, yes ? SymptomReport.Answer.YES : SymptomReport.Answer.NO));
    }
    return reports;
  }

  /** A diagnosis. */
  @Benchmark
  public Diagnosis diagnose() {
    return engine.diagnose(job, models);
  }
}

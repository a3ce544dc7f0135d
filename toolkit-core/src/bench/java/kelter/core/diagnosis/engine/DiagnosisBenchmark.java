package kelter.core.diagnosis.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.EngineSettings;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Forecaster;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.Remedy;
import kelter.core.job.Appliance;
import kelter.core.job.Complaint;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Nameplate;
import kelter.core.job.Reading;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Hazard;
import kelter.core.source.Source;
import kelter.core.uncertainty.Accuracy;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Procedure;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Threads;
import org.openjdk.jmh.annotations.Warmup;

/**
 * A diagnosis of one model of 40 faults with all their pairs and 15 readings, each fault moving
 * four of them, the mean over 40 jobs of which a quarter have two faults. The second benchmark does
 * the same on two threads, each with jobs of its own.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 3)
@org.openjdk.jmh.annotations.Measurement(iterations = 5, time = 3)
@Fork(1)
public class DiagnosisBenchmark {

  private static final int FAULTS = 40;
  private static final int READINGS = 15;
  private static final int MOVED = 4;
  private static final int JOBS = 40;
  private static final Source INVENTED = Source.fromMemory("a benchmark");
  private static final Procedure PROCEDURE =
      new Procedure("Read it.", 2, Hazard.DEAD, new Accuracy(0.01, 0), List.of());

  private final FaultModel model = model(new Random(1));
  private final List<Job> jobs = jobs(new Random(7));
  private final DiagnosisEngine engine = new DiagnosisEngine(EngineSettings.USUAL);
  private int next;

  /** With a model and jobs of its own. */
  public DiagnosisBenchmark() {}

  private record Sparse(
      List<Observable> observables,
      double[] healthy,
      int[][] moved,
      double[][] slope,
      List<Fault> faults)
      implements FaultModel {

    @Override
    public String id() {
      return "sparse";
    }

    @Override
    public List<Question> questions() {
      return observables.stream().map(o -> new Question("part", o, Conditions.NONE)).toList();
    }

    @Override
    public Forecaster forecaster(List<Question> asked) {
      int[] place = new int[observables.size()];
      java.util.Arrays.fill(place, -1);
      for (int k = 0; k < asked.size(); k++) {
        place[observables.indexOf(asked.get(k).observable())] = k;
      }
      return (severity, value, spread) -> {
        for (int k = 0; k < place.length; k++) {
          if (place[k] >= 0) {
            value[place[k]] = healthy[k];
            spread[place[k]] = 0.04 * healthy[k];
          }
        }
        for (int f = 0; f < slope.length; f++) {
          for (int m = 0; severity[f] > 0 && m < MOVED; m++) {
            if (place[moved[f][m]] >= 0) {
              value[place[moved[f][m]]] += slope[f][m] * severity[f];
            }
          }
        }
      };
    }
  }

  private static Sparse model(Random random) {
    List<Observable> observables = new ArrayList<>();
    double[] healthy = new double[READINGS];
    for (int k = 0; k < READINGS; k++) {
      observables.add(
          Observable.named("reading-" + k, "reading")
              .quantity(QuantityKind.RESISTANCE, 0, 300)
              .by(PROCEDURE));
      healthy[k] = 60 + 40 * random.nextDouble();
    }
    int[][] moved = new int[FAULTS][MOVED];
    double[][] slope = new double[FAULTS][MOVED];
    List<Fault> faults = new ArrayList<>();
    Remedy remedy =
        new Remedy(
            "renew", "part", "renew it", 30, Remedy.Restores.COMPONENT, false, 0.95, List.of());
    for (int f = 0; f < FAULTS; f++) {
      for (int m = 0; m < MOVED; m++) {
        moved[f][m] = random.nextInt(READINGS);
        slope[f][m] =
            (random.nextBoolean() ? 1 : -1)
                * healthy[moved[f][m]]
                * (0.2 + 0.6 * random.nextDouble());
      }
      double prior = 0.02 + 0.03 * random.nextDouble();
      faults.add(
          new Fault(
              "fault-" + f, "part", "fault", prior, INVENTED, List.of(remedy), Optional.empty()));
    }
    return new Sparse(observables, healthy, moved, slope, faults);
  }

  private List<Job> jobs(Random random) {
    List<Job> made = new ArrayList<>();
    for (int i = 0; i < JOBS; i++) {
      double[] severity = new double[FAULTS];
      for (int n = i % 4 == 3 ? 2 : 1; n > 0; n--) {
        severity[random.nextInt(FAULTS)] = 0.3 + 0.7 * random.nextDouble();
      }
      made.add(job(severity, random));
    }
    return made;
  }

  private Job job(double[] severity, Random random) {
    double[] value = new double[READINGS];
    double[] spread = new double[READINGS];
    model.forecaster(model.questions()).forecast(severity, value, spread);
    List<Measurement> measurements = new ArrayList<>();
    for (int k = 0; k < READINGS; k++) {
      double u = 0.01 * Math.abs(value[k]) + 0.1;
      double read = value[k] + random.nextGaussian() * Math.hypot(u, spread[k]);
      QuantityKind kind = QuantityKind.RESISTANCE;
      measurements.add(
          new Measurement(
              "part",
              "reading-" + k,
              List.of(new Reading.Value(Quantity.ofSi(read, u, kind).in(kind.unit()), 0)),
              Conditions.NONE,
              Optional.empty(),
              ""));
    }
    Component part =
        new Component("part", "part", Nameplate.UNREADABLE, Map.of(), Map.of(), INVENTED);
    Appliance machine =
        new Appliance("machine", "", "", "", Optional.empty(), Nameplate.UNREADABLE, List.of(part));
    return new Job(
        "bench",
        "",
        machine,
        new Complaint("it is cold", ""),
        List.of(),
        measurements,
        Optional.empty());
  }

  /**
   * One thread.
   *
   * @return the result
   */
  @Benchmark
  public Diagnosis fortyFaultsWithAllPairs() {
    next = (next + 1) % JOBS;
    return engine.diagnose(jobs.get(next), List.of(model));
  }

  /**
   * Two threads at once: the time of one diagnosis then, to be held against that of one thread.
   *
   * @return the result
   */
  @Benchmark
  @Threads(2)
  public Diagnosis onTwoThreads() {
    return fortyFaultsWithAllPairs();
  }
}

package kelter.core.diagnosis.symptom.exact;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import kelter.core.diagnosis.symptom.Background;
import kelter.core.diagnosis.symptom.GroupChances;
import kelter.core.diagnosis.symptom.MachineChances;
import kelter.core.diagnosis.symptom.Report;
import kelter.core.diagnosis.symptom.Reports;
import kelter.core.diagnosis.symptom.StateChances;
import kelter.core.diagnosis.symptom.WrongReports;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Twelve groups of 40 states with 100 nodes of severity each. Every state makes every symptom,
 * which is the worst case.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class SymptomBenchmark {

  private static final int GROUPS = 12;
  private static final int STATES = 40;
  private static final int NODES = 100;

  /** How many symptoms were reported as there, and how many as not. */
  @Param({"0+0", "2+0", "4+0", "6+0", "8+0", "5+10", "7+13"})
  public String reported;

  private MachineChances machine;
  private Reports reports;
  private SymptomPosterior posterior;

  /** Leaves the machine to {@link #prepare}. */
  public SymptomBenchmark() {}

  /** Draws a machine. */
  @Setup
  public void prepare() {
    String[] counts = reported.split("\\+");
    int yes = Integer.parseInt(counts[0]);
    int asked = yes + Integer.parseInt(counts[1]);
    Random random = new Random(1);
    List<GroupChances> groups = new ArrayList<>();
    for (int g = 0; g < GROUPS; g++) {
      groups.add(group(random, asked + 1));
    }
    machine = new MachineChances(groups, .1);
    reports = reports(yes, asked);
    posterior = SymptomPosterior.of(machine, reports);
  }

  private static GroupChances group(Random random, int symptoms) {
    List<StateChances> states = new ArrayList<>();
    states.add(StateChances.Nodes.silent(Math.log(.9), symptoms));
    for (int x = 1; x < STATES; x++) {
      double[] share = new double[NODES];
      java.util.Arrays.fill(share, 1.0 / NODES);
      double[][] chance = new double[symptoms][];
      for (int i = 0; i < symptoms; i++) {
        double most = random.nextDouble();
        chance[i] = random.doubles(NODES).map(p -> most * p).toArray();
      }
      double weight = .2 / STATES * random.nextDouble();
      states.add(new StateChances.Nodes(Math.log(weight), share, chance));
    }
    return new GroupChances(Math.log(.9), states);
  }

  private static Reports reports(int yes, int asked) {
    WrongReports wrong = new WrongReports(.02, .1, .05);
    List<Background> symptoms = new ArrayList<>();
    List<Report> reports = new ArrayList<>();
    for (int i = 0; i < asked; i++) {
      symptoms.add(new Background(.02, .1));
      reports.add(i < yes ? Report.yes(wrong) : Report.no(wrong));
    }
    symptoms.add(new Background(.02, .1));
    reports.add(Report.UNASKED);
    return new Reports(symptoms, reports);
  }

  /**
   * Tables of all states, the recursion and all marginals.
   *
   * @return their sum
   */
  @Benchmark
  public double all() {
    return marginals(SymptomPosterior.of(machine, reports));
  }

  /**
   * The recursion and all marginals, where the tables are there.
   *
   * @return their sum
   */
  @Benchmark
  public double recursion() {
    return marginals(posterior.without(reports.count() - 1));
  }

  /**
   * The eight likeliest joint states.
   *
   * @return the states
   */
  @Benchmark
  public List<JointState> eightLikeliest() {
    return posterior.likeliest(8);
  }

  private static double marginals(SymptomPosterior posterior) {
    double sum = 0;
    for (int g = 0; g < GROUPS; g++) {
      for (int x = 0; x < STATES; x++) {
        sum += posterior.marginal(g, x);
      }
    }
    return sum;
  }
}

package kelter.core.oracle;

import java.util.concurrent.TimeUnit;
import kelter.core.oracle.decision.Advice;
import kelter.core.oracle.decision.ValueOfInformation;
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
 * Which reading to take next, from the evidence of Q6 on: what each observable that is left tells,
 * by the kernel and by aima-core 3.0.0, and what it saves. To be held: 20 times as fast as
 * aima-core.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class NextReadingBenchmark {

  private static final String QUERY = "Q6";
  private static final int FEW = ValueOfInformation.USUAL_FEW;

  /** The network. */
  @Param({"A", "B"})
  public String network;

  private Networks networks;
  private DiscreteModel model;
  private ValueOfInformation value;
  private int[] evidence;

  /** Leaves the problem to {@link #prepare}. */
  public NextReadingBenchmark() {}

  /** Makes the problem in the form of each. */
  @Setup
  public void prepare() {
    networks = network.equals("A") ? Networks.a() : Networks.b();
    model = networks.model();
    evidence = networks.evidence(QUERY);
    value = new ValueOfInformation(model, Networks.REPAIRS, networks.prices());
  }

  /**
   * The kernel.
   *
   * @return for each observable the information in bits
   */
  @Benchmark
  public double[] information() {
    return model.given(evidence).information();
  }

  /**
   * The other library, asked for each outcome of each observable that is left.
   *
   * @return for each observable the information in bits
   */
  @Benchmark
  public double[] informationByAima() {
    double[] bits = new double[evidence.length];
    double before = entropy(networks.aima().ask(0, networks.findings(evidence)));
    for (int f = 0; f < bits.length; f++) {
      bits[f] = evidence[f] < 0 ? before - entropyAfter(f) : 0;
    }
    return bits;
  }

  private double entropyAfter(int observable) {
    int[] after = evidence.clone();
    double sum = 0;
    double[] outcomes = networks.aima().ask(networks.node(observable), networks.findings(evidence));
    for (int o = 0; o < outcomes.length; o++) {
      after[observable] = o;
      sum += outcomes[o] * entropy(networks.aima().ask(0, networks.findings(after)));
    }
    return sum;
  }

  private static double entropy(double[] p) {
    double sum = 0;
    for (double each : p) {
      sum -= each > 0 ? each * Math.log(each) : 0;
    }
    return sum / Math.log(2);
  }

  /**
   * What each reading saves.
   *
   * @return for each observable the saving
   */
  @Benchmark
  public double[] savings() {
    return value.savings(evidence);
  }

  /**
   * What to read next, with a second reading thought of.
   *
   * @return the advice
   */
  @Benchmark
  public Advice advice() {
    return value.advise(evidence, FEW);
  }
}

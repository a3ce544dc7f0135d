package kelter.core.oracle;

import aima.core.probability.proposition.AssignmentProposition;
import java.util.concurrent.TimeUnit;
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
 * One posterior on networks A and B: the kernel, a plain double loop (A only) and aima-core 3.0.0,
 * each with the same evidence in its own form, made beforehand. To be held: 30 times as fast as
 * aima-core on A, 10 times on B, within 3 times of the plain loop on A.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class DiscreteBenchmark {

  /** The network. */
  @Param({"A", "B"})
  public String network;

  /** What was observed. */
  @Param({"Q3", "Q5", "Q6"})
  public String query;

  private DiscreteModel model;
  private AimaNetwork aima;
  private int[] evidence;
  private AssignmentProposition[] findings;
  private double[][][] table;

  /** Leaves the problem to {@link #prepare}. */
  public DiscreteBenchmark() {}

  /** Makes the problem in the form of each. */
  @Setup
  public void prepare() {
    Networks networks = network.equals("A") ? Networks.a() : Networks.b();
    model = networks.model();
    aima = networks.aima();
    evidence = networks.evidence(query);
    findings = networks.findings(evidence);
    table = new double[evidence.length][Networks.PRIOR.length][];
    for (int f = 0; f < table.length; f++) {
      double[][] rows = model.given(model.nothingObserved()).joint(f);
      for (int s = 0; s < table[f].length; s++) {
        table[f][s] = new double[rows.length];
        for (int o = 0; o < rows.length; o++) {
          table[f][s][o] = rows[o][s] / Networks.PRIOR[s];
        }
      }
    }
  }

  /**
   * The kernel.
   *
   * @return the posterior
   */
  @Benchmark
  public double[] posterior() {
    return model.posterior(evidence);
  }

  /**
   * A plain double loop, which is right on A only.
   *
   * @return the posterior
   */
  @Benchmark
  public double[] posteriorByPlainLoop() {
    double[] posterior = new double[Networks.PRIOR.length];
    double sum = 0;
    for (int s = 0; s < posterior.length; s++) {
      double p = Networks.PRIOR[s];
      for (int f = 0; f < evidence.length; f++) {
        if (evidence[f] >= 0) {
          p *= table[f][s][evidence[f]];
        }
      }
      posterior[s] = p;
      sum += p;
    }
    for (int s = 0; s < posterior.length; s++) {
      posterior[s] /= sum;
    }
    return posterior;
  }

  /**
   * The other library.
   *
   * @return the posterior
   */
  @Benchmark
  public double[] posteriorByAima() {
    return aima.ask(0, findings);
  }
}

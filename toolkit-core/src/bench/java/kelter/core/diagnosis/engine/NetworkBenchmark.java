package kelter.core.diagnosis.engine;

import aima.core.probability.proposition.AssignmentProposition;
import java.util.List;
import java.util.concurrent.TimeUnit;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Knowledge;
import kelter.core.job.Job;
import kelter.core.oracle.AimaNetwork;
import kelter.core.oracle.NetworkModel;
import kelter.core.oracle.Networks;
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
 * The engine that users run on networks A and B with everything observed (Q5), beside the variable
 * elimination of aima-core 3.0.0: the posterior alone, and a whole diagnosis with what to do next,
 * what each reading says, and whether the readings fit. Job and model, or network and evidence, are
 * made beforehand. The engine integrates over the severity of each fault, which moves nothing here.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class NetworkBenchmark {

  private static final String QUERY = "Q5";

  /** The network. */
  @Param({"A", "B"})
  public String network;

  private final DiagnosisEngine engine = new DiagnosisEngine(NetworkModel.SETTINGS);
  private Knowledge knowledge;
  private Job job;
  private AimaNetwork aima;
  private AssignmentProposition[] findings;

  /** Leaves the problem to {@link #prepare}. */
  public NetworkBenchmark() {}

  /** Makes the problem in the form of each. */
  @Setup
  public void prepare() {
    Networks networks = network.equals("A") ? Networks.a() : Networks.b();
    int[] evidence = networks.evidence(QUERY);
    NetworkModel model = new NetworkModel(networks, evidence);
    knowledge = Knowledge.of(List.<FaultModel>of(model));
    job = model.job();
    aima = networks.aima();
    findings = networks.findings(evidence);
  }

  /**
   * The engine, as far as the probability of each state.
   *
   * @return nothing wrong first, then the faults in their order
   */
  @Benchmark
  public double[] posterior() {
    JointPosterior posterior = engine.update(job, knowledge).orElseThrow().posterior();
    double[] all = new double[Networks.PRIOR.length];
    for (int state = 0; state < all.length; state++) {
      all[state] = posterior.marginal(0, state);
    }
    return all;
  }

  /**
   * The engine, all of it.
   *
   * @return the diagnosis
   */
  @Benchmark
  public Diagnosis diagnosis() {
    return engine.diagnose(job, knowledge);
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

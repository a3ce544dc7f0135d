package kelter.hydraulics.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Forecaster;
import kelter.core.diagnosis.Question;
import kelter.core.job.Component;
import kelter.hydraulics.HydraulicsModule;
import kelter.hydraulics.SampleMachines;
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
 * How long a forecast of everything that can be asked of a pump takes when warm, in a state with
 * two faults; a diagnosis asks some thousand times. To be held: 6 µs, and 30 µs to make ready.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class ForecastBenchmark {

  /** The pump. */
  @Param({"drain", "wash"})
  public String pump;

  private FaultModel model;
  private List<Question> questions;
  private Forecaster forecaster;
  private double[] severity;
  private double[] value;
  private double[] spread;

  /** Makes the model and a state in which the vanes are blocked and something clogs the way. */
  @Setup
  public void prepare() {
    Component made = pump.equals("drain") ? SampleMachines.drainPump() : SampleMachines.washPump();
    model = new HydraulicsModule().parts().faultModels(SampleMachines.with(made)).get(0);
    questions = model.questions();
    forecaster = model.forecaster(questions);
    severity = new double[model.faults().size() + model.shared().size()];
    for (int i = 0; i < model.faults().size(); i++) {
      String fault = model.faults().get(i).id();
      boolean there = List.of("passages-blocked", "hose-clogged", "inlet-clogged").contains(fault);
      severity[i] = there ? 0.4 : 0;
    }
    severity[model.faults().size()] = 0.5;
    value = new double[questions.size()];
    spread = new double[questions.size()];
  }

  /**
   * A forecast of all questions.
   *
   * @return the values
   */
  @Benchmark
  public double[] forecast() {
    forecaster.forecast(severity, value, spread);
    return value;
  }

  /**
   * Making ready to answer all questions.
   *
   * @return what answers them
   */
  @Benchmark
  public Forecaster makeReady() {
    return model.forecaster(questions);
  }
}

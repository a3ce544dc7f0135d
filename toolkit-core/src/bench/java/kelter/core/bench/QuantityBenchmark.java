package kelter.core.bench;

import java.util.concurrent.TimeUnit;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.QuantityParser;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** How long it takes, warm, to read a flow rate as a person writes it. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class QuantityBenchmark {

  /** What is written. */
  @Param({"11.5 L/min", "11,5 l/min", "3 ± 0.1 gpm"})
  public String written;

  /**
   * Reads it.
   *
   * @return the flow rate
   */
  @Benchmark
  public Quantity read() {
    return QuantityParser.parse(written, QuantityKind.FLOW);
  }
}

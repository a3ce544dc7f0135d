package kelter.costing.weigh;

import java.util.Optional;
import java.util.concurrent.TimeUnit;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.job.Job;
import kelter.core.option.LearnedLives;
import kelter.core.option.Reasons;
import kelter.core.option.Weighing;
import kelter.core.owner.PriceSpread;
import kelter.core.owner.Supplies;
import kelter.core.owner.Terms;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** How long weighing takes when warm. To be held: 100 000 draws over 5 options, 150 ms. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class WeighBenchmark {

  private static final int DRAWS = 100_000;
  private static final int OPTIONS = 5;

  private final Diagnosis diagnosis = Cases.diagnosis(0.6, 0.25, 0.05, 0.02);
  private final Job job = Cases.washer(8, Cases.prices(12, 150, 800, 3));
  private final LifecycleWeigher weigher = new LifecycleWeigher(DRAWS, LearnedLives.NONE);
  private final LifecycleWeigher usual =
      new LifecycleWeigher(LifecycleWeigher.DRAWS, LearnedLives.NONE);
  private Job spread;

  /** Makes a job whose prices are not sure, and counts the options. */
  @Setup
  public void prepare() {
    Optional<Quantity> tenth = Optional.of(Quantity.of(10, "%", QuantityKind.PERCENT));
    spread =
        Cases.washer(
            8,
            Cases.with(
                Cases.prices(12, 150, 800, 3),
                Terms.NONE,
                Supplies.UNKNOWN,
                new PriceSpread(tenth, tenth, tenth)));
    int options = weigher.weigh(job, diagnosis, 1).options().size();
    if (options != OPTIONS) {
      throw new IllegalStateException(options + " options where 5 are to be timed");
    }
  }

  /**
   * 100 000 draws over 5 options.
   *
   * @return the options
   */
  @Benchmark
  public Weighing draws() {
    return weigher.weigh(job, diagnosis, 1);
  }

  /**
   * The same with prices drawn as well.
   *
   * @return the options
   */
  @Benchmark
  public Weighing drawsWithPrices() {
    return weigher.weigh(spread, diagnosis, 1);
  }

  /**
   * The reasons, with the usual number of draws.
   *
   * @return the reasons
   */
  @Benchmark
  public Optional<Reasons> reasons() {
    return usual.weighAndExplain(job, diagnosis, 1).reasons();
  }
}

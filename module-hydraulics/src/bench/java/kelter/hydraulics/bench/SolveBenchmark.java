package kelter.hydraulics.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import kelter.core.law.InductionMachine;
import kelter.hydraulics.circuit.Circuit;
import kelter.hydraulics.circuit.OperatingPoint;
import kelter.hydraulics.circuit.PumpCondition;
import kelter.hydraulics.circuit.PumpMotor;
import kelter.hydraulics.circuit.PumpSet;
import kelter.hydraulics.drain.DrainTime;
import kelter.hydraulics.pipe.Hose;
import kelter.hydraulics.pump.PumpCurve;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How long the solvers take when warm. To be held: an operating point 2 µs, a time to empty 20 µs.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class SolveBenchmark {

  private static final double LITRE_PER_MINUTE = 1 / 60_000.0;
  private static final PumpCurve CURVE =
      PumpCurve.through(
          new double[] {0, 40 * LITRE_PER_MINUTE, 66 * LITRE_PER_MINUTE},
          new double[] {3.4, 2.6, 1.2});
  private static final PumpMotor MOTOR = new PumpMotor.Induction(new InductionMachine(0.08, 2.3));
  private static final PumpSet GOOD =
      new PumpSet(CURVE, MOTOR, 40 * LITRE_PER_MINUTE, 0.5, PumpCondition.GOOD);
  private static final PumpSet THREE_FAULTS =
      new PumpSet(
          CURVE,
          MOTOR,
          40 * LITRE_PER_MINUTE,
          0.5,
          new PumpCondition(0.6, 0.9, 0.95, 1, 2e-5, 0.3, 1));

  private double lift = 0.3;
  private double viscosity = 1e-6;
  private Hose hose = new Hose(1.2, 0.019, 0, 3);
  private List<Hose> hoses = List.of(hose);

  /**
   * Pump in order, motor and circuit.
   *
   * @return where they meet
   */
  @Benchmark
  public OperatingPoint operatingPoint() {
    return GOOD.against(new Circuit(lift, hoses, 1e-4), viscosity);
  }

  /**
   * Pump with blocked vanes, drag and an internal leak, motor and circuit.
   *
   * @return where they meet
   */
  @Benchmark
  public OperatingPoint operatingPointWithThreeFaults() {
    return THREE_FAULTS.against(new Circuit(lift, hoses, 1e-4), viscosity);
  }

  /**
   * A sump pumped empty over a hose of one metre of lift.
   *
   * @return the time in s
   */
  @Benchmark
  public double timeToEmpty() {
    return DrainTime.time(CURVE, hose, 1, 0.1, lift, 0, viscosity);
  }
}

package kelter.hydraulics.bench;

import java.util.List;
import java.util.function.IntToDoubleFunction;
import kelter.hydraulics.circuit.Circuit;
import kelter.hydraulics.circuit.Motor;
import kelter.hydraulics.circuit.PumpCondition;
import kelter.hydraulics.circuit.PumpSet;
import kelter.hydraulics.drain.DrainTime;
import kelter.hydraulics.pipe.Hose;
import kelter.hydraulics.pump.PumpCurve;

/**
 * How long the solvers take when warm: the best of ten rounds, printed by the main method. The
 * best, because other work on the machine can only add to it.
 */
public final class SolveTimes {

  private static final int ROUNDS = 10;
  private static final PumpCurve CURVE =
      PumpCurve.through(
          new double[] {0, 40 / 60_000.0, 66 / 60_000.0}, new double[] {3.4, 2.6, 1.2});
  private static final Hose HOSE = new Hose(1.2, 0.019, 0, 3);
  private static final PumpSet FAULTY =
      new PumpSet(
          CURVE,
          new Motor.Induction(0.08, 2.3),
          40 / 60_000.0,
          0.5,
          new PumpCondition(0.6, 0.9, 0.95, 1, 2e-5, 0.3, 1));

  private static double sink;

  private SolveTimes() {}

  /**
   * Prints the times.
   *
   * @param arguments none
   */
  public static void main(String[] arguments) {
    List<Hose> hoses = List.of(HOSE);
    print(
        "operating point of pump, motor and circuit, three faults",
        200_000,
        i -> FAULTY.against(new Circuit(0.3 + i * 1e-7, hoses, 1e-4), 1e-6).flow());
    print(
        "time to empty", 20_000, i -> DrainTime.time(CURVE, HOSE, 1, 0.1, 0.3 + i * 1e-7, 0, 1e-6));
    System.out.println(sink);
  }

  private static void print(String what, int times, IntToDoubleFunction work) {
    long best = Long.MAX_VALUE;
    for (int round = 0; round < ROUNDS; round++) {
      long start = System.nanoTime();
      for (int i = 0; i < times; i++) {
        sink += work.applyAsDouble(i);
      }
      best = Math.min(best, (System.nanoTime() - start) / times);
    }
    System.out.println(what + ": " + best + " ns");
  }
}

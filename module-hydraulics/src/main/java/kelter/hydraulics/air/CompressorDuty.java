package kelter.hydraulics.air;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;

/**
 * The share of the time that a compressor runs: the heat that comes in by what it takes out. Beyond
 * 1 the cabinet warms.
 *
 * <p>It holds for compressors of one speed, mean over several cycles.
 *
 * <p>Source: heat balance, from memory.
 */
public final class CompressorDuty {

  private static final Parameter LOAD =
      Parameter.required("load", "heat that comes in", QuantityKind.POWER, 1, 10_000);
  private static final Parameter EXTRA =
      Parameter.required("leak", "heat that a leak adds", QuantityKind.POWER, 0, 5000);
  private static final Parameter CAPACITY =
      Parameter.required(
          "capacity", "heat that the running compressor takes out", QuantityKind.POWER, 10, 20_000);

  private CompressorDuty() {}

  /**
   * The duty by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "compressor-duty",
        "Share of the time that a compressor runs",
        "duty = (load + leak) / capacity; 1 if that is more",
        "One speed, mean over several cycles",
        Source.fromMemory("heat balance of a cold cabinet"),
        List.of(LOAD, EXTRA.optional("0 W"), CAPACITY),
        List.of(new Output("duty", "share of the time", QuantityKind.PERCENT)),
        List.of(),
        p -> {
          double heat = LOAD.check(p[0]) + EXTRA.check(p[1]);
          return new double[] {Math.min(1, heat / CAPACITY.check(p[2]))};
        });
  }
}

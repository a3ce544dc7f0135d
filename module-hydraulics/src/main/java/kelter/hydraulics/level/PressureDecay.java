package kelter.hydraulics.level;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityFormat;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;

/**
 * How fast the air of a closed tube or trap leaks: the time constant τ = t / ln(p1 / p2) with which
 * the pressure dies away, and the leak rate V (p1 − p2) / t.
 *
 * <p>It holds for a leak through narrow gaps, whose flow is proportional to the pressure, at
 * constant temperature: a tube that is warmed by a hand tells nothing.
 *
 * <p>Source: pressure change method, EN 1779:1999, method D.1, from memory.
 */
public final class PressureDecay {

  private static final Parameter START =
      Parameter.required("start", "pressure at the start", QuantityKind.GAUGE_PRESSURE, 1, 1e5);
  private static final Parameter END =
      Parameter.required("end", "pressure at the end", QuantityKind.GAUGE_PRESSURE, 0.1, 9.9e4);
  private static final Parameter TIME =
      Parameter.required("time", "time between", QuantityKind.TIME, 1, 3600);
  private static final Parameter VOLUME =
      Parameter.required(
          "volume", "volume of tube, trap and sensor", QuantityKind.VOLUME, 1e-7, 1e-2);

  private static final double MINUTE = 60; // s

  private PressureDecay() {}

  /**
   * The decay by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "pressure-decay",
        "Leak of the air trap or its tube from the fall of its pressure",
        "time-constant = time / ln(start/end); leak-rate = volume (start - end) / time; kept = exp(-60 s /"
            + " time-constant)",
        "Constant temperature; start above end, which is refused otherwise",
        Source.fromMemory("pressure change method, EN 1779:1999, method D.1"),
        List.of(START, END, TIME, VOLUME.optional("20 mL")),
        List.of(
            new Output("time-constant", "time constant", QuantityKind.TIME),
            new Output("leak-rate", "leak rate", QuantityKind.of("leak rate", "Pa.m3/s")),
            new Output("kept", "share kept after a minute", QuantityKind.PERCENT)),
        List.of(),
        PressureDecay::compute);
  }

  private static double[] compute(double[] p) {
    double start = START.check(p[0]);
    double end = END.check(p[1]);
    double time = TIME.check(p[2]);
    if (!(start > end)) {
      throw new IllegalArgumentException(
          "end: a pressure of %s Pa that did not fall from %s Pa shows no leak"
              .formatted(QuantityFormat.plain(end), QuantityFormat.plain(start)));
    }
    double constant = timeConstant(start, end, time);
    return new double[] {
      constant, VOLUME.check(p[3]) * (start - end) / time, Math.exp(-MINUTE / constant)
    };
  }

  /**
   * The time constant.
   *
   * @param start the gauge pressure at the start in Pa, above that at the end
   * @param end the gauge pressure at the end in Pa, above 0
   * @param time the time between in s, above 0
   * @return the time constant in s
   */
  public static double timeConstant(double start, double end, double time) {
    return time / Math.log(start / end);
  }
}

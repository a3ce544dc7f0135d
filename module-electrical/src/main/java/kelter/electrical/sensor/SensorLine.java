package kelter.electrical.sensor;

import java.util.List;
import kelter.core.law.Require;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;

/**
 * What a sensor that gives a voltage in proportion tells, by two points of its line: y = y₁ + (u −
 * u₁)(y₂ − y₁)/(u₂ − u₁). For pressure transducers and level sensors with a voltage output; the
 * result is a ratio of the range, 0 at the first point and 1 at the second.
 *
 * <p>Between the two points and a tenth of the range beyond; farther out the reading is refused,
 * because it shows a fault and not a pressure.
 */
public final class SensorLine {

  /** Where the formula comes from. */
  public static final Source SOURCE =
      Source.commonPractice("straight line through both ends of the range of the sensor");

  private static final double BEYOND = 0.1;

  private SensorLine() {}

  /**
   * The share of the range by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "sensor-line",
        "what share of its range a sensor with a voltage output tells",
        "share = (voltage - at-zero) / (at-full - at-zero)",
        "the range and a tenth beyond; farther out the reading shows a fault",
        SOURCE,
        List.of(
            voltage("voltage", "voltage read"),
            voltage("at-zero", "voltage at the start of the range").optional("0.5 V"),
            voltage("at-full", "voltage at the end of the range").optional("4.5 V")),
        List.of(new Output("share", "share of the range", QuantityKind.PERCENT)),
        List.of(),
        x -> new double[] {share(x[0], x[1], x[2])});
  }

  private static Parameter voltage(String id, String title) {
    return Parameter.required(id, title, QuantityKind.VOLTAGE, 0, 50);
  }

  /**
   * The share of the range.
   *
   * @param voltage the voltage read, V
   * @param atZero the voltage at the start of the range, V
   * @param atFull the voltage at the end of the range, V, another than at the start
   * @return the share, as a ratio, from −0.1 to 1.1
   * @throws IllegalArgumentException if the two ends are the same or the voltage lies farther out
   */
  public static double share(double voltage, double atZero, double atFull) {
    if (atZero == atFull || !Double.isFinite(atFull - atZero)) {
      throw new IllegalArgumentException(
          "the ends of the range are at %s V and %s V; they must differ".formatted(atZero, atFull));
    }
    double share = (voltage - atZero) / (atFull - atZero);
    return Require.within("share of the range", share, -BEYOND, 1 + BEYOND, "");
  }
}

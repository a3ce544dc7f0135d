package coffee.grinder;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;

/**
 * How long a grinder takes for a dose: t = m / q. Burrs that have lost a share of their edge grind
 * as much less in a second.
 *
 * <p>For a grinder that is warm and fed without a gap. Definition of a mean rate.
 */
final class GrindTime {

  private static final double MOST_DOSE = 1; // kg
  private static final double LEAST_RATE = 1e-4; // kg/s
  private static final double MOST_RATE = 0.1; // kg/s
  private static final double MOST_LOST = 0.9;

  /** Mass that is ground in a time. */
  static final QuantityKind RATE = QuantityKind.of("grinding rate", "g/s");

  private GrindTime() {}

  /** The calculation by name. */
  static Calculation calculation() {
    return new Calculation(
        "grind-time",
        "how long a coffee grinder takes for a dose",
        "time = dose / (rate * (1 - lost))",
        "a warm grinder that is fed without a gap",
        Source.published("definition of a mean rate"),
        List.of(
            Parameter.required("dose", "coffee to be ground", QuantityKind.MASS, 0, MOST_DOSE),
            Parameter.required("rate", "rate with sharp burrs", RATE, LEAST_RATE, MOST_RATE),
            Parameter.optional(
                "lost",
                "share of the rate that is lost",
                QuantityKind.PERCENT,
                0,
                MOST_LOST,
                "0 %")),
        List.of(new Output("time", "time for the dose", QuantityKind.TIME)),
        List.of(),
        x -> new double[] {time(x[0], x[1] * (1 - x[2]))});
  }

  /**
   * The time for a dose.
   *
   * @param dose the mass, in kg
   * @param rate the grinding rate, in kg/s, above 0
   * @return the time, in s
   */
  static double time(double dose, double rate) {
    return dose / rate;
  }
}

package kelter.electrical.conductor;

import java.util.List;
import kelter.core.law.Require;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;

/**
 * The resistance between two points when the test leads are taken off a reading: R = R_read −
 * R_leads, the leads read with their tips held together.
 *
 * <p>Below the resolution of the meter the difference may come out slightly negative: it is then
 * told as it is, so that its uncertainty covers zero. A reading that is less than the leads by more
 * than 1 ohm is refused, because then one of the two was written down wrong.
 */
public final class LeadNull {

  /** What the trade does. */
  public static final Source SOURCE =
      Source.commonPractice("read the test leads with their tips together and take that off");

  /** By how much the leads may exceed the reading, Ohm; common practice, no source. */
  private static final double SLACK = 1;

  private LeadNull() {}

  /**
   * The difference by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "lead-null",
        "what lies between two points when the test leads are taken off",
        "resistance = reading - leads",
        "leads read with their tips together on the same range; they have 0.2 to 0.5 ohm",
        SOURCE,
        List.of(
            Parameter.required("reading", "reading", QuantityKind.RESISTANCE, 0, 1e8),
            Parameter.required("leads", "reading of the leads", QuantityKind.RESISTANCE, 0, 10)),
        List.of(new Output("resistance", "resistance", QuantityKind.RESISTANCE)),
        List.of(Caution.UNPLUG),
        x -> new double[] {between(x[0], x[1])});
  }

  /**
   * The resistance between the tips.
   *
   * @param reading the reading, Ohm
   * @param leads the reading with the tips held together, Ohm
   * @return the difference, Ohm
   * @throws IllegalArgumentException if a figure is not finite or the leads exceed the reading by
   *     more than 1 Ohm
   */
  public static double between(double reading, double leads) {
    if (!Double.isFinite(reading) || !Double.isFinite(leads)) {
      throw new IllegalArgumentException(
          "reading %s ohm, leads %s ohm: both must be finite".formatted(reading, leads));
    }
    Require.within("reading less the leads", reading - leads, -SLACK, Double.MAX_VALUE, "ohm");
    return reading - leads;
  }
}

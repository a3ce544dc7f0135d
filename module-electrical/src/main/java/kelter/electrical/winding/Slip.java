package kelter.electrical.winding;

import java.util.List;
import kelter.core.law.Require;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.electrical.caution.ElectricalCautions;

/**
 * How far an induction motor stays behind its rotating field: n_s = f / p with p pairs of poles, s
 * = (n_s − n) / n_s.
 *
 * <p>Induction motors on mains; not brushed motors and not motors on a converter. A speed above the
 * synchronous one gives a negative slip: the load drives the motor.
 */
public final class Slip {

  /** Where the formula comes from. */
  public static final Source SOURCE = Source.fromMemory("definition of slip, IEC 60050-411:1996");

  private Slip() {}

  /**
   * The slip by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "motor-slip",
        "how far an induction motor stays behind its rotating field",
        "synchronous = 2 frequency / poles; slip = (synchronous - speed) / synchronous",
        "induction motors on mains; not brushed motors, not motors on a converter",
        SOURCE,
        List.of(
            Parameter.required("speed", "speed", QuantityKind.ROTATIONAL_SPEED, 0, 200),
            Parameter.required(
                "poles", "number of poles, an even number", QuantityKind.COUNT, 2, 48),
            Parameter.optional(
                "frequency", "frequency of the mains", QuantityKind.FREQUENCY, 10, 100, "50 Hz")),
        List.of(
            new Output("slip", "slip", QuantityKind.PERCENT),
            new Output("synchronous", "synchronous speed", QuantityKind.ROTATIONAL_SPEED)),
        List.of(ElectricalCautions.TURNING),
        x -> {
          double synchronous = synchronousSpeed(x[2], x[1]);
          return new double[] {slip(x[0], synchronous), synchronous};
        });
  }

  /**
   * The synchronous speed.
   *
   * @param frequency the frequency of the mains, Hz, above 0
   * @param poles the number of poles, even, 2 or more
   * @return the speed, 1/s
   * @throws IllegalArgumentException if the frequency is not above zero or the number of poles not
   *     even
   */
  public static double synchronousSpeed(double frequency, double poles) {
    Require.positive("frequency", frequency, "Hz");
    if (!(poles >= 2 && poles % 2 == 0)) {
      throw new IllegalArgumentException(
          "there are " + poles + " poles; it must be an even number");
    }
    return 2 * frequency / poles;
  }

  /**
   * The slip.
   *
   * @param speed the speed, 1/s, 0 or above
   * @param synchronous the synchronous speed, 1/s, above 0
   * @return the slip, as a ratio
   * @throws IllegalArgumentException if a figure is out of its range
   */
  public static double slip(double speed, double synchronous) {
    Require.notNegative("speed", speed, "1/s");
    return 1 - speed / Require.positive("synchronous speed", synchronous, "1/s");
  }
}

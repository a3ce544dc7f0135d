package kelter.electrical.heater;

import java.util.List;
import kelter.core.check.Limits;
import kelter.core.law.Require;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.electrical.caution.ElectricalCautions;

/**
 * By how much the current of an appliance may deviate from its rated current, at rated voltage and
 * normal operating temperature (IEC 60335-1, clause 10, Table 2, from memory).
 *
 * <p>All appliances up to 0.2 A +20 %. Heating and combined ones: above 0.2 A up to 1.0 A ±10 %;
 * above 1.0 A +5 % or 0.10 A, whichever is greater, and −10 %. Motor-operated ones: up to 1.5 A +20
 * %; above 1.5 A +15 % or 0.30 A, whichever is greater. Where the table gives no lower deviation,
 * the lower end is 0 A: a motor without load takes less.
 *
 * <p>The table holds for the whole appliance. For a motor by itself it is the nearest limit.
 */
public final class CurrentInputBand {

  /** Where the table is believed to stand. */
  public static final Source SOURCE = Source.fromMemory("IEC 60335-1, clause 10, Table 2");

  /** Up to this rated current there is one row for all appliances, A. Table 2. */
  private static final double SMALL = 0.2;

  /** Up to this rated current a heating appliance may deviate by ±10 %, A. Table 2. */
  private static final double HEATING_STEP = 1.0;

  /** Up to this rated current a motor-operated appliance may deviate by +20 %, A. Table 2. */
  private static final double MOTOR_STEP = 1.5;

  private static final double PLUS_20 = 0.20;
  private static final double PLUS_15 = 0.15;
  private static final double PLUS_OR_MINUS_10 = 0.10;
  private static final double PLUS_5 = 0.05;

  /** Least upper deviation of a heating appliance above 1.0 A, A. Table 2. */
  private static final double HEATING_LEAST = 0.10;

  /** Least upper deviation of a motor-operated appliance above 1.5 A, A. Table 2. */
  private static final double MOTOR_LEAST = 0.30;

  private CurrentInputBand() {}

  /**
   * The band by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "current-input-band",
        "what current the deviation table allows for a rated one",
        "current-low, current-high = current less and plus the deviation of the table",
        "rated current above 0 A; where the table has no lower deviation the lower end is 0 A",
        SOURCE,
        List.of(
            Parameter.required("current", "rated current", QuantityKind.CURRENT, 1e-3, 500),
            Parameter.choice(
                "type", "what takes the current", List.of("heating", "motor"), "motor")),
        List.of(
            new Output("current-low", "least current", QuantityKind.CURRENT),
            new Output("current-high", "greatest current", QuantityKind.CURRENT)),
        List.of(ElectricalCautions.LIVE_PARTS),
        x -> {
          Limits band = x[1] < 0.5 ? heating(x[0]) : motor(x[0]);
          return new double[] {band.low(), band.high()};
        });
  }

  /**
   * The band of a heating or combined appliance.
   *
   * @param rated the rated current, A, above 0
   * @return least and greatest current, A; the least is 0 up to 0.2 A
   * @throws IllegalArgumentException if the rated current is not finite and above 0 A
   */
  public static Limits heating(double rated) {
    Require.positive("rated current", rated, "A");
    if (rated <= SMALL) {
      return new Limits(0, rated * (1 + PLUS_20));
    }
    double more =
        rated <= HEATING_STEP ? PLUS_OR_MINUS_10 * rated : Math.max(PLUS_5 * rated, HEATING_LEAST);
    return new Limits(rated * (1 - PLUS_OR_MINUS_10), rated + more);
  }

  /**
   * The band of a motor-operated appliance.
   *
   * @param rated the rated current, A, above 0
   * @return 0 and the greatest current, A
   * @throws IllegalArgumentException if the rated current is not finite and above 0 A
   */
  public static Limits motor(double rated) {
    Require.positive("rated current", rated, "A");
    double more = rated <= MOTOR_STEP ? PLUS_20 * rated : Math.max(PLUS_15 * rated, MOTOR_LEAST);
    return new Limits(0, rated + more);
  }
}

package kelter.electrical.heater;

import java.util.List;
import kelter.core.check.Limits;
import kelter.core.law.DeviationTable;
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

  /** The table, A. */
  public static final DeviationTable TABLE =
      new DeviationTable("rated current", "A", 0.2, 1.0, 0.10, 1.5, 0.30);

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
          Limits band = x[1] < 0.5 ? TABLE.heating(x[0]) : TABLE.motor(x[0]);
          return new double[] {band.low(), band.high()};
        });
  }
}

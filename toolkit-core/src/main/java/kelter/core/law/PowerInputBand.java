package kelter.core.law;

import java.util.List;
import kelter.core.check.Limits;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;

/**
 * By how much the power input of an appliance may deviate from its rated power input, at rated
 * voltage and normal operating temperature (IEC 60335-1, clause 10, Table 1).
 *
 * <p>Heating and combined appliances: up to 25 W +20 %; above 25 W up to 200 W ±10 %; above 200 W
 * +5 % or 20 W, whichever is greater, and −10 %. Motor-operated appliances, and combined ones whose
 * motors take more than half of the input: up to 300 W +20 %; above 300 W +15 % or 60 W, whichever
 * is greater. Where the table gives no lower deviation, the lower end is 0 W.
 *
 * <p>The table holds for the whole appliance. For a heater by itself it is the nearest published
 * limit.
 */
public final class PowerInputBand {

  /** Where the table stands; this text of it was read. */
  public static final Source SOURCE =
      Source.published(
          "IEC 60335-1, clause 10, Table 1, in the text of IEC 335-1:1991 / GOST R MEK 335-1-94");

  /** The table, W. */
  public static final DeviationTable TABLE =
      new DeviationTable("rated power input", "W", 25, 200, 20, 300, 60);

  private PowerInputBand() {}

  /**
   * The band by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "power-input-band",
        "what power input the deviation table allows for a rated one",
        "power-low, power-high = power less and plus the deviation of the table",
        "rated power input above 0 W; where the table has no lower deviation the lower end is 0 W",
        SOURCE,
        List.of(
            Parameter.required("power", "rated power input", QuantityKind.POWER, 0.1, 1e5),
            Parameter.choice(
                "type", "what takes the power", List.of("heating", "motor"), "heating")),
        List.of(
            new Output("power-low", "least power input", QuantityKind.POWER),
            new Output("power-high", "greatest power input", QuantityKind.POWER)),
        List.of(),
        x -> {
          Limits band = x[1] < 0.5 ? TABLE.heating(x[0]) : TABLE.motor(x[0]);
          return new double[] {band.low(), band.high()};
        });
  }
}

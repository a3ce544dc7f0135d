package kelter.electrical.heater;

import java.util.List;
import kelter.core.check.Limits;
import kelter.core.law.PowerInputBand;
import kelter.core.law.Require;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;

/**
 * What resistance a heater has by its rated power and voltage: R = U² / P (Ohm's and Joule's laws),
 * with the band that follows from the deviation of the power input that {@link PowerInputBand}
 * allows: the greatest power belongs to the least resistance.
 *
 * <p>It is the resistance at working temperature. Cold, a heater of nickel-chromium or
 * iron-chromium-aluminium wire measures up to about 3 % less, see {@link AlloyResistance}.
 */
public final class HeaterResistance {

  /** Where the formula and the band come from. */
  public static final Source SOURCE =
      Source.published(
          "Ohm's and Joule's laws; band from IEC 60335-1, clause 10, Table 1 (text of IEC 335-1:1991 /"
              + " GOST R MEK 335-1-94)");

  /** At or below this rated power the table has no lower deviation, W. */
  private static final double NO_BAND_UP_TO = 25;

  private HeaterResistance() {}

  /**
   * The resistance by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "heater-resistance",
        "what a heater should measure by its nameplate",
        "resistance = voltage^2 / power; resistance-low and resistance-high at the greatest and"
            + " least power input allowed",
        "resistive heaters above 25 W, at working temperature; cold up to about 3 % less",
        SOURCE,
        List.of(
            Parameter.required("power", "rated power", QuantityKind.POWER, 26, 1e5),
            Parameter.required("voltage", "rated voltage", QuantityKind.VOLTAGE, 1, 1000)),
        List.of(
            new Output("resistance", "resistance", QuantityKind.RESISTANCE),
            new Output("resistance-low", "least resistance", QuantityKind.RESISTANCE),
            new Output("resistance-high", "greatest resistance", QuantityKind.RESISTANCE)),
        List.of(Caution.UNPLUG),
        x -> {
          Limits band = band(x[0], x[1]);
          return new double[] {resistance(x[0], x[1]), band.low(), band.high()};
        });
  }

  /**
   * The resistance at working temperature.
   *
   * @param power the rated power, W, above 0
   * @param voltage the rated voltage, V, above 0
   * @return the resistance, Ohm
   * @throws IllegalArgumentException if a figure is not finite and above zero
   */
  public static double resistance(double power, double voltage) {
    Require.positive("power", power, "W");
    Require.positive("voltage", voltage, "V");
    return voltage * voltage / power;
  }

  /**
   * The band of the resistance at working temperature.
   *
   * @param power the rated power, W, above 25
   * @param voltage the rated voltage, V, above 0
   * @return least and greatest resistance, Ohm
   * @throws IllegalArgumentException if the power is not above 25 W, where the table has no lower
   *     deviation and so the resistance no upper end, or a figure is not finite
   */
  public static Limits band(double power, double voltage) {
    if (!(power > NO_BAND_UP_TO)) {
      throw new IllegalArgumentException(
          "the power is "
              + power
              + " W; up to 25 W the table has no lower deviation, so there is no band of resistance");
    }
    Limits input = PowerInputBand.TABLE.heating(power);
    return new Limits(resistance(input.high(), voltage), resistance(input.low(), voltage));
  }
}

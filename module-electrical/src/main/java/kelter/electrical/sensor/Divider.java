package kelter.electrical.sensor;

import java.util.List;
import kelter.core.law.Require;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.electrical.caution.ElectricalCautions;

/**
 * What a sensor has by the voltage that the control reads at it: R = R_s U / (U_s − U), the sensor
 * between the reading and the lower line, a known resistor to the upper one.
 *
 * <p>The input of the control is taken as drawing no current. A voltage at or above the upper line
 * means an open sensor, and has no resistance.
 */
public final class Divider {

  /** Where the formula comes from. */
  public static final Source SOURCE =
      Source.published("Ohm's law (1827) and Kirchhoff's laws (1845)");

  private Divider() {}

  /**
   * The resistance by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "sensor-from-voltage",
        "what resistance a sensor has by the voltage at it",
        "resistance = series voltage / (supply - voltage)",
        "the control's input draws no current; extra-low voltage only",
        SOURCE,
        List.of(
            Parameter.required("voltage", "voltage at the sensor", QuantityKind.VOLTAGE, 0, 48),
            Parameter.required(
                "series", "resistor to the upper line", QuantityKind.RESISTANCE, 1, 1e7),
            Parameter.optional(
                "supply", "voltage of the upper line", QuantityKind.VOLTAGE, 0.5, 50, "5 V")),
        List.of(new Output("resistance", "resistance of the sensor", QuantityKind.RESISTANCE)),
        List.of(ElectricalCautions.LIVE_PARTS),
        x -> new double[] {resistance(x[0], x[1], x[2])});
  }

  /**
   * The resistance of the sensor.
   *
   * @param voltage the voltage at the sensor, V, from 0 to below the supply
   * @param series the resistor to the upper line, Ohm, above 0
   * @param supply the voltage of the upper line, V, above 0
   * @return the resistance, Ohm
   * @throws IllegalArgumentException if the voltage is not below the supply, which means an open
   *     sensor, or a figure is out of its range
   */
  public static double resistance(double voltage, double series, double supply) {
    Require.notNegative("voltage at the sensor", voltage, "V");
    Require.positive("resistor to the upper line", series, "ohm");
    Require.positive("voltage of the upper line", supply, "V");
    if (voltage >= supply) {
      throw new IllegalArgumentException(
          "the voltage is %s V and the upper line %s V: an open sensor has no resistance"
              .formatted(voltage, supply));
    }
    return series * voltage / (supply - voltage);
  }
}

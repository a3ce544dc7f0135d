package kelter.hydraulics.air;

import java.util.List;
import kelter.core.law.Celsius;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;

/**
 * The water that air holds: over water es = 6.112 hPa e^(17.67 t/(t + 243.5)) with t in °C, and w =
 * 0.622 e/(p − e) for each mass of dry air.
 *
 * <p>It holds from 0 to 60 °C within 0.3 %.
 *
 * <p>Source: D. Bolton, Mon. Weather Rev. 108 (1980) 1046, equation (10), from memory.
 */
public final class MoistAir {

  private static final double WATER_BY_AIR = 0.622; // ratio of the molar masses

  private static final Parameter TEMPERATURE =
      Parameter.required(
          "temperature",
          "temperature of the air",
          QuantityKind.TEMPERATURE,
          Celsius.ZERO,
          Celsius.ZERO + 60);
  private static final Parameter HUMIDITY =
      Parameter.required("humidity", "relative humidity", QuantityKind.PERCENT, 0, 1);
  private static final Parameter PRESSURE =
      Parameter.required(
          "air-pressure", "pressure of the air", QuantityKind.ABSOLUTE_PRESSURE, 50_000, 110_000);

  private MoistAir() {}

  /**
   * The moisture by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "moist-air",
        "Water that air holds by its temperature and humidity",
        "saturation = 6.112 hPa exp(17.67 t / (t + 243.5)), t in Cel; e = humidity saturation;"
            + " moisture = 0.622 e / (air-pressure - e)",
        "0 to 60 Cel, within 0.3 %",
        Source.fromMemory("Bolton, Mon. Weather Rev. 108 (1980) 1046, equation (10)"),
        List.of(TEMPERATURE, HUMIDITY, PRESSURE.optional("101.325 kPa")),
        List.of(
            new Output(
                "saturation", "pressure of saturated vapour", QuantityKind.ABSOLUTE_PRESSURE),
            new Output("moisture", "water by dry air", QuantityKind.RATIO)),
        List.of(),
        p -> {
          double saturation = saturation(TEMPERATURE.check(p[0]));
          double vapour = Math.max(0, HUMIDITY.check(p[1])) * saturation;
          return new double[] {saturation, moisture(vapour, PRESSURE.check(p[2]))};
        });
  }

  /**
   * The pressure of saturated vapour.
   *
   * @param temperature the temperature, K, 273.15 to 333.15
   * @return the pressure in Pa
   */
  public static double saturation(double temperature) {
    double celsius = temperature - Celsius.ZERO;
    return 611.2 * Math.exp(17.67 * celsius / (celsius + 243.5)); // Bolton 1980, (10)
  }

  /**
   * The water by dry air.
   *
   * @param vapour the pressure of the vapour, Pa
   * @param pressure the pressure of the air, Pa, above that
   * @return kg of water for each kg of dry air, ratio
   */
  public static double moisture(double vapour, double pressure) {
    return WATER_BY_AIR * vapour / (pressure - vapour);
  }
}

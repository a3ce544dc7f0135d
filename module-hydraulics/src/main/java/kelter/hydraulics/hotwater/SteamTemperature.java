package kelter.hydraulics.hotwater;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.hydraulics.water.Iapws97Region4;
import kelter.hydraulics.water.Water;

/**
 * The temperature of a boiler from its gauge: water and steam together have the temperature at
 * which water boils under the absolute pressure.
 *
 * <p>0 to 16 bar gauge at sea level. A boiler with air in it is colder than its gauge says. Source:
 * IAPWS R7-97(2012), equation (31).
 */
public final class SteamTemperature {

  private static final Parameter PRESSURE =
      Parameter.required("pressure", "pressure at the gauge", QuantityKind.GAUGE_PRESSURE, 0, 16e5);

  private SteamTemperature() {}

  /**
   * The temperature by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "steam-temperature",
        "Temperature of a steam boiler from its gauge",
        "temperature at which water boils at pressure + 101.325 kPa, by IF97 region 4",
        "0 to 16 bar gauge, no air in the boiler",
        Source.published("IAPWS R7-97(2012), equation (31)"),
        List.of(PRESSURE),
        List.of(new Output("temperature", "temperature", QuantityKind.TEMPERATURE)),
        List.of(Caution.HOT_WATER),
        p -> new double[] {at(PRESSURE.check(p[0]))});
  }

  /**
   * The temperature.
   *
   * @param gauge the gauge pressure, Pa, 0 to 16 bar
   * @return the temperature, K
   */
  public static double at(double gauge) {
    return Iapws97Region4.boilingTemperature(gauge + Water.STANDARD_ATMOSPHERE);
  }
}

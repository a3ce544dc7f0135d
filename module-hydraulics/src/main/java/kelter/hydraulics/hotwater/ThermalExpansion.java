package kelter.hydraulics.hotwater;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.hydraulics.water.Water;

/**
 * By how much the water of a store grows as it warms: ΔV = V (ρcold/ρhot - 1). So much must find a
 * way: an expansion vessel, the main, or the relief valve.
 *
 * <p>0 °C to 100 °C, a rigid store. Source: conservation of mass with densities of {@link Water};
 * from memory.
 */
public final class ThermalExpansion {

  private static final Parameter VOLUME =
      Parameter.required("volume", "volume of the store", QuantityKind.VOLUME, 1e-4, 10);

  private static final Parameter COLD = Water.temperature("cold", "temperature before");

  private ThermalExpansion() {}

  /**
   * The expansion by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "thermal-expansion",
        "Water that a store pushes out as it warms",
        "expansion = volume (density(cold) / density(hot) - 1)",
        "0 to 100 Cel, a rigid store; negative where it cools",
        Source.fromMemory("conservation of mass, densities by IAPWS R7-97(2012)"),
        List.of(VOLUME, COLD.optional("10 Cel"), Water.TEMPERATURE.optional("60 Cel")),
        List.of(new Output("expansion", "volume that it grows by", QuantityKind.VOLUME)),
        List.of(Caution.HOT_WATER),
        p -> new double[] {VOLUME.check(p[0]) * share(Water.at(p[1]), Water.at(p[2]))});
  }

  /**
   * The growth.
   *
   * @param cold the water before
   * @param hot the water after
   * @return the growth, ratio of the volume
   */
  public static double share(Water cold, Water hot) {
    return cold.density() / hot.density() - 1;
  }
}

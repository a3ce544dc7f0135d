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
 * The temperature of mixed water: T = x Thot + (1 - x) Tcold, x the share of hot water by mass.
 *
 * <p>Equal specific heats are taken, which costs less than 0.3 K between 0 °C and 100 °C. Source:
 * heat balance, from memory.
 */
public final class MixedWater {

  private static final Parameter HOT = Water.temperature("hot", "temperature of the hot water");
  private static final Parameter COLD = Water.temperature("cold", "temperature of the cold water");
  private static final Parameter SHARE =
      Parameter.required("hot-share", "share of hot water", QuantityKind.PERCENT, 0, 1);

  private MixedWater() {}

  /**
   * The mixture by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "mixed-water",
        "Temperature of hot and cold water mixed",
        "mixed = hot-share hot + (1 - hot-share) cold",
        "0 to 100 Cel, equal specific heats",
        Source.fromMemory("heat balance of two streams"),
        List.of(HOT.optional("60 Cel"), COLD.optional("10 Cel"), SHARE.optional("50 %")),
        List.of(new Output("mixed", "temperature of the mixture", QuantityKind.TEMPERATURE)),
        List.of(Caution.HOT_WATER),
        p -> new double[] {of(SHARE.check(p[2]), HOT.check(p[0]), COLD.check(p[1]))});
  }

  /**
   * The temperature.
   *
   * @param share the share of hot water, 0 to 1
   * @param hot its temperature, K
   * @param cold that of the cold water, K
   * @return the temperature of the mixture, K
   */
  public static double of(double share, double hot, double cold) {
    return share * hot + (1 - share) * cold;
  }
}

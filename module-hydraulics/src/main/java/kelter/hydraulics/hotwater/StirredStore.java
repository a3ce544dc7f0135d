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
 * The outlet of a store in which the cold water that comes in mixes with all the rest: T = Tcold +
 * (Thot - Tcold) e^(-drawn/volume). A store in order keeps its layers and stays near Thot until
 * most of its volume is drawn; between both lies a store whose cold water enters too high.
 *
 * <p>Without heating while it runs. Source: balance of a stirred vessel, from memory.
 */
public final class StirredStore {

  private static final Parameter VOLUME =
      Parameter.required("volume", "volume of the store", QuantityKind.VOLUME, 1e-3, 10);
  private static final Parameter DRAWN =
      Parameter.required("drawn", "volume that has been drawn", QuantityKind.VOLUME, 0, 10);
  private static final Parameter HOT = Water.temperature("hot", "temperature before");
  private static final Parameter COLD = Water.temperature("cold", "temperature of the cold water");

  private StirredStore() {}

  /**
   * The store by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "stirred-store",
        "Outlet of a store whose cold water mixes with the rest",
        "outlet = cold + (hot - cold) exp(-drawn / volume)",
        "No heating while it runs; a store that keeps its layers stays near hot instead",
        Source.fromMemory("balance of a stirred vessel"),
        List.of(VOLUME, DRAWN.optional("16 L"), HOT.optional("60 Cel"), COLD.optional("10 Cel")),
        List.of(new Output("outlet", "temperature at the outlet", QuantityKind.TEMPERATURE)),
        List.of(Caution.HOT_WATER),
        p -> {
          double drawn = DRAWN.check(p[1]) / VOLUME.check(p[0]);
          return new double[] {outlet(drawn, HOT.check(p[2]), COLD.check(p[3]))};
        });
  }

  /**
   * The temperature at the outlet.
   *
   * @param drawn what has been drawn, ratio of the volume, 0 or more
   * @param hot the temperature before, K
   * @param cold the temperature of the cold water, K
   * @return the temperature, K
   */
  public static double outlet(double drawn, double hot, double cold) {
    return cold + (hot - cold) * Math.exp(-drawn);
  }
}

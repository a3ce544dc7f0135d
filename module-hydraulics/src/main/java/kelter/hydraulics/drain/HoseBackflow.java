package kelter.hydraulics.drain;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.hydraulics.pipe.Hose;

/**
 * The water that runs back out of the rising part of a drain hose after the pump stops, where no
 * check valve holds it, and how far the level rises by it.
 *
 * <p>It holds for a hose that was full up to its highest point and lets air in behind the water.
 *
 * <p>Source: volume of a cylinder.
 */
public final class HoseBackflow {

  private static final Parameter RISING =
      Parameter.required(
          "rising-length",
          "length of the hose from the pump to its highest point",
          QuantityKind.HEAD,
          0,
          20);

  /** What the plan area of the water may be. */
  static final Parameter AREA =
      Parameter.required(
          "water-area", "plan area of the water", QuantityKind.of("area", "cm2"), 1e-4, 10);

  private HoseBackflow() {}

  /**
   * The backflow by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "hose-backflow",
        "Water that runs back from the hose after the pump stops",
        "volume = pi/4 bore^2 rising-length; level-rise = volume / water-area",
        "No check valve, or one stuck open; the hose full up to its highest point",
        Source.fromMemory("volume of a cylinder; ISO 80000-3:2019, 3-4"),
        List.of(RISING, Hose.BORE, AREA),
        List.of(
            new Output("volume", "water that runs back", QuantityKind.VOLUME),
            new Output("level-rise", "rise of the level", QuantityKind.LENGTH)),
        List.of(),
        p -> {
          double volume = volume(Hose.BORE.check(p[1]), RISING.check(p[0]));
          return new double[] {volume, volume / AREA.check(p[2])};
        });
  }

  /**
   * The volume of a full hose.
   *
   * @param bore the inner diameter in m
   * @param length the length in m
   * @return the volume in m3
   */
  public static double volume(double bore, double length) {
    return Math.PI / 4 * bore * bore * length;
  }
}

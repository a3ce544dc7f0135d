package kelter.hydraulics.pump;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.hydraulics.water.StandardGravity;

/**
 * The head at no flow of a radial pump of which nothing is known but the diameter of its impeller
 * and its speed: H0 = ψ u² / (2 g), u being the speed of the rim, with ψ from 0.8 to 1.4, most
 * likely 1.1.
 *
 * <p>It holds for radial impellers in a casing. The band is wide: use it to tell a dead pump from a
 * live one, never to judge a pump.
 *
 * <p>Source: handbook figures for the head coefficient at no flow, from memory.
 */
public final class ImpellerEstimate {

  private static final double LEAST = 0.8; // head coefficient, from memory
  private static final double LIKELY = 1.1; // head coefficient, from memory
  private static final double MOST = 1.4; // head coefficient, from memory

  private static final Parameter DIAMETER =
      Parameter.required("diameter", "diameter of the impeller", QuantityKind.LENGTH, 0.01, 0.5);
  private static final Parameter SPEED =
      Parameter.required("speed", "speed of the impeller", QuantityKind.ROTATIONAL_SPEED, 1, 300);

  private ImpellerEstimate() {}

  /**
   * The estimate by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "impeller-head",
        "Head at no flow of a pump of which only impeller and speed are known",
        "u = pi diameter speed; head = 1.1 u^2/(2 g), low with 0.8, high with 1.4",
        "Radial impeller in a casing; a rough guide, never a limit",
        Source.fromMemory("head coefficient of radial impellers at no flow, 0.8 to 1.4"),
        List.of(DIAMETER, SPEED),
        List.of(
            new Output("head", "likely head at no flow", QuantityKind.HEAD),
            new Output("head-low", "least", QuantityKind.HEAD),
            new Output("head-high", "greatest", QuantityKind.HEAD)),
        List.of(),
        p -> {
          double rim = rimHead(DIAMETER.check(p[0]), SPEED.check(p[1]));
          return new double[] {LIKELY * rim, LEAST * rim, MOST * rim};
        });
  }

  /**
   * The velocity head of the rim.
   *
   * @param diameter the diameter in m
   * @param speed the speed in revolutions per second
   * @return u² / (2 g) in m
   */
  public static double rimHead(double diameter, double speed) {
    double rim = Math.PI * diameter * speed;
    return rim * rim / (2 * StandardGravity.G);
  }
}

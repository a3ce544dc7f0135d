package kelter.hydraulics.spray;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.hydraulics.pipe.TorricelliJet;
import kelter.hydraulics.water.Water;

/**
 * The torque with which driving jets turn a spray arm, and the speed that it reaches: T = ρ Q r (v
 * cos α − ω r) for the driving jets, at radius r and inclined by α from the direction of turning;
 * it speeds up until T is what the bearing takes.
 *
 * <p>It holds for water that enters along the axis, jets into free air, and a pressure in the arm
 * that does not change with its speed. Air drag is left out, so that a real arm is slower.
 *
 * <p>Source: moment of momentum, as in Y. A. Çengel and J. M. Cimbala, Fluid Mechanics, Example 6-9
 * (lawn sprinkler); number from memory.
 *
 * @param effectiveArea the discharge coefficient times the open area of the driving jets, in m2,
 *     above 0
 * @param radius the distance of the driving jets from the axis in m, above 0
 * @param inclination the angle between jet and direction of turning, in rad, 0 to π/2
 * @param friction the torque that the bearing takes, in N m, not negative
 */
public record SprayArm(double effectiveArea, double radius, double inclination, double friction) {

  private static final Parameter PRESSURE =
      Parameter.required("pressure", "pressure in the arm", QuantityKind.GAUGE_PRESSURE, 0, 1e6);
  private static final Parameter AREA =
      Parameter.required(
          "driving-area", "open area of the driving jets", QuantityKind.AREA, 1e-8, 1e-2);
  private static final Parameter RADIUS =
      Parameter.required(
          "radius", "distance of these jets from the axis", QuantityKind.LENGTH, 0.01, 1);
  private static final Parameter LEAN =
      Parameter.required(
          "inclination",
          "angle between jet and direction of turning, as a ratio of a right angle",
          QuantityKind.RATIO,
          0,
          1);
  private static final Parameter CLOSED =
      Parameter.required(
          "closed", "share of the driving jets that are closed", QuantityKind.PERCENT, 0, 0.99);
  private static final Parameter FRICTION =
      Parameter.required("friction", "torque that the bearing takes", QuantityKind.TORQUE, 0, 10);

  private static final double LEAST_OPEN = 1e-3; // ratio, for an uncertain share near all closed

  /**
   * The arm by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "spray-arm",
        "Torque on a spray arm, whether it turns, and how fast",
        "v = sqrt(2 pressure/density); flow = 0.62 driving-area (1 - closed) v; torque = density flow radius v cos(inclination pi/2);"
            + " speed = (v cos - friction/(density flow radius)) / (2 pi radius)",
        "Water along the axis, jets into free air; the air's drag is left out, so a real arm is slower;"
            + " speed 0 where the bearing takes more than the torque",
        Source.fromMemory("Moment of momentum, Cengel and Cimbala, Fluid Mechanics, Example 6-9"),
        List.of(
            PRESSURE,
            AREA,
            RADIUS,
            LEAN.optional("0.5"),
            FRICTION.optional("0 N.m"),
            Water.TEMPERATURE.optional("20 Cel"),
            CLOSED.optional("0 %")),
        List.of(
            new Output("torque", "torque on the arm at rest", QuantityKind.TORQUE),
            new Output("speed", "speed that it reaches", QuantityKind.ROTATIONAL_SPEED),
            new Output("flow", "flow rate of the driving jets", QuantityKind.FLOW)),
        List.of(Caution.HOT_WATER),
        SprayArm::compute);
  }

  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException if one is out of its range
   */
  public SprayArm {
    if (!(effectiveArea > 0 && radius > 0 && friction >= 0)
        || !(inclination >= 0 && inclination <= Math.PI / 2)) {
      throw new IllegalArgumentException(
          "a spray arm has jets of above 0 m2 at above 0 m, inclined from 0 to a right angle, and a"
              + " friction of 0 N m or more");
    }
  }

  private static double[] compute(double[] p) {
    Water water = Water.at(p[5]);
    double head = water.head(Math.max(0, PRESSURE.check(p[0])));
    double lean = Math.max(0, Math.min(1, LEAN.check(p[3]))) * Math.PI / 2;
    double open = Math.max(LEAST_OPEN, 1 - Math.max(0, CLOSED.check(p[6])));
    SprayArm arm =
        new SprayArm(
            TorricelliJet.SHARP_EDGE * AREA.check(p[1]) * open,
            RADIUS.check(p[2]),
            lean,
            Math.max(0, FRICTION.check(p[4])));
    return new double[] {
      arm.torque(head, 0, water.density()),
      arm.speed(head, water.density()),
      TorricelliJet.flow(arm.effectiveArea, head)
    };
  }

  /**
   * The torque of the jets.
   *
   * @param head the head in the arm in m, not negative
   * @param speed the speed of the arm in revolutions per second
   * @param density the density in kg/m3
   * @return the torque in N m
   */
  public double torque(double head, double speed, double density) {
    double flow = TorricelliJet.flow(effectiveArea, head);
    double along = TorricelliJet.flow(1, head) * Math.cos(inclination);
    return density * flow * radius * (along - 2 * Math.PI * speed * radius);
  }

  /**
   * The speed that the arm reaches.
   *
   * @param head the head in the arm in m, not negative
   * @param density the density in kg/m3
   * @return the speed in revolutions per second; 0 if the bearing takes more than the torque at
   *     rest
   */
  public double speed(double head, double density) {
    double atRest = torque(head, 0, density);
    if (atRest <= friction) {
      return 0;
    }
    double flow = TorricelliJet.flow(effectiveArea, head);
    return (atRest - friction) / (density * flow * radius * radius * 2 * Math.PI);
  }
}

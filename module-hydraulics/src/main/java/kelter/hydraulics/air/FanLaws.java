package kelter.hydraulics.air;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityFormat;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;

/**
 * What another speed or density of the air makes of a point of a fan: Q ∝ n, p ∝ ρ n², P ∝ ρ n³.
 *
 * <p>It holds for one fan on one duct at speeds within 40 % of the known one; outside it is
 * refused.
 *
 * <p>Source: fan laws, as in any handbook of fans, from memory.
 */
public final class FanLaws {

  private static final double WITHIN = 0.4; // ratio, from memory

  private static final Parameter FLOW =
      Parameter.required("flow", "flow rate", QuantityKind.FLOW, 0, 1);
  private static final Parameter PRESSURE =
      Parameter.required(
          "pressure", "pressure of the fan", QuantityKind.PRESSURE_DIFFERENCE, 0, 40_000);
  private static final Parameter POWER =
      Parameter.required("power", "power at the shaft", QuantityKind.POWER, 0, 5000);
  private static final Parameter SPEED =
      Parameter.required("speed", "known speed", QuantityKind.ROTATIONAL_SPEED, 1, 1000);
  private static final Parameter NEW_SPEED =
      Parameter.required("new-speed", "speed asked about", QuantityKind.ROTATIONAL_SPEED, 1, 1000);
  private static final Parameter DENSITY_RATIO =
      Parameter.required(
          "density-ratio", "new density of the air by the old", QuantityKind.RATIO, 0.5, 1.5);

  private FanLaws() {}

  /**
   * The laws by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "fan-laws",
        "Flow, pressure and power of a fan at another speed",
        "r = new-speed / speed; new-flow = flow r; new-pressure = pressure density-ratio r^2;"
            + " new-power = power density-ratio r^3",
        "The same fan and duct; new-speed within 40 % of speed, refused outside",
        Source.fromMemory("fan laws, as in any handbook of fans"),
        List.of(
            FLOW.optional("0 L/s"),
            PRESSURE.optional("0 Pa"),
            POWER,
            SPEED,
            NEW_SPEED,
            DENSITY_RATIO.optional("1")),
        List.of(
            new Output("new-flow", "flow rate", QuantityKind.FLOW),
            new Output("new-pressure", "pressure", QuantityKind.PRESSURE_DIFFERENCE),
            new Output("new-power", "power", QuantityKind.POWER)),
        List.of(),
        FanLaws::compute);
  }

  private static double[] compute(double[] p) {
    double ratio = NEW_SPEED.check(p[4]) / SPEED.check(p[3]);
    if (!(Math.abs(ratio - 1) <= WITHIN)) {
      throw new IllegalArgumentException(
          "new-speed is %s times speed; the laws are used from 0.6 to 1.4 times"
              .formatted(QuantityFormat.plain(ratio)));
    }
    double density = DENSITY_RATIO.check(p[5]);
    return new double[] {
      FLOW.check(p[0]) * ratio,
      pressure(PRESSURE.check(p[1]), ratio, density),
      power(POWER.check(p[2]), ratio, density)
    };
  }

  /**
   * Pressure at another speed.
   *
   * @param pressure the pressure at the known speed, Pa
   * @param speeds the new speed by the known one, ratio
   * @param densities the new density by the known one, ratio
   * @return the pressure in Pa
   */
  public static double pressure(double pressure, double speeds, double densities) {
    return pressure * densities * speeds * speeds;
  }

  /**
   * Power at another speed.
   *
   * @param power the power at the known speed, W
   * @param speeds the new speed by the known one, ratio
   * @param densities the new density by the known one, ratio
   * @return the power in W
   */
  public static double power(double power, double speeds, double densities) {
    return power * densities * speeds * speeds * speeds;
  }
}

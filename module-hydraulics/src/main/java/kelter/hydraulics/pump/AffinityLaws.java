package kelter.hydraulics.pump;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityFormat;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.core.source.Standing;

/**
 * What another speed makes of a point of a pump: flow in proportion to the speed, head to its
 * square, power to its cube.
 *
 * <p>It holds for one pump and one liquid at speeds within about a factor of two; the share of
 * friction grows at low speed, so that power falls a little less than the cube. The point moves
 * along the parabola through the origin, not along the curve of the hose.
 *
 * <p>Source: affinity laws, as in Crane TP-410, chapter 7, which was seen as the Python package
 * fluids solves its problems.
 */
public final class AffinityLaws {

  private static final Parameter POWER =
      Parameter.required("power", "power", QuantityKind.POWER, 0, 1e5);
  private static final Parameter HEAD =
      Parameter.required("head", "head", QuantityKind.HEAD, 0, 1000);
  private static final Parameter FLOW =
      Parameter.required("flow", "flow rate", QuantityKind.FLOW, 0, 1);
  private static final Parameter SPEED =
      Parameter.required(
          "speed", "speed of the known point", QuantityKind.ROTATIONAL_SPEED, 1, 1000);
  private static final Parameter NEW_SPEED =
      Parameter.required("new-speed", "speed asked about", QuantityKind.ROTATIONAL_SPEED, 1, 1000);
  private static final double LEAST_RATIO = 0.3; // own choice: beyond this the laws mislead
  private static final double GREATEST_RATIO = 3; // own choice: beyond this the laws mislead

  private AffinityLaws() {}

  /**
   * The laws by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "affinity-laws",
        "Flow, head and power of a pump at another speed (or 50 and 60 Hz)",
        "r = new-speed / speed; new-flow = flow r; new-head = head r^2; new-power = power r^3",
        "The same pump and liquid; new-speed between 0.3 and 3 times speed, refused outside; power is"
            + " then good to about a tenth",
        new Source(
            "Affinity laws; Crane TP-410, chapter 7, problem 7.33, as the Python package fluids"
                + " solves it",
            Standing.SECOND_HAND),
        List.of(FLOW, HEAD, POWER.optional("0 W"), SPEED, NEW_SPEED),
        List.of(
            new Output("new-flow", "flow rate", QuantityKind.FLOW),
            new Output("new-head", "head", QuantityKind.HEAD),
            new Output("new-power", "power", QuantityKind.POWER)),
        List.of(),
        AffinityLaws::compute);
  }

  private static double[] compute(double[] p) {
    double ratio = ratio(SPEED.check(p[3]), NEW_SPEED.check(p[4]));
    return new double[] {
      flow(FLOW.check(p[0]), ratio), head(HEAD.check(p[1]), ratio), power(POWER.check(p[2]), ratio)
    };
  }

  private static double ratio(double speed, double newSpeed) {
    double ratio = newSpeed / speed;
    if (!(ratio >= LEAST_RATIO && ratio <= GREATEST_RATIO)) {
      throw new IllegalArgumentException(
          "new-speed is %s times speed; the laws are used from %s to %s times"
              .formatted(QuantityFormat.plain(ratio), LEAST_RATIO, GREATEST_RATIO));
    }
    return ratio;
  }

  /**
   * Flow rate at another speed.
   *
   * @param flow the flow rate at the known speed, in any unit
   * @param ratio the new speed divided by the known one
   * @return the flow rate in the same unit
   */
  public static double flow(double flow, double ratio) {
    return flow * ratio;
  }

  /**
   * Head at another speed.
   *
   * @param head the head at the known speed, in any unit
   * @param ratio the new speed divided by the known one
   * @return the head in the same unit
   */
  public static double head(double head, double ratio) {
    return head * ratio * ratio;
  }

  /**
   * Power at another speed.
   *
   * @param power the power at the known speed, in any unit
   * @param ratio the new speed divided by the known one
   * @return the power in the same unit
   */
  public static double power(double power, double ratio) {
    return power * ratio * ratio * ratio;
  }
}

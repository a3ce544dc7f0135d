package kelter.hydraulics.pipe;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.core.source.Standing;
import kelter.hydraulics.water.StandardGravity;
import kelter.hydraulics.water.Water;

/**
 * A full round hose with its bends and fittings, and the head that it takes: Darcy-Weisbach for the
 * length, a sum of loss coefficients for the rest, h = (f L / D + ΣK) V² / (2 g).
 *
 * <p>It holds for steady flow of a liquid. A corrugated hose is entered with its least bore and a
 * roughness of about the depth of a corrugation.
 *
 * <p>Source: J. Weisbach 1845 and H. Darcy 1857 as in F. M. White, Fluid Mechanics, equation (6.10)
 * for the friction and (6.78) for the sum with the losses of fittings; equation numbers from
 * memory.
 *
 * @param length the length in m, not negative
 * @param bore the inner diameter in m, above 0
 * @param roughness the absolute roughness in m, not negative
 * @param lossCoefficient the sum of the loss coefficients of bends, fittings and blockages,
 *     dimensionless, referred to the velocity in the bore, not negative
 */
public record Hose(double length, double bore, double roughness, double lossCoefficient) {

  /** What the length may be. */
  public static final Parameter LENGTH =
      Parameter.required("length", "length of the hose", QuantityKind.DISTANCE, 0, 100);

  /** What the bore may be. */
  public static final Parameter BORE =
      Parameter.required("bore", "inner diameter of the hose", QuantityKind.LENGTH, 0.002, 0.3);

  /** What the flow rate may be. */
  public static final Parameter FLOW =
      Parameter.required("flow", "flow rate", QuantityKind.FLOW, 0, 1000.0 / 60_000);

  private static final Parameter ROUGHNESS =
      Parameter.required("roughness", "roughness of the wall", QuantityKind.LENGTH, 0, 0.01);

  /** What the sum of the loss coefficients may be. */
  public static final Parameter LOSS =
      Parameter.required("loss-coefficient", "bends and fittings", QuantityKind.RATIO, 0, 1e5);

  /** The largest roughness for which the friction law was made, as a ratio of the bore. */
  private static final double ROUGHEST = 0.05;

  /** Less than a drop in a year: no flow, in m3/s; below it the friction factor overflows. */
  private static final double NO_FLOW = 1e-15;

  /**
   * The loss of head by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "hose-head-loss",
        "Head that a hose with its fittings takes",
        "v = flow / (pi/4 bore^2); head-loss = (f length/bore + loss-coefficient) v^2 / (2 g); f by"
            + " friction-factor",
        "Full hose, steady flow, water of 0 to 100 Cel; uncertain where the Reynolds number lies"
            + " between 2000 and 4000; roughness above a twentieth of the bore is taken as that",
        new Source(
            "Darcy-Weisbach; Colebrook 1939, doi 10.1680/ijoti.1939.13150, as textbooks and the"
                + " Python package fluids cite it",
            Standing.SECOND_HAND),
        List.of(
            FLOW,
            LENGTH,
            BORE,
            ROUGHNESS.optional("0 mm"),
            LOSS.optional("0"),
            Water.TEMPERATURE.optional("20 Cel")),
        List.of(
            new Output("head-loss", "head that is lost", QuantityKind.HEAD),
            new Output("velocity", "mean velocity", QuantityKind.VELOCITY),
            new Output("reynolds", "Reynolds number", QuantityKind.RATIO),
            new Output("friction-factor", "Darcy friction factor", QuantityKind.RATIO)),
        List.of(),
        Hose::compute);
  }

  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException if one is not finite or outside its range; the message says
   *     which, and the range
   */
  public Hose {
    length = Math.max(0, LENGTH.check(length));
    BORE.check(bore);
    roughness = Math.max(0, ROUGHNESS.check(roughness));
    lossCoefficient = Math.max(0, LOSS.check(lossCoefficient));
  }

  private static double[] compute(double[] p) {
    Hose hose = new Hose(p[1], p[2], p[3], p[4]);
    double flow = Math.max(0, FLOW.check(p[0]));
    double viscosity = Water.at(p[5]).kinematicViscosity();
    double reynolds = hose.reynolds(flow, viscosity);
    double factor = flow < NO_FLOW ? 0 : FrictionFactor.value(reynolds, hose.relativeRoughness());
    return new double[] {hose.headLoss(flow, viscosity), hose.velocity(flow), reynolds, factor};
  }

  /**
   * This hose with something more in the way.
   *
   * @param coefficient the loss coefficient of it, dimensionless, not negative
   * @return the hose with it
   */
  public Hose plus(double coefficient) {
    return new Hose(length, bore, roughness, lossCoefficient + coefficient);
  }

  /**
   * Mean velocity.
   *
   * @param flow the flow rate in m3/s
   * @return the velocity in m/s
   */
  public double velocity(double flow) {
    return flow / (Math.PI / 4 * bore * bore);
  }

  /**
   * Reynolds number.
   *
   * @param flow the flow rate in m3/s, not negative
   * @param kinematicViscosity the kinematic viscosity in m2/s
   * @return the Reynolds number, dimensionless
   */
  public double reynolds(double flow, double kinematicViscosity) {
    return velocity(flow) * bore / kinematicViscosity;
  }

  /**
   * The head that is lost.
   *
   * @param flow the flow rate in m3/s, not negative
   * @param kinematicViscosity the kinematic viscosity in m2/s
   * @return the head in m
   */
  public double headLoss(double flow, double kinematicViscosity) {
    if (flow < NO_FLOW) {
      return 0;
    }
    double velocity = velocity(flow);
    double friction =
        FrictionFactor.value(velocity * bore / kinematicViscosity, relativeRoughness())
            * length
            / bore;
    return (friction + lossCoefficient) * velocity * velocity / (2 * StandardGravity.G);
  }

  private double relativeRoughness() {
    return Math.min(ROUGHEST, roughness / bore);
  }
}

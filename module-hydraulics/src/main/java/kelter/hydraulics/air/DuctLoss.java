package kelter.hydraulics.air;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityFormat;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;

/**
 * The pressure that a round duct takes from a fan: Δp = (f L/D + Σζ) ρ v²/2, with f by Haaland:
 * 1/√f = −1.8 lg((ε/(3.7 D))^1.11 + 6.9/Re).
 *
 * <p>It holds for turbulent flow, Re above 4000; below it is refused. A bend has ζ 0.3 to 1, a flap
 * 1 to 2; a flexible duct takes two to three times what a smooth one takes (from memory).
 *
 * <p>Source: Darcy and Weisbach; S. E. Haaland, J. Fluids Eng. 105 (1983) 89, doi
 * 10.1115/1.3240948, from memory.
 */
public final class DuctLoss {

  private static final double LEAST_REYNOLDS = 4000;
  private static final double VISCOSITY = 1.9e-5; // Pa s, air at 40 °C, from memory

  private static final Parameter FLOW =
      Parameter.required("flow", "flow rate of the air", QuantityKind.FLOW, 5e-3, 1);
  private static final Parameter BORE =
      Parameter.required("bore", "inner diameter of the duct", QuantityKind.LENGTH, 0.02, 0.5);
  private static final Parameter LENGTH =
      Parameter.required("length", "length of the duct", QuantityKind.DISTANCE, 0, 50);
  private static final Parameter LOSSES =
      Parameter.required("loss-coefficient", "sum of bends and flaps", QuantityKind.RATIO, 0, 50);
  private static final Parameter ROUGHNESS =
      Parameter.required("roughness", "roughness of the wall", QuantityKind.LENGTH, 0, 0.01);
  private static final Parameter DENSITY =
      Parameter.required("density", "density of the air", QuantityKind.DENSITY, 0.7, 1.5);

  private DuctLoss() {}

  /**
   * The loss by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "duct-loss",
        "Pressure that an air duct takes",
        "v = flow / (pi/4 bore^2); Re = density v bore / 19 uPa s; 1/sqrt(f) = -1.8"
            + " lg((roughness/(3.7 bore))^1.11 + 6.9/Re); loss = (f length/bore +"
            + " loss-coefficient) density v^2 / 2",
        "Round duct, Re above 4000, refused below; a flexible duct takes two to three times that",
        Source.fromMemory("Darcy and Weisbach; Haaland, J. Fluids Eng. 105 (1983) 89"),
        List.of(
            FLOW,
            BORE,
            LENGTH,
            LOSSES.optional("0"),
            ROUGHNESS.optional("0.15 mm"),
            DENSITY.optional("1.2 kg/m3")),
        List.of(
            new Output("loss", "pressure", QuantityKind.PRESSURE_DIFFERENCE),
            new Output("velocity", "mean velocity", QuantityKind.VELOCITY),
            new Output("friction-factor", "Darcy friction factor", QuantityKind.RATIO)),
        List.of(),
        DuctLoss::compute);
  }

  private static double[] compute(double[] p) {
    double bore = BORE.check(p[1]);
    double density = DENSITY.check(p[5]);
    double velocity = FLOW.check(p[0]) / (Math.PI / 4 * bore * bore);
    double reynolds = density * velocity * bore / VISCOSITY;
    double factor = factor(reynolds, Math.max(0, ROUGHNESS.check(p[4])) / bore);
    double coefficient = factor * LENGTH.check(p[2]) / bore + LOSSES.check(p[3]);
    return new double[] {coefficient * density * velocity * velocity / 2, velocity, factor};
  }

  /**
   * The friction factor by Haaland.
   *
   * @param reynolds the Reynolds number, 4000 or more
   * @param relativeRoughness the roughness by the bore, ratio, not negative
   * @return the Darcy friction factor, dimensionless, within 2 % of Colebrook's
   * @throws IllegalArgumentException if the flow is not turbulent
   */
  public static double factor(double reynolds, double relativeRoughness) {
    if (!(reynolds >= LEAST_REYNOLDS)) {
      throw new IllegalArgumentException(
          "the Reynolds number is %s; the law holds from 4000 on"
              .formatted(QuantityFormat.plain(Math.rint(reynolds))));
    }
    double inside = Math.pow(relativeRoughness / 3.7, 1.11) + 6.9 / reynolds; // Haaland 1983
    double root = -1.8 * Math.log10(inside);
    return 1 / (root * root);
  }
}

package kelter.hydraulics.pipe;

import java.util.List;
import kelter.core.module.Calculation;
import kelter.core.module.Output;
import kelter.core.module.Parameter;
import kelter.core.quantity.QuantityKind;
import kelter.core.source.Source;
import kelter.core.source.Standing;

/**
 * The Darcy friction factor of a full round pipe, whatever the flow in it.
 *
 * <p>Below a Reynolds number of 2000 the flow is laminar (Hagen-Poiseuille, f = 64 / Re), above
 * 4000 turbulent ({@link ColebrookWhite}). In between nobody can say: the factor is then taken on
 * the straight line between the two, so that solvers find no step, and the regime says {@link
 * Regime#TRANSITIONAL}: reckon with a third more or less.
 *
 * <p>Source: L. F. Moody, Friction factors for pipe flow, Trans. ASME 66 (1944) 671, for the
 * limits; other texts put the lower one at 2100 or 2300.
 *
 * @param value the Darcy friction factor, dimensionless
 * @param regime the regime of the flow
 */
public record FrictionFactor(double value, Regime regime) {

  /** How the water flows. */
  public enum Regime {
    /** In layers, Re below 2000. */
    LAMINAR,
    /** Sometimes the one, sometimes the other; the factor is uncertain. */
    TRANSITIONAL,
    /** With eddies, Re above 4000. */
    TURBULENT
  }

  /** The Reynolds number up to which the flow is laminar; Moody 1944. */
  public static final double LAMINAR_LIMIT = 2000;

  /** The Reynolds number from which the flow is turbulent; Moody 1944. */
  public static final double TURBULENT_LIMIT = 4000;

  private static final double HAGEN_POISEUILLE = 64; // f Re of laminar flow in a round pipe

  private static final Parameter REYNOLDS =
      Parameter.required("reynolds", "Reynolds number", QuantityKind.RATIO, 1, 1e8);
  private static final Parameter ROUGHNESS =
      Parameter.required("relative-roughness", "roughness by bore", QuantityKind.RATIO, 0, 0.05);

  /**
   * The friction factor by name.
   *
   * @return the calculation, made on demand
   */
  public static Calculation calculation() {
    return new Calculation(
        "friction-factor",
        "Darcy friction factor of a hose or pipe",
        "64 / reynolds below 2000; 1/sqrt(f) = -2 lg(relative-roughness/3.7 + 2.51/(reynolds"
            + " sqrt(f))) above 4000; on a straight line between",
        "Full round pipe, reynolds up to 1e8, relative-roughness up to 0.05; between 2000 and 4000"
            + " (regime 1) the factor is uncertain by about a third",
        new Source(
            "Colebrook, J. Inst. Civ. Eng. 11 (1939) 133, doi 10.1680/ijoti.1939.13150; limits of"
                + " the regimes after Moody, Trans. ASME 66 (1944) 671; as textbooks and the Python"
                + " package fluids cite them",
            Standing.SECOND_HAND),
        List.of(REYNOLDS, ROUGHNESS.optional("0")),
        List.of(
            new Output("friction-factor", "Darcy friction factor", QuantityKind.RATIO),
            new Output("regime", "0 laminar, 1 transitional, 2 turbulent", QuantityKind.RATIO)),
        List.of(),
        parameters -> {
          FrictionFactor factor =
              of(REYNOLDS.check(parameters[0]), Math.max(0, ROUGHNESS.check(parameters[1])));
          return new double[] {factor.value, factor.regime.ordinal()};
        });
  }

  /**
   * The friction factor with its regime.
   *
   * @param reynolds the Reynolds number, above 0
   * @param relativeRoughness the roughness divided by the bore, as a ratio, not negative
   * @return the factor
   */
  public static FrictionFactor of(double reynolds, double relativeRoughness) {
    return new FrictionFactor(value(reynolds, relativeRoughness), regime(reynolds));
  }

  /**
   * The friction factor alone, for solvers.
   *
   * @param reynolds the Reynolds number, above 0
   * @param relativeRoughness the roughness divided by the bore, as a ratio, not negative
   * @return the Darcy friction factor, dimensionless
   */
  public static double value(double reynolds, double relativeRoughness) {
    if (reynolds <= LAMINAR_LIMIT) {
      return HAGEN_POISEUILLE / reynolds;
    }
    if (reynolds >= TURBULENT_LIMIT) {
      return ColebrookWhite.factor(reynolds, relativeRoughness);
    }
    double laminar = HAGEN_POISEUILLE / LAMINAR_LIMIT;
    double turbulent = ColebrookWhite.factor(TURBULENT_LIMIT, relativeRoughness);
    double share = (reynolds - LAMINAR_LIMIT) / (TURBULENT_LIMIT - LAMINAR_LIMIT);
    return laminar + share * (turbulent - laminar);
  }

  private static Regime regime(double reynolds) {
    if (reynolds <= LAMINAR_LIMIT) {
      return Regime.LAMINAR;
    }
    return reynolds >= TURBULENT_LIMIT ? Regime.TURBULENT : Regime.TRANSITIONAL;
  }
}

package kelter.hydraulics.pipe;

/**
 * The Darcy friction factor of turbulent flow in a full round pipe, smooth or rough: 1/√f = −2 lg(ε
 * / (3.7 D) + 2.51 / (Re √f)).
 *
 * <p>With x = 1/√f the equation says g(x) = x + 2 lg(a + b x) = 0. This g rises and is concave, so
 * Newton's method climbs to the only root from any point to its left and cannot be trapped; from
 * the start used here three steps reach the last digits.
 *
 * <p>It holds for Reynolds numbers above 4000; {@link FrictionFactor} covers the rest.
 *
 * <p>Source: C. F. Colebrook, Turbulent flow in pipes, J. Inst. Civ. Eng. 11 (1939) 133, doi
 * 10.1680/ijoti.1939.13150. The start is the explicit equation of S. E. Haaland, J. Fluids Eng. 105
 * (1983) 89, doi 10.1115/1.3240948.
 */
public final class ColebrookWhite {

  private static final double ROUGH = 3.7; // Colebrook 1939
  private static final double SMOOTH = 2.51; // Colebrook 1939
  private static final double SLOPE = 2 / Math.log(10); // 2 lg y = SLOPE ln y
  private static final double HAALAND_SLOPE = 1.8 / Math.log(10); // Haaland 1983
  private static final double HAALAND_ROUGH = 1.11; // Haaland 1983
  private static final double HAALAND_SMOOTH = 6.9; // Haaland 1983
  private static final int MOST_STEPS = 20;
  private static final double LAST_DIGITS = 4e-16; // relative, two units in the last place

  private ColebrookWhite() {}

  /**
   * The friction factor.
   *
   * @param reynolds the Reynolds number, 4000 to 1e8
   * @param relativeRoughness the roughness divided by the bore, as a ratio, 0 to 0.05
   * @return the Darcy friction factor, dimensionless, to machine precision
   */
  public static double factor(double reynolds, double relativeRoughness) {
    double a = relativeRoughness / ROUGH;
    double b = SMOOTH / reynolds;
    double x = haaland(reynolds, a);
    for (int step = 0; step < MOST_STEPS; step++) {
      double inside = a + b * x;
      double change = (x + SLOPE * Math.log(inside)) / (1 + SLOPE * b / inside);
      x -= change;
      if (Math.abs(change) <= LAST_DIGITS * x) {
        break;
      }
    }
    return 1 / (x * x);
  }

  private static double haaland(double reynolds, double a) {
    double rough = a == 0 ? 0 : Math.pow(a, HAALAND_ROUGH);
    return -HAALAND_SLOPE * Math.log(rough + HAALAND_SMOOTH / reynolds);
  }
}

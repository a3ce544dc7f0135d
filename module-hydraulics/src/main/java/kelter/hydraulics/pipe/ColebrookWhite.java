package kelter.hydraulics.pipe;

/**
 * The Darcy friction factor of turbulent flow in a full round pipe, smooth or rough: 1/√f = −2 lg(ε
 * / (3.7 D) + 2.51 / (Re √f)).
 *
 * <p>With x = 1/√f the equation says g(x) = x + 2 lg(a + b x) = 0. This g rises and is concave, so
 * it has one root and no traps. Two steps of Halley's method, which triples the digits at each,
 * take the start used here from two per cent to the last digits.
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
  private static final int STEPS = 2;

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
    for (int step = 0; step < STEPS; step++) {
      double inside = a + b * x;
      double value = x + SLOPE * Math.log(inside);
      double bend = b / inside;
      double first = 1 + SLOPE * bend;
      double second = -SLOPE * bend * bend;
      x -= 2 * value * first / (2 * first * first - value * second);
    }
    return 1 / (x * x);
  }

  private static double haaland(double reynolds, double a) {
    double rough = a == 0 ? 0 : Math.pow(a, HAALAND_ROUGH);
    return -HAALAND_SLOPE * Math.log(rough + HAALAND_SMOOTH / reynolds);
  }
}

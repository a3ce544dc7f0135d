package kelter.hydraulics.water;

/**
 * Dynamic viscosity of water from density and temperature: µ = µ0(T) µ1(ρ, T), the factor for the
 * neighbourhood of the critical point left out, which differs from 1 only there.
 *
 * <p>The arguments are not checked here; {@link Water} does that for the range of this module.
 *
 * <p>Source: IAPWS R12-08, equations (10) to (12), Tables 1 and 2.
 */
public final class Iapws2008Viscosity {

  private static final double REFERENCE_TEMPERATURE = 647.096; // K, R12-08, section 2.3
  private static final double REFERENCE_DENSITY = 322.0; // kg/m3, R12-08, section 2.3
  private static final double REFERENCE_VISCOSITY = 1e-6; // Pa s, R12-08, section 2.3
  private static final double DILUTE_FACTOR = 100; // R12-08, equation (11)

  /** H0 to H3 of R12-08, Table 1. */
  private static final double[] TABLE_1 = {1.67752, 2.20462, 0.6366564, -0.241605};

  /** The rows i = 0 to 5 with the columns j = 0 to 6 of R12-08, Table 2. */
  private static final double[][] TABLE_2 = {
    {5.20094e-1, 2.22531e-1, -2.81378e-1, 1.61913e-1, -3.25372e-2, 0, 0},
    {8.50895e-2, 9.99115e-1, -9.06851e-1, 2.57399e-1, 0, 0, 0},
    {-1.08374, 1.88797, -7.72479e-1, 0, 0, 0, 0},
    {-2.89555e-1, 1.26613, -4.89837e-1, 0, 6.98452e-2, 0, -4.35673e-3},
    {0, 0, -2.57040e-1, 0, 0, 8.72102e-3, 0},
    {0, 1.20573e-1, 0, 0, 0, 0, -5.93264e-4},
  };

  private Iapws2008Viscosity() {}

  /**
   * Dynamic viscosity.
   *
   * @param density the density in kg/m3
   * @param temperature the temperature in K
   * @return the dynamic viscosity in Pa s
   */
  public static double viscosity(double density, double temperature) {
    double reduced = temperature / REFERENCE_TEMPERATURE;
    return REFERENCE_VISCOSITY
        * dilute(reduced)
        * finite(reduced, density / REFERENCE_DENSITY); // equation (10)
  }

  private static double dilute(double temperature) {
    double sum = 0;
    for (int i = TABLE_1.length - 1; i >= 0; i--) {
      sum = sum / temperature + TABLE_1[i];
    }
    return DILUTE_FACTOR * Math.sqrt(temperature) / sum; // equation (11)
  }

  private static double finite(double temperature, double density) {
    double inner = 1 / temperature - 1;
    double sum = 0;
    double power = 1;
    for (double[] row : TABLE_2) {
      double polynomial = 0;
      for (int j = row.length - 1; j >= 0; j--) {
        polynomial = polynomial * (density - 1) + row[j];
      }
      sum += power * polynomial;
      power *= inner;
    }
    return Math.exp(density * sum); // equation (12)
  }
}

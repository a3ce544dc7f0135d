package kelter.hydraulics.water;

/**
 * Liquid water after the IAPWS Industrial Formulation 1997, region 1: density and specific heat
 * from temperature and absolute pressure.
 *
 * <p>The dimensionless Gibbs energy is γ(π, τ) = Σ n (7.1 − π)^I (τ − 1.222)^J with π = p / 16.53
 * MPa and τ = 1386 K / T; everything else is a derivative of it. It holds from 273.15 K to 623.15 K
 * between the saturation pressure and 100 MPa. The arguments are not checked here; {@link Water}
 * does that for the range of this module.
 *
 * <p>Source: IAPWS R7-97(2012), section 5.1, equation (7), Tables 2 and 3.
 */
public final class Iapws97Region1 {

  /** Specific gas constant of water, in J/(kg K); R7-97(2012), equation (1). */
  static final double GAS_CONSTANT = 461.526;

  private static final double REDUCING_PRESSURE = 16.53e6; // Pa, R7-97(2012), section 5.1
  private static final double REDUCING_TEMPERATURE = 1386; // K, R7-97(2012), section 5.1
  private static final double PI_SHIFT = 7.1; // R7-97(2012), equation (7)
  private static final double TAU_SHIFT = 1.222; // R7-97(2012), equation (7)

  /** Exponents and coefficients I, J, n of R7-97(2012), Table 2. */
  private static final double[][] TABLE_2 = {
    {0, -2, 0.14632971213167},
    {0, -1, -0.84548187169114},
    {0, 0, -0.37563603672040e1},
    {0, 1, 0.33855169168385e1},
    {0, 2, -0.95791963387872},
    {0, 3, 0.15772038513228},
    {0, 4, -0.16616417199501e-1},
    {0, 5, 0.81214629983568e-3},
    {1, -9, 0.28319080123804e-3},
    {1, -7, -0.60706301565874e-3},
    {1, -1, -0.18990068218419e-1},
    {1, 0, -0.32529748770505e-1},
    {1, 1, -0.21841717175414e-1},
    {1, 3, -0.52838357969930e-4},
    {2, -3, -0.47184321073267e-3},
    {2, 0, -0.30001780793026e-3},
    {2, 1, 0.47661393906987e-4},
    {2, 3, -0.44141845330846e-5},
    {2, 17, -0.72694996297594e-15},
    {3, -4, -0.31679644845054e-4},
    {3, 0, -0.28270797985312e-5},
    {3, 6, -0.85205128120103e-9},
    {4, -5, -0.22425281908000e-5},
    {4, -2, -0.65171222895601e-6},
    {4, 10, -0.14341729937924e-12},
    {5, -8, -0.40516996860117e-6},
    {8, -11, -0.12734301741641e-8},
    {8, -6, -0.17424871230634e-9},
    {21, -29, -0.68762131295531e-18},
    {23, -31, 0.14478307828521e-19},
    {29, -38, 0.26335781662795e-22},
    {30, -39, -0.11947622640071e-22},
    {31, -40, 0.18228094581404e-23},
    {32, -41, -0.93537087292458e-25},
  };

  private Iapws97Region1() {}

  /**
   * Density.
   *
   * @param temperature the temperature in K
   * @param pressure the absolute pressure in Pa
   * @return the density in kg/m3
   */
  public static double density(double temperature, double pressure) {
    double pi = pressure / REDUCING_PRESSURE;
    double tau = REDUCING_TEMPERATURE / temperature;
    double slope = 0;
    for (double[] term : TABLE_2) {
      slope -=
          term[2]
              * term[0]
              * Math.pow(PI_SHIFT - pi, term[0] - 1)
              * Math.pow(tau - TAU_SHIFT, term[1]);
    }
    // v = (R T / p) π γ_π, R7-97(2012), Table 3
    return pressure / (GAS_CONSTANT * temperature * pi * slope);
  }

  /**
   * Specific heat at constant pressure.
   *
   * @param temperature the temperature in K
   * @param pressure the absolute pressure in Pa
   * @return the specific heat in J/(kg K)
   */
  public static double heatCapacity(double temperature, double pressure) {
    double pi = pressure / REDUCING_PRESSURE;
    double tau = REDUCING_TEMPERATURE / temperature;
    double curvature = 0;
    for (double[] term : TABLE_2) {
      curvature +=
          term[2]
              * term[1]
              * (term[1] - 1)
              * Math.pow(PI_SHIFT - pi, term[0])
              * Math.pow(tau - TAU_SHIFT, term[1] - 2);
    }
    return -GAS_CONSTANT * tau * tau * curvature; // c_p = -R τ² γ_ττ, R7-97(2012), Table 3
  }
}

package kelter.hydraulics.water;

/**
 * The boiling line of water after the IAPWS Industrial Formulation 1997, region 4: the vapour
 * pressure at a temperature, and the temperature at which water boils under a pressure.
 *
 * <p>With ϑ = T + n9 / (T − n10), A = ϑ² + n1 ϑ + n2, B = n3 ϑ² + n4 ϑ + n5, C = n6 ϑ² + n7 ϑ + n8
 * the pressure is (2 C / (−B + √(B² − 4 A C)))⁴ MPa. It holds from 273.15 K to 647.096 K. The
 * argument is not checked here; {@link Water} does that for the range of this module.
 *
 * <p>Source: IAPWS R7-97(2012), section 8.1, equations (29) and (30), Table 34.
 */
public final class Iapws97Region4 {

  private static final double MEGAPASCAL = 1e6; // Pa

  /**
   * Coefficients n1 to n10 of R7-97(2012), Table 34, behind a zero that makes the indices agree.
   */
  private static final double[] N = {
    0,
    0.11670521452767e4,
    -0.72421316703206e6,
    -0.17073846940092e2,
    0.12020824702470e5,
    -0.32325550322333e7,
    0.14915108613530e2,
    -0.48232657361591e4,
    0.40511340542057e6,
    -0.23855557567849,
    0.65017534844798e3,
  };

  private Iapws97Region4() {}

  /**
   * Vapour pressure.
   *
   * @param temperature the temperature in K
   * @return the absolute pressure at which water boils there, in Pa
   */
  public static double vapourPressure(double temperature) {
    double theta = temperature + N[9] / (temperature - N[10]); // equation (29b)
    double a = theta * theta + N[1] * theta + N[2];
    double b = N[3] * theta * theta + N[4] * theta + N[5];
    double c = N[6] * theta * theta + N[7] * theta + N[8];
    double root = 2 * c / (-b + Math.sqrt(b * b - 4 * a * c)); // equation (30)
    return MEGAPASCAL * root * root * root * root;
  }

  /**
   * Boiling temperature.
   *
   * @param pressure the absolute pressure in Pa, from 611 Pa to 22.064 MPa
   * @return the temperature at which water boils under it, in K
   */
  public static double boilingTemperature(double pressure) {
    double beta = Math.pow(pressure / MEGAPASCAL, 0.25); // equation (29a)
    double e = beta * beta + N[3] * beta + N[6];
    double f = N[1] * beta * beta + N[4] * beta + N[7];
    double g = N[2] * beta * beta + N[5] * beta + N[8];
    double d = 2 * g / (-f - Math.sqrt(f * f - 4 * e * g));
    double sum = N[10] + d;
    return (sum - Math.sqrt(sum * sum - 4 * (N[9] + N[10] * d))) / 2; // equation (31)
  }
}

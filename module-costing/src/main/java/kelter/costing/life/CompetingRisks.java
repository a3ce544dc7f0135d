package kelter.costing.life;

import java.util.ArrayList;
import java.util.List;

/**
 * The life of a machine that ends with the first of several independent failures: {@code S(t) =
 * product of the S of all risks}.
 *
 * <p>Renewing one part sets back that risk and leaves all others where they are, so that a new part
 * in an old machine lengthens the life of the machine less than its own life.
 *
 * <p>The integrals run over the machine's own residual life and are right to about five digits.
 * Source: any text on reliability (series system of independent components); mean and shares by
 * integrating the survival function.
 *
 * @param risks the life of each part by itself, all in the same unit of time, one or more
 * @param ages the age that each part has reached, same unit, not negative
 */
public record CompetingRisks(List<Weibull> risks, List<Double> ages) {

  private static final int POINTS = 400;

  /** The share of machines beyond which the integrals are cut off. */
  private static final double CUT = 1e-12;

  /**
   * Checks that each risk has an age.
   *
   * @throws IllegalArgumentException if there is no risk, the numbers differ, or an age is negative
   *     or not finite
   */
  public CompetingRisks {
    risks = List.copyOf(risks);
    ages = List.copyOf(ages);
    if (risks.isEmpty() || risks.size() != ages.size()) {
      throw new IllegalArgumentException(
          "%d risks and %d ages; one risk or more, each with an age"
              .formatted(risks.size(), ages.size()));
    }
    for (int i = 0; i < risks.size(); i++) {
      risks.get(i).hazardTo(ages.get(i));
    }
  }

  /**
   * The share of such machines that are still alive some time later.
   *
   * @param later the time from now on, in the unit of time, not negative
   * @return a probability from 0 to 1
   * @throws IllegalArgumentException if the time is negative or not finite
   */
  public double survival(double later) {
    double survival = 1;
    for (int i = 0; i < risks.size(); i++) {
      survival *= risks.get(i).survival(ages.get(i), later);
    }
    return survival;
  }

  /**
   * How long such a machine still lasts on average.
   *
   * @return the mean residual life, in the unit of time
   */
  public double meanResidual() {
    double end = end();
    double sum = 0;
    for (int n = 0; n < POINTS; n++) {
      sum += weight(n) * survival(time(n, end));
    }
    return sum * end;
  }

  /**
   * The chance that a given part is the one that ends the machine.
   *
   * @param risk the place of the part
   * @return a probability from 0 to 1
   */
  public double probabilityFirst(int risk) {
    double age = ages.get(risk);
    Weibull own = risks.get(risk);
    double end = end();
    double sum = 0;
    for (int n = 0; n < POINTS; n++) {
      double t = time(n, end);
      double rate = own.shape() / own.scale() * Math.pow((age + t) / own.scale(), own.shape() - 1);
      sum += weight(n) * rate * survival(t);
    }
    return sum * end;
  }

  /**
   * The same after some part has been renewed.
   *
   * @param risk the place of the part
   * @return the risks, that part at an age of zero
   */
  public CompetingRisks renewed(int risk) {
    List<Double> renewed = new ArrayList<>(ages);
    renewed.set(risk, 0.0);
    return new CompetingRisks(risks, renewed);
  }

  /** The time by which the machine has ended but for a share of {@link #CUT}. */
  private double end() {
    double end = Double.POSITIVE_INFINITY;
    for (int i = 0; i < risks.size(); i++) {
      end = Math.min(end, risks.get(i).residualQuantile(ages.get(i), 1 - CUT));
    }
    return end;
  }

  /** Midpoints that crowd towards now: {@code t = end x^3}, where the integrand changes most. */
  private static double time(int n, double end) {
    double x = (n + 0.5) / POINTS;
    return end * x * x * x;
  }

  private static double weight(int n) {
    double x = (n + 0.5) / POINTS;
    return 3 * x * x / POINTS;
  }
}

package kelter.core.diagnosis.likelihood;

/**
 * Two faults together, looked at where each is absent, half there and full: enough to bound the
 * integral of the likelihood over both severities, and to tell evidence.
 */
final class PairLook {

  /** By how many standard deviations a reading may change in a cell, finely and roughly. */
  private static final double STEP = 1.5;

  private static final double WIDE_STEP = 4;
  private static final int ALONE_STEPS = 6;

  private final Readings readings;
  private final PairForecast forecast;
  private final double logBound;

  /**
   * Looks at the pair.
   *
   * @param readings the readings
   * @param forecast the forecasts for the two faults
   */
  PairLook(Readings readings, PairForecast forecast) {
    this.readings = readings;
    this.forecast = forecast;
    this.logBound = readings.logBound(forecast.root());
  }

  /** The severity at which a look is taken, by its number from 0 to 2. */
  static double severity(int number) {
    return number / 2.0;
  }

  /** The forecasts at the nine points, the second severity running fastest. */
  double[][] forecasts() {
    return forecast.root();
  }

  /** The logarithm of a bound of the integral, from nine points. */
  double logBound() {
    return logBound;
  }

  /**
   * Integrates roughly, to some per cent, on forecasts as they are tabled.
   *
   * @param logNegligible the logarithm of what is negligible
   * @return the integral
   */
  PairIntegral rough(double logNegligible) {
    return new PairSubdivision(readings, forecast, logNegligible, WIDE_STEP).integral(this);
  }

  /**
   * Integrates finely, on forecasts that were tabled as finely as it takes.
   *
   * @param logNegligible the logarithm of what is negligible
   * @return the integral
   */
  PairIntegral fine(double logNegligible) {
    forecast.refine();
    return new PairSubdivision(readings, forecast, logNegligible, STEP).integral(this);
  }

  /**
   * The natural logarithm of the likelihood of one reading by itself, over the whole square: by the
   * middles of small cells, each widened by how much the forecast changes in it. For telling
   * evidence only.
   */
  double logAlone(int item) {
    Likelihood likelihood = readings.items().get(item).likelihood();
    double step = 1.0 / ALONE_STEPS;
    double sum = 0;
    for (int i = 0; i < ALONE_STEPS; i++) {
      for (int j = 0; j < ALONE_STEPS; j++) {
        double s = (i + 0.5) * step;
        double t = (j + 0.5) * step;
        double along = rootForecast(s + step / 2, t, item) - rootForecast(s - step / 2, t, item);
        double across = rootForecast(s, t + step / 2, item) - rootForecast(s, t - step / 2, item);
        double spread = rootForecast(s, t, readings.count() + item);
        double blurred = Math.sqrt(spread * spread + (along * along + across * across) / 12);
        sum += likelihood.of(rootForecast(s, t, item), blurred);
      }
    }
    return Math.log(sum * step * step);
  }

  private double rootForecast(double s, double t, int column) {
    return Parabola.at(s, line(t, 0, column), line(t, 3, column), line(t, 6, column));
  }

  private double line(double t, int from, int column) {
    return Parabola.at(
        t, forecasts()[from][column], forecasts()[from + 1][column], forecasts()[from + 2][column]);
  }
}

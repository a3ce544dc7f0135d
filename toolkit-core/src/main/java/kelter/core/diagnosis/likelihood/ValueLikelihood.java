package kelter.core.diagnosis.likelihood;

import kelter.core.vocabulary.Observable;

/**
 * How likely a value is: normal about the forecast.
 *
 * @param observable what was observed
 * @param blunder the chance of a blunder
 * @param unexplained its density where nothing is known of the machine
 * @param reading the value that was read, on the scale of the observable
 * @param u its standard uncertainty, on that scale
 * @param sharedError the part of it that other readings of the instrument share
 */
record ValueLikelihood(
    Observable observable,
    double blunder,
    double unexplained,
    double reading,
    double u,
    double sharedError)
    implements Likelihood {

  private static final double SQRT_TWO_PI = Math.sqrt(2 * Math.PI);

  ValueLikelihood(
      Observable observable, double blunder, double reading, double u, double sharedError) {
    this(observable, blunder, Anything.density(observable, reading), reading, u, sharedError);
  }

  @Override
  public double sound(double value, double spread) {
    return density(reading - value, deviationOf(spread));
  }

  /** The greatest normal density at a distance, for deviations between limits. */
  @Override
  public double soundBound(double least, double most, double narrow, double wide) {
    double distance = Math.max(0, Math.max(least - reading, reading - most));
    return density(distance, Math.min(deviationOf(wide), Math.max(deviationOf(narrow), distance)));
  }

  private static double density(double distance, double sd) {
    double z = distance / sd;
    return Math.exp(-0.5 * z * z) / (sd * SQRT_TWO_PI);
  }

  @Override
  public double deviationOf(double spread) {
    return Math.sqrt(spread * spread + u * u);
  }

  /** The standard deviation without what is shared. */
  double ownError(double spread) {
    return Math.sqrt(spread * spread + u * u - sharedError * sharedError);
  }

  @Override
  public double deviation(double value, double spread) {
    return (reading - value) / Math.hypot(spread, u);
  }

  @Override
  public double[] edges() {
    return new double[] {reading};
  }
}

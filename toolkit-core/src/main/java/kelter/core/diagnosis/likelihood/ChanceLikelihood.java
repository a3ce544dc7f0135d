package kelter.core.diagnosis.likelihood;

import kelter.core.vocabulary.Observable;

/**
 * How likely a yes or a no is, the forecast being the chance of a yes.
 *
 * @param observable what was observed
 * @param blunder the chance of a blunder; 1 where readings contradict each other
 * @param unexplained the chance of the answer where nothing is known of the machine
 * @param yes the answer
 */
record ChanceLikelihood(Observable observable, double blunder, double unexplained, boolean yes)
    implements Likelihood {

  private static final double[] NONE = {};

  /** What counts as one standard deviation of a chance. */
  private static final double TENTH = 0.1;

  ChanceLikelihood(Observable observable, double blunder, boolean yes) {
    this(observable, blunder, unexplained(observable, yes), yes);
  }

  private static double unexplained(Observable observable, boolean yes) {
    if (observable.type() == Observable.Type.YES_NO) {
      return yes ? Anything.yes(observable) : 1 - Anything.yes(observable);
    }
    return 1.0 / Math.max(2, observable.grades().size());
  }

  @Override
  public double sound(double value, double spread) {
    return yes ? value : 1 - value;
  }

  @Override
  public double soundBound(double least, double most, double narrow, double wide) {
    return yes ? most : 1 - least;
  }

  @Override
  public double deviationOf(double spread) {
    return TENTH;
  }

  @Override
  public double[] edges() {
    return NONE;
  }
}

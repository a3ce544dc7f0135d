package kelter.core.diagnosis.likelihood;

import java.util.stream.DoubleStream;
import kelter.core.uncertainty.Normal;
import kelter.core.vocabulary.Observable;

/**
 * How likely it is that something lies between two limits: a word, or a reading beyond what the
 * instrument tells.
 *
 * @param observable what was observed
 * @param blunder the chance of a blunder
 * @param unexplained the share of the words or of the span that lies between the limits
 * @param low the lower limit, on the scale of the observable, or negative infinity
 * @param high the upper limit, on that scale, or infinity
 * @param u the standard uncertainty of the limits, on that scale
 */
record IntervalLikelihood(
    Observable observable, double blunder, double unexplained, double low, double high, double u)
    implements Likelihood {

  /**
   * From this relative uncertainty on, a reading of an observable whose differences count as ratios
   * only says that it is not above its value and twice its uncertainty: the logarithm of what may
   * be nought has no standard deviation.
   */
  static final double NEAR_ZERO = 0.5;

  /** A limit at an end of the span leaves this much beyond it. */
  private static final double LEAST_SHARE = 0.01;

  IntervalLikelihood(Observable observable, double blunder, double low, double high, double u) {
    this(observable, blunder, share(observable, low, high), low, high, u);
  }

  private static double share(Observable observable, double low, double high) {
    if (observable.type() == Observable.Type.GRADE) {
      return 1.0 / observable.grades().size();
    }
    double least =
        observable.proof().isPresent()
            ? LEAST_SHARE * observable.proof().get().otherwise()
            : LEAST_SHARE;
    double within = Anything.share(observable, low, high);
    return Math.max(least, Math.min(1 - LEAST_SHARE, within));
  }

  @Override
  public double sound(double value, double spread) {
    double sd = deviationOf(spread);
    return Normal.cdf((high - value) / sd) - Normal.cdf((low - value) / sd);
  }

  @Override
  public double soundBound(double least, double most, double narrow, double wide) {
    return Math.min(tail(high - least, narrow, wide), tail(most - low, narrow, wide));
  }

  /** The greatest chance to lie below a limit that is this far above the least value. */
  private double tail(double room, double narrow, double wide) {
    double sd = deviationOf(room > 0 ? narrow : wide);
    return Double.isInfinite(room) || sd == 0 ? 1 : Normal.cdf(room / sd);
  }

  @Override
  public double deviationOf(double spread) {
    return Math.sqrt(spread * spread + u * u);
  }

  @Override
  public double[] edges() {
    return DoubleStream.of(low, high).filter(Double::isFinite).toArray();
  }
}

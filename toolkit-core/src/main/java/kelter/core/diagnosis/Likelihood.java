package kelter.core.diagnosis;

import java.util.Optional;
import java.util.stream.DoubleStream;
import kelter.core.job.Evaluation;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import kelter.core.uncertainty.Normal;
import kelter.core.vocabulary.Observable;

/**
 * How likely a reading is for a forecast.
 *
 * <p>Instrument and model spread are independent and normal. With the chance of a blunder the
 * reading says nothing: a value is then equally likely all over its span, a word as likely as any
 * other. A reading beyond what the instrument tells counts by the tail (and an over-range reading
 * as beyond half the upper end of the span).
 */
final class Likelihood {

  private static final double SQRT_TWO_PI = Math.sqrt(2 * Math.PI);

  private final Observable observable;
  private final double blunder;
  private final Kind kind;
  private final double low;
  private final double high;
  private final double u;
  private final double uniform;

  private enum Kind {
    VALUE,
    INTERVAL,
    YES,
    NO
  }

  private Likelihood(
      Observable observable, double blunder, Kind kind, double low, double high, double u) {
    this.observable = observable;
    this.blunder = blunder;
    this.kind = kind;
    this.low = low;
    this.high = high;
    this.u = u;
    this.uniform = uniform(observable, kind);
  }

  static Likelihood of(Job job, Measurement measurement, Observable observable, double blunder) {
    Optional<Evaluation> evaluation = Evaluation.of(job, measurement, observable);
    if (evaluation.isPresent()) {
      return value(
          observable,
          evaluation.get().estimate().value(),
          evaluation.get().estimate().standardUncertainty(),
          blunder);
    }
    Reading reading = measurement.readings().get(0);
    if (measurement.readings().stream().anyMatch(other -> !other.equals(reading))) {
      return new Likelihood(observable, 1, Kind.YES, 0, 0, 0); // they contradict each other
    }
    if (reading instanceof Reading.YesNo yesNo) {
      return new Likelihood(observable, blunder, yesNo.yes() ? Kind.YES : Kind.NO, 0, 0, 0);
    }
    if (reading instanceof Reading.Grade grade) {
      return grade(observable, grade.rank(), blunder);
    }
    return beyond(observable, reading, blunder);
  }

  static Likelihood value(Observable observable, double si, double u, double blunder) {
    if (!observable.logarithmic()) {
      return new Likelihood(observable, blunder, Kind.VALUE, si, si, u);
    }
    double positive = Math.max(si, observable.span().low());
    double log = Math.log(positive);
    return new Likelihood(observable, blunder, Kind.VALUE, log, log, u / positive);
  }

  static Likelihood grade(Observable observable, int rank, double blunder) {
    int n = observable.grades().size();
    double low = rank == 0 ? Double.NEGATIVE_INFINITY : (double) rank / n;
    double high = rank == n - 1 ? Double.POSITIVE_INFINITY : (rank + 1.0) / n;
    return new Likelihood(observable, blunder, Kind.INTERVAL, low, high, 0);
  }

  private static Likelihood beyond(Observable observable, Reading reading, double blunder) {
    double low = Double.NEGATIVE_INFINITY;
    double high = Double.POSITIVE_INFINITY;
    if (reading instanceof Reading.Below below) {
      high = scaled(observable, below.limit().si());
    } else if (reading instanceof Reading.Above above) {
      low = scaled(observable, above.limit().si());
    } else {
      low = scaled(observable, observable.span().high() / 2);
    }
    double limit = Double.isInfinite(low) ? high : low;
    double u = observable.procedure().typical().standardUncertainty(unscaled(observable, limit));
    return new Likelihood(
        observable,
        blunder,
        Kind.INTERVAL,
        low,
        high,
        observable.logarithmic() ? u / unscaled(observable, limit) : u);
  }

  private static double scaled(Observable observable, double si) {
    return observable.logarithmic() ? Math.log(Math.max(si, observable.span().low())) : si;
  }

  private static double unscaled(Observable observable, double scaled) {
    return observable.logarithmic() ? Math.exp(scaled) : scaled;
  }

  /**
   * The natural logarithm of the likelihood.
   *
   * @param value the forecast, as {@link Forecaster#forecast} gives it
   * @param spread its spread
   * @return the logarithm of a density or of a probability, the same for all forecasts of a reading
   */
  double log(double value, double spread) {
    return logScaled(scaled(value), spread);
  }

  /** The same for a value on the scale of the observable, see {@link #scaled(double)}. */
  double logScaled(double value, double spread) {
    double sound =
        switch (kind) {
          case VALUE -> density(value, spread);
          case INTERVAL -> interval(value, spread);
          case YES -> value;
          case NO -> 1 - value;
        };
    return Math.log((1 - blunder) * sound + blunder * uniform);
  }

  /** A forecast on the scale of the observable: its logarithm where differences count as ratios. */
  double scaled(double value) {
    return scaled(observable, value);
  }

  /** The standard deviation of a reading about a forecast; a tenth where it is a chance. */
  double deviationOf(double spread) {
    return kind == Kind.VALUE || kind == Kind.INTERVAL ? Math.sqrt(spread * spread + u * u) : 0.1;
  }

  private double density(double value, double spread) {
    double sd = Math.sqrt(spread * spread + u * u);
    double z = (low - value) / sd;
    return Math.exp(-0.5 * z * z) / (sd * SQRT_TWO_PI);
  }

  private double interval(double value, double spread) {
    double sd = Math.sqrt(spread * spread + u * u);
    return Normal.cdf((high - value) / sd) - Normal.cdf((low - value) / sd);
  }

  /** How far the reading lies from a forecast, in standard deviations; NaN unless it is a value. */
  double deviation(double value, double spread) {
    return kind == Kind.VALUE
        ? (low - scaled(observable, value)) / Math.hypot(spread, u)
        : Double.NaN;
  }

  /**
   * The value or the limits that were read, on the scale of the observable; none of a yes or no.
   */
  double[] edges() {
    return switch (kind) {
      case VALUE -> new double[] {low};
      case INTERVAL -> DoubleStream.of(low, high).filter(Double::isFinite).toArray();
      case YES, NO -> new double[0];
    };
  }

  /** The natural logarithm of the likelihood if nothing is known of the machine. */
  double logUnexplained() {
    return Math.log(uniform);
  }

  private static double uniform(Observable observable, Kind kind) {
    if (observable.type() == Observable.Type.GRADE) {
      return 1.0 / observable.grades().size();
    }
    if (kind != Kind.VALUE) {
      return 0.5;
    }
    double top = scaled(observable, observable.span().high());
    return 1 / (top - scaled(observable, observable.span().low()));
  }
}

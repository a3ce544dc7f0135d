package kelter.core.diagnosis.weighing;

import java.util.HashSet;
import java.util.List;
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
public final class Likelihood {

  /** A limit at an end of the span leaves this much beyond it. */
  private static final double LEAST_SHARE = 0.01;

  /**
   * From this relative uncertainty on, a reading of an observable whose differences count as ratios
   * only says that it is not above its value and twice its uncertainty: the logarithm of what may
   * be nought has no standard deviation.
   */
  private static final double NEAR_ZERO = 0.5;

  private static final double SQRT_TWO_PI = Math.sqrt(2 * Math.PI);

  private final Observable observable;
  private final double blunder;
  private final Kind kind;
  private final double low;
  private final double high;
  private final double u;
  private final double sharedError;
  private final double uniform;

  private enum Kind {
    VALUE,
    INTERVAL,
    YES,
    NO
  }

  private Likelihood(
      Observable observable, double blunder, Kind kind, double low, double high, double u) {
    this(observable, blunder, kind, low, high, u, 0);
  }

  private Likelihood(
      Observable observable,
      double blunder,
      Kind kind,
      double low,
      double high,
      double u,
      double sharedError) {
    this.observable = observable;
    this.blunder = blunder;
    this.kind = kind;
    this.low = low;
    this.high = high;
    this.u = u;
    this.sharedError = sharedError;
    this.uniform = uniform();
  }

  public static Likelihood of(
      Job job, Measurement measurement, Observable observable, double blunder) {
    Optional<Evaluation> evaluation = Evaluation.of(job, measurement, observable);
    if (evaluation.isPresent()) {
      double si = evaluation.get().estimate().value();
      double error = isOfInstrument(measurement) ? evaluation.get().error() : 0;
      return value(observable, si, evaluation.get().estimate().standardUncertainty(), blunder)
          .sharing(error * Math.sqrt(Linked.COMMON_TO_AN_INSTRUMENT), si);
    }
    Reading reading = measurement.readings().get(0);
    if (contradict(measurement.readings())) {
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

  /** Whether one thing was seen to be two; asked only where it was seen more than once. */
  private static boolean contradict(List<Reading> readings) {
    return readings.size() > 1 && new HashSet<>(readings).size() > 1;
  }

  /** Whether the error of a reading is that of a named instrument. */
  public static boolean isOfInstrument(Measurement measurement) {
    return measurement.instrument().isPresent()
        && measurement.readings().get(0) instanceof Reading.Value value
        && value.quantity().standardUncertaintySi() == 0;
  }

  /** The same with a part of its error, in the SI unit, that other readings share. */
  private Likelihood sharing(double error, double si) {
    if (kind != Kind.VALUE) {
      return this;
    }
    double scaled =
        observable.logarithmic() ? error / Math.max(si, observable.span().low()) : error;
    return new Likelihood(observable, blunder, kind, low, high, u, scaled);
  }

  public static Likelihood value(Observable observable, double si, double u, double blunder) {
    if (!observable.logarithmic()) {
      return new Likelihood(observable, blunder, Kind.VALUE, si, si, u);
    }
    double positive = Math.max(si, observable.span().low());
    if (u > NEAR_ZERO * positive) {
      double most = Math.log(Math.max(si, 0) + 2 * u);
      return new Likelihood(
          observable, blunder, Kind.INTERVAL, Double.NEGATIVE_INFINITY, most, NEAR_ZERO);
    }
    double log = Math.log(positive);
    return new Likelihood(observable, blunder, Kind.VALUE, log, log, u / positive);
  }

  public static Likelihood grade(Observable observable, int rank, double blunder) {
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
   * The likelihood.
   *
   * @param value the forecast on the scale of the observable, see {@link #scaled(double)}
   * @param spread its spread
   * @return a density or a probability, the same for all forecasts of a reading
   */
  public double of(double value, double spread) {
    double sound =
        switch (kind) {
          case VALUE -> density(value, spread);
          case INTERVAL -> interval(value, spread);
          case YES -> value;
          case NO -> 1 - value;
        };
    return (1 - blunder) * sound + blunderTerm();
  }

  /** The greatest likelihood for values and spreads between limits. */
  public double bound(double least, double most, double narrow, double wide) {
    double sound =
        switch (kind) {
          case VALUE -> peak(Math.max(0, Math.max(least - low, low - most)), narrow, wide);
          case INTERVAL ->
              Math.min(tail(high - least, narrow, wide), tail(most - low, narrow, wide));
          case YES -> most;
          case NO -> 1 - least;
        };
    return (1 - blunder) * sound + blunderTerm();
  }

  /** The greatest normal density at a distance, for deviations between limits. */
  private double peak(double distance, double narrow, double wide) {
    double least = Math.sqrt(narrow * narrow + u * u);
    double most = Math.sqrt(wide * wide + u * u);
    double sd = Math.min(most, Math.max(least, distance));
    double z = distance / sd;
    return Math.exp(-0.5 * z * z) / (sd * SQRT_TWO_PI);
  }

  /** The greatest chance to lie below a limit that is this far above the least value. */
  private double tail(double room, double narrow, double wide) {
    double spread = room > 0 ? narrow : wide;
    double sd = Math.sqrt(spread * spread + u * u);
    return Double.isInfinite(room) || sd == 0 ? 1 : Normal.cdf(room / sd);
  }

  /** What a blunder adds to the likelihood of any forecast. */
  public double blunderTerm() {
    return blunder * uniform;
  }

  /** The chance that the reading is wrong altogether. */
  public double blunder() {
    return blunder;
  }

  boolean isChance() {
    return kind == Kind.YES || kind == Kind.NO;
  }

  public boolean isValue() {
    return kind == Kind.VALUE;
  }

  /** The value that was read, on the scale of the observable. */
  public double reading() {
    return low;
  }

  /** The part of the instrument's error that its other readings share. */
  public double sharedError() {
    return sharedError;
  }

  /** The standard deviation without what is shared. */
  public double ownError(double spread) {
    return Math.sqrt(spread * spread + u * u - sharedError * sharedError);
  }

  /** A forecast on the scale of the observable: its logarithm where differences count as ratios. */
  public double scaled(double value) {
    return scaled(observable, value);
  }

  /** The standard deviation of a reading about a forecast; a tenth where it is a chance. */
  public double deviationOf(double spread) {
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

  /**
   * How far the reading lies from a forecast on the scale of the observable, in standard
   * deviations; NaN unless it is a value.
   */
  public double deviation(double value, double spread) {
    return kind == Kind.VALUE ? (low - value) / Math.hypot(spread, u) : Double.NaN;
  }

  /**
   * The value or the limits that were read, on the scale of the observable; none of a yes or no.
   */
  public double[] edges() {
    return switch (kind) {
      case VALUE -> new double[] {low};
      case INTERVAL -> DoubleStream.of(low, high).filter(Double::isFinite).toArray();
      case YES, NO -> new double[0];
    };
  }

  /** The natural logarithm of the likelihood if nothing is known of the machine. */
  public double logUnexplained() {
    return Math.log(uniform);
  }

  /**
   * The likelihood where nothing is known: a word is as likely as any other, a value equally likely
   * all over its span, and a reading beyond a limit as likely as the share of the span beyond it.
   */
  private double uniform() {
    if (observable.type() == Observable.Type.GRADE) {
      return 1.0 / observable.grades().size();
    }
    if (kind == Kind.YES || kind == Kind.NO) {
      return 0.5;
    }
    double bottom = scaled(observable, observable.span().low());
    double top = scaled(observable, observable.span().high());
    if (kind == Kind.VALUE) {
      return 1 / (top - bottom);
    }
    double share = (Math.min(high, top) - Math.max(low, bottom)) / (top - bottom);
    return Math.max(LEAST_SHARE, Math.min(1 - LEAST_SHARE, share));
  }
}

package kelter.core.diagnosis.likelihood;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import kelter.core.job.Evaluation;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import kelter.core.vocabulary.Observable;

/**
 * How likely a reading is for a forecast.
 *
 * <p>Instrument and model spread are independent and normal. With the chance of a blunder the
 * reading says nothing ({@link Anything}): a value is then equally likely all over its span, a word
 * as likely as any other, and what proves a fault is as rare as its observable says. A reading
 * beyond what the instrument tells counts by the tail (and an over-range reading as beyond half the
 * upper end of the span).
 */
public sealed interface Likelihood permits ValueLikelihood, IntervalLikelihood, ChanceLikelihood {

  /** The likelihood of what was measured in a job. */
  static Likelihood of(Job job, Measurement measurement, Observable observable, double blunder) {
    Optional<Evaluation> evaluation = Evaluation.of(job, measurement, observable);
    if (evaluation.isPresent()) {
      double error = isOfInstrument(measurement) ? evaluation.get().error() : 0;
      return value(
          observable,
          evaluation.get().estimate().value(),
          evaluation.get().estimate().standardUncertainty(),
          error * Math.sqrt(Linked.COMMON_TO_AN_INSTRUMENT),
          blunder);
    }
    Reading reading = measurement.readings().get(0);
    if (contradict(measurement.readings())) {
      return new ChanceLikelihood(observable, 1, true);
    }
    if (reading instanceof Reading.YesNo yesNo) {
      return new ChanceLikelihood(observable, blunder, yesNo.yes());
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
  static boolean isOfInstrument(Measurement measurement) {
    return measurement.instrument().isPresent()
        && measurement.readings().get(0) instanceof Reading.Value value
        && value.quantity().standardUncertaintySi() == 0;
  }

  /** The likelihood of a value and its standard uncertainty, in the SI unit. */
  static Likelihood value(Observable observable, double si, double u, double blunder) {
    return value(observable, si, u, 0, blunder);
  }

  private static Likelihood value(
      Observable observable, double si, double u, double sharedError, double blunder) {
    if (!observable.logarithmic()) {
      return new ValueLikelihood(observable, blunder, si, u, sharedError);
    }
    double positive = Math.max(si, observable.span().low());
    if (u > IntervalLikelihood.NEAR_ZERO * positive) {
      double most = Math.log(Math.max(si, 0) + 2 * u);
      return new IntervalLikelihood(
          observable, blunder, Double.NEGATIVE_INFINITY, most, IntervalLikelihood.NEAR_ZERO);
    }
    return new ValueLikelihood(
        observable, blunder, Math.log(positive), u / positive, sharedError / positive);
  }

  /** The likelihood of a word on the ordered scale of an observable. */
  static Likelihood grade(Observable observable, int rank, double blunder) {
    int n = observable.grades().size();
    double low = rank == 0 ? Double.NEGATIVE_INFINITY : (double) rank / n;
    double high = rank == n - 1 ? Double.POSITIVE_INFINITY : (rank + 1.0) / n;
    return new IntervalLikelihood(observable, blunder, low, high, 0);
  }

  private static Likelihood beyond(Observable observable, Reading reading, double blunder) {
    boolean below = Double.isFinite(reading.most());
    double least =
        Double.isFinite(reading.least()) ? reading.least() : observable.span().high() / 2;
    double limit = scaled(observable, below ? reading.most() : least);
    double si = observable.logarithmic() ? Math.exp(limit) : limit;
    double u = observable.procedure().typical().standardUncertainty(si);
    return new IntervalLikelihood(
        observable,
        blunder,
        below ? Double.NEGATIVE_INFINITY : limit,
        below ? limit : Double.POSITIVE_INFINITY,
        observable.logarithmic() ? u / si : u);
  }

  private static double scaled(Observable observable, double si) {
    return observable.logarithmic() ? Math.log(Math.max(si, observable.span().low())) : si;
  }

  /** What was observed. */
  Observable observable();

  /** The chance that the reading is wrong altogether. */
  double blunder();

  /**
   * The likelihood of a reading that is no blunder.
   *
   * @param value the forecast on the scale of the observable, see {@link #scaled(double)}
   * @param spread its spread
   */
  double sound(double value, double spread);

  /** The greatest likelihood of a reading that is no blunder, see {@link #bound}. */
  double soundBound(double least, double most, double narrow, double wide);

  /** The likelihood where nothing is known of the machine. */
  double unexplained();

  /** The standard deviation of a reading about a forecast; a tenth where it is a chance. */
  double deviationOf(double spread);

  /**
   * The value or the limits that were read, on the scale of the observable; none of a yes or no.
   */
  double[] edges();

  /**
   * How far the reading lies from a forecast on the scale of the observable, in standard
   * deviations; NaN unless it is a value.
   */
  default double deviation(double value, double spread) {
    return Double.NaN;
  }

  /**
   * The likelihood.
   *
   * @param value the forecast on the scale of the observable, see {@link #scaled(double)}
   * @param spread its spread
   * @return a density or a probability, the same for all forecasts of a reading
   */
  default double of(double value, double spread) {
    return (1 - blunder()) * sound(value, spread) + blunderTerm();
  }

  /** The greatest likelihood for values and spreads between limits. */
  default double bound(double least, double most, double narrow, double wide) {
    return (1 - blunder()) * soundBound(least, most, narrow, wide) + blunderTerm();
  }

  /** What a blunder adds to the likelihood of any forecast. */
  default double blunderTerm() {
    return blunder() * unexplained();
  }

  /** Whether a value was read. */
  default boolean isValue() {
    return this instanceof ValueLikelihood;
  }

  /** A forecast on the scale of the observable: its logarithm where differences count as ratios. */
  default double scaled(double value) {
    return scaled(observable(), value);
  }
}

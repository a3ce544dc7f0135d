package kelter.core.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.uncertainty.ErrorModel;
import kelter.core.uncertainty.ErrorTerm;
import kelter.core.uncertainty.Estimate;
import kelter.core.uncertainty.InputQuantity;
import kelter.core.uncertainty.Shape;
import kelter.core.vocabulary.Observable;

/**
 * What the values of a measurement are worth, after JCGM 100:2008.
 *
 * <p>The estimate is the mean of the readings. Its standard uncertainty combines the limits of
 * error (stated with the reading, else of the instrument, else of an ordinary instrument as the
 * procedure says), the rounding of what was written down (rectangular, F.2.2.1), and the scatter of
 * repeated readings (type A, 4.2.3).
 *
 * @param quantity the estimate with its errors one by one, in the coherent SI unit
 * @param assumed whether the accuracy of an ordinary instrument had to be assumed
 * @param error the standard uncertainty by the limits of error alone, in the coherent SI unit
 * @param rounding that by the rounding of what was written down
 * @param scatter that of the mean by the scatter of repeated readings, 0 for a single reading
 * @param readings how many readings there are
 */
public record Evaluation(
    InputQuantity quantity,
    boolean assumed,
    double error,
    double rounding,
    double scatter,
    int readings) {

  /**
   * Evaluates a measurement.
   *
   * @param job the job, for its instruments
   * @param measurement a measurement of the job
   * @param observable what was measured
   * @return the evaluation, or empty if one of the readings is not a value, or so large that it
   *     cannot be evaluated
   */
  public static Optional<Evaluation> of(Job job, Measurement measurement, Observable observable) {
    List<Reading.Value> values = new ArrayList<>();
    for (Reading reading : measurement.readings()) {
      if (!(reading instanceof Reading.Value value)) {
        return Optional.empty();
      }
      values.add(value);
    }
    Reading.Value first = values.get(0);
    double mean = mean(values);
    Optional<Instrument.Function> own = function(job, measurement, observable, mean);
    ErrorModel model = own.isPresent() ? own.get().error() : observable.procedure().typical();
    double stated = first.quantity().standardUncertaintySi();
    double error = stated > 0 ? stated : model.standardUncertainty(mean);
    double rounding = first.resolution() * first.quantity().unit().factor() / Math.sqrt(12);
    double scatter = scatterOfMean(values, mean);
    if (!Double.isFinite(mean + error + rounding + scatter)) {
      return Optional.empty();
    }
    List<ErrorTerm> terms =
        new ArrayList<>(
            stated > 0 ? List.of(ErrorTerm.stated(first.shape(), stated)) : model.terms(mean));
    terms.add(ErrorTerm.stated(Shape.RECTANGULAR, rounding));
    if (scatter > 0) {
      terms.add(ErrorTerm.scatter(scatter, values.size()));
    }
    boolean assumed = stated == 0 && own.isEmpty();
    return Optional.of(
        new Evaluation(
            new InputQuantity(mean, terms), assumed, error, rounding, scatter, values.size()));
  }

  /**
   * The estimate with all errors combined.
   *
   * @return the estimate in the coherent SI unit
   */
  public Estimate estimate() {
    return quantity.estimate();
  }

  private static double mean(List<Reading.Value> values) {
    double sum = 0;
    for (Reading.Value value : values) {
      sum += value.quantity().si();
    }
    return sum / values.size();
  }

  /** The function of its instrument with which a value was measured, if the job names one. */
  private static Optional<Instrument.Function> function(
      Job job, Measurement measurement, Observable observable, double value) {
    Optional<String> id = measurement.instrument();
    Optional<Instrument> instrument = id.isPresent() ? job.instrument(id.get()) : Optional.empty();
    return instrument.isPresent()
        ? instrument.get().range(observable.kind(), value)
        : Optional.empty();
  }

  /** Experimental standard deviation of the mean, JCGM 100:2008, equation (5). */
  private static double scatterOfMean(List<Reading.Value> values, double mean) {
    int n = values.size();
    if (n < 2) {
      return 0;
    }
    double squares = 0;
    for (Reading.Value value : values) {
      squares += Math.pow(value.quantity().si() - mean, 2);
    }
    return Math.sqrt(squares / (n - 1) / n);
  }
}

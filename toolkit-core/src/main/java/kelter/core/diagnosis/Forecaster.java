package kelter.core.diagnosis;

/**
 * Answers a fixed list of questions for any state of the faults of a model. It is for the engine
 * and the test kit; a module neither makes nor asks one.
 *
 * <p>A forecaster must be free of memory, safe for several threads, and quick: it is asked some
 * thousand times for one diagnosis.
 */
@FunctionalInterface
public interface Forecaster {

  /**
   * Forecasts every question for one state.
   *
   * <p>For a figure, the value is in the coherent SI unit and the spread is the standard deviation
   * of what machines in this very state show, the instrument left out: in the same unit, or, for a
   * logarithmic observable, of the natural logarithm. For a yes or no, the value is the probability
   * of a yes, strictly between 0 and 1, and the spread is not used. For a grade of n words, the
   * value lies on a scale from 0 (the least word) to 1 (the most), on which each word holds an
   * equal part, and the spread is on that scale. Every figure must be finite, and the spread of a
   * figure or grade greater than zero.
   *
   * @param severity the severity of each fault, in the order of the model's faults, from 0 (not
   *     there) to 1, and behind them the deviate of each shared quantity of the model, in standard
   *     deviations; not to be changed
   * @param value takes the value for each question, in their order
   * @param spread takes the spread for each question, in their order
   */
  void forecast(double[] severity, double[] value, double[] spread);
}

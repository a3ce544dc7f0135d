package kelter.electrical.fault;

import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Forecaster;
import kelter.core.diagnosis.Question;
import kelter.core.vocabulary.Span;

/**
 * A fault model that makes a healthy state for each forecast, lets the faults that are there change
 * it, and reads every answer from it. A forecast beyond the span of its observable, such as the
 * resistance of an open circuit, is told as the end of the span.
 *
 * @param id its id within the appliance
 * @param healthy makes a state in which nothing is wrong
 * @param known the faults, in the order in which they change the state
 * @param questions what it can forecast, under the usual conditions
 * @param answers makes ready to answer a question
 * @param <S> the state
 */
public record StateModel<S>(
    String id,
    Supplier<S> healthy,
    List<Known<S>> known,
    List<Question> questions,
    Function<Question, Answer<S>> answers)
    implements FaultModel {

  /**
   * What a fault changes.
   *
   * @param <S> the state
   */
  @FunctionalInterface
  public interface Change<S> {

    /**
     * Changes the state.
     *
     * @param state the state
     * @param severity how bad the fault is, above 0, at most 1
     */
    void apply(S state, double severity);
  }

  /**
   * A fault and what it changes.
   *
   * @param fault the fault
   * @param change what it changes
   * @param <S> the state
   */
  public record Known<S>(Fault fault, Change<S> change) {}

  /**
   * Answers one question for any state.
   *
   * @param <S> the state
   */
  @FunctionalInterface
  public interface Answer<S> {

    /**
     * The forecast.
     *
     * @param state the state
     * @return value and spread
     */
    Forecast of(S state);
  }

  /**
   * A forecast.
   *
   * @param value the value in the coherent SI unit, or the probability of a yes
   * @param spread the spread; not used for a yes or no
   */
  public record Forecast(double value, double spread) {

    /**
     * A yes or no.
     *
     * @param probability the probability of a yes
     * @return the forecast
     */
    public static Forecast chance(double probability) {
      return new Forecast(probability, 1);
    }
  }

  /** Copies the lists. */
  public StateModel {
    known = List.copyOf(known);
    questions = List.copyOf(questions);
  }

  @Override
  public List<Fault> faults() {
    return known.stream().map(Known::fault).toList();
  }

  @Override
  public Forecaster forecaster(List<Question> asked) {
    List<Answer<S>> ready = asked.stream().map(answers).toList();
    return (severity, value, spread) -> {
      S state = healthy.get();
      for (int i = 0; i < known.size(); i++) {
        if (severity[i] > 0) {
          known.get(i).change().apply(state, severity[i]);
        }
      }
      for (int i = 0; i < ready.size(); i++) {
        Forecast forecast = ready.get(i).of(state);
        Span span = asked.get(i).observable().span();
        value[i] = Math.min(span.high(), Math.max(span.low(), forecast.value()));
        spread[i] = forecast.spread();
      }
    };
  }
}

package kelter.electrical.fault;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import kelter.core.diagnosis.Fault;
import kelter.core.diagnosis.FaultModel;
import kelter.core.diagnosis.Forecaster;
import kelter.core.diagnosis.Question;
import kelter.core.diagnosis.SharedQuantity;
import kelter.core.diagnosis.Wear;
import kelter.core.vocabulary.Span;

/**
 * A fault model that makes a healthy state for each forecast, lets what is not as usual and then
 * the faults that are there change it, and reads every answer from it. A forecast beyond the span
 * of its observable, such as the resistance of an open circuit, is told as the end of the span.
 *
 * @param id its id within the appliance
 * @param part makes states in which nothing is wrong, and reads the answers from states
 * @param moving what nobody has measured and what it changes
 * @param known the faults, in the order in which they change the state
 * @param questions what it can forecast, under the usual conditions
 * @param <S> the state
 */
public record StateModel<S>(
    String id, Part<S> part, List<Moving<S>> moving, List<Known<S>> known, List<Question> questions)
    implements FaultModel {

  /**
   * What a model speaks of.
   *
   * @param <S> the state
   */
  public interface Part<S> {

    /**
     * Makes a state.
     *
     * @return a new state in which nothing is wrong
     */
    S healthy();

    /**
     * Makes ready to answer a question.
     *
     * @param question the question
     * @return what answers it
     */
    Answer<S> answer(Question question);
  }

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
   * @param apart the ids of the faults of the same component that cannot be there beside it; one of
   *     two such faults need name the other
   * @param <S> the state
   */
  public record Known<S>(Fault fault, Change<S> change, Set<String> apart) {

    /** Copies the set. */
    public Known {
      apart = Set.copyOf(apart);
    }

    /**
     * A fault that bears any other beside it.
     *
     * @param fault the fault
     * @param change what it changes
     */
    public Known(Fault fault, Change<S> change) {
      this(fault, change, Set.of());
    }

    /**
     * The same fault, never together with some others.
     *
     * @param faults the ids of faults of the same component
     * @return the fault
     */
    public Known<S> apartFrom(String... faults) {
      return new Known<>(fault, change, Set.of(faults));
    }

    /**
     * The same fault, growing likelier with age.
     *
     * @param wear how
     * @return the fault
     */
    public Known<S> wearing(Wear wear) {
      return new Known<>(fault.wearing(wear), change, apart);
    }

    private boolean isApartFrom(Known<S> other) {
      return apart.contains(other.fault.id()) && fault.component().equals(other.fault.component());
    }
  }

  /**
   * Something that nobody has measured and what it changes.
   *
   * @param quantity what
   * @param change what it changes, by its deviate, which may be negative, in place of a severity;
   *     it must change nothing at 0
   * @param <S> the state
   */
  public record Moving<S>(SharedQuantity quantity, Change<S> change) {}

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
    moving = List.copyOf(moving);
    known = List.copyOf(known);
    questions = List.copyOf(questions);
  }

  @Override
  public List<Fault> faults() {
    List<Fault> faults = new ArrayList<>();
    for (Known<S> one : known) {
      faults.add(one.fault());
    }
    return List.copyOf(faults);
  }

  @Override
  public List<SharedQuantity> shared() {
    List<SharedQuantity> shared = new ArrayList<>();
    for (Moving<S> one : moving) {
      shared.add(one.quantity());
    }
    return List.copyOf(shared);
  }

  @Override
  public boolean mayMeet(int one, int other) {
    return !known.get(one).isApartFrom(known.get(other))
        && !known.get(other).isApartFrom(known.get(one));
  }

  @Override
  public Forecaster forecaster(List<Question> asked) {
    List<Answer<S>> ready = new ArrayList<>();
    double[] low = new double[asked.size()];
    double[] high = new double[asked.size()];
    for (int i = 0; i < asked.size(); i++) {
      Span span = asked.get(i).observable().span();
      ready.add(part.answer(asked.get(i)));
      low[i] = span.low();
      high[i] = span.high();
    }
    return (severity, value, spread) -> {
      S state = state(severity);
      for (int i = 0; i < low.length; i++) {
        Forecast forecast = ready.get(i).of(state);
        value[i] = Math.min(high[i], Math.max(low[i], forecast.value()));
        spread[i] = forecast.spread();
      }
    };
  }

  private S state(double[] severity) {
    S state = part.healthy();
    for (int j = 0; j < moving.size(); j++) {
      double deviate = severity[known.size() + j];
      if (deviate != 0) {
        moving.get(j).change().apply(state, deviate);
      }
    }
    for (int i = 0; i < known.size(); i++) {
      if (severity[i] > 0) {
        known.get(i).change().apply(state, severity[i]);
      }
    }
    return state;
  }
}

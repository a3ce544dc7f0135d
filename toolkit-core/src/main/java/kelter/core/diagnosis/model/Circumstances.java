package kelter.core.diagnosis.model;

import kelter.core.job.Conditions;

/**
 * The physics of a section under the conditions of a reading. It knows no fault, only figures.
 *
 * @param <S> what is solved
 */
@FunctionalInterface
public interface Circumstances<S> {

  /**
   * Makes ready for conditions, once for all states.
   *
   * @param conditions what is stated with a reading; where something is not stated, the usual holds
   * @return what solves states under them
   * @throws IllegalArgumentException if a condition is impossible; the message says which and what
   *     is allowed
   */
  Solver<S> under(Conditions conditions);

  /**
   * Solves states under fixed conditions. It must have no memory and be safe for several threads.
   *
   * @param <S> what is solved
   */
  @FunctionalInterface
  interface Solver<S> {

    /**
     * Solves a state.
     *
     * @param state the figures as faults have left them
     * @return what the observables of the section are read from
     */
    S in(State state);
  }
}

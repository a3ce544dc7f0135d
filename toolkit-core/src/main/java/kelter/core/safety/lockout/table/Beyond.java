package kelter.core.safety.lockout.table;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import kelter.core.vocabulary.Ids;

/**
 * A reading that makes a row of the table hold.
 *
 * @param observable the word for what was read
 * @param of the kinds of components on which it counts; empty for all
 * @param finding whether it holds where a check says that the reading does not conform
 * @param above the most that it may be, in the coherent SI unit
 * @param aboveShare the most that it may be, as a ratio of the nominal voltage
 * @param belowShare the least that it may be in nets of 230 V, as a ratio of the nominal voltage
 * @param times the condition by which the reading is multiplied before it is held against {@code
 *     above}; empty for none
 * @param grade the first word of a scale that makes the row hold; empty for none
 * @param yes whether a yes makes the row hold
 */
public record Beyond(
    String observable,
    Set<String> of,
    boolean finding,
    OptionalDouble above,
    OptionalDouble aboveShare,
    OptionalDouble belowShare,
    Optional<String> times,
    Optional<String> grade,
    boolean yes) {

  /**
   * Checks that it can hold.
   *
   * @throws IllegalArgumentException if nothing is said of when it holds
   */
  public Beyond {
    Ids.require(observable);
    of = Set.copyOf(of);
    boolean limit = above.isPresent() || aboveShare.isPresent() || belowShare.isPresent();
    if (!(finding || limit || grade.isPresent() || yes)) {
      throw new IllegalArgumentException(observable + ": say from which reading on it holds");
    }
  }

  /**
   * Whether it is about a kind of component.
   *
   * @param kind the kind of component
   * @return true if it is
   */
  public boolean isOf(String kind) {
    return of.isEmpty() || of.contains(kind);
  }
}

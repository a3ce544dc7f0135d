package kelter.core.safety.lockout.table;

import java.util.Set;
import kelter.core.vocabulary.Ids;

/**
 * A reading that has to conform on every component of some kinds.
 *
 * @param observable the word for what is read
 * @param of the kinds of components; empty for the components whose readings made the row hold
 * @param warm whether it counts only on a warm part: at {@link #WARM} or above. What can state no
 *     temperature is read beside such parts
 */
public record Retest(String observable, Set<String> of, boolean warm) {

  /** A part from here on is warm, K: 40 °C; common practice, no source. */
  public static final double WARM = 313.15;

  /** Checks the words. */
  public Retest {
    Ids.require(observable);
    of = Set.copyOf(of);
  }
}

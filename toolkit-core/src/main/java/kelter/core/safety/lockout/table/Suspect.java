package kelter.core.safety.lockout.table;

import java.util.List;
import java.util.Set;

/**
 * Faults that do what a row of the table does as soon as they are likely.
 *
 * @param faults ids of faults without their components
 * @param of the kinds of components of which they count; empty for all
 * @param notOf kinds of components of which they do not count
 * @param tests words for what is looked at or read dead to rule such a fault out; the first that
 *     the component has; empty if only another trade can
 */
public record Suspect(List<String> faults, Set<String> of, Set<String> notOf, List<String> tests) {

  /** From this chance on a fault is suspected; common practice, no source. */
  public static final double LIKELY = 0.2;

  public Suspect {
    faults = List.copyOf(faults);
    of = Set.copyOf(of);
    notOf = Set.copyOf(notOf);
    tests = List.copyOf(tests);
  }

  /**
   * Whether it is about a fault.
   *
   * @param fault the id of the fault without its component
   * @param kind the kind of component
   * @return true if it is
   */
  public boolean names(String fault, String kind) {
    return faults.contains(fault) && (of.isEmpty() || of.contains(kind)) && !notOf.contains(kind);
  }
}

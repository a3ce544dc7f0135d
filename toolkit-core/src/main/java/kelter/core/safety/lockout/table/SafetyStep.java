package kelter.core.safety.lockout.table;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import kelter.core.vocabulary.Ids;

/**
 * A step of isolating a machine, or of putting it back under power.
 *
 * @param id the word for it
 * @param title what it is about in a few words, for an owner; may be empty
 * @param order its place among the steps, 1 and above; steps of one place keep their order
 * @param kinds names under {@code lock-out} of which the kind of machine has one, or else the step
 *     is not for it; empty for all
 * @param parts kinds of components of which the machine has one, or else the step is not for it;
 *     empty for all
 * @param rows ids of rows of which one holds, or else the step is not for it; empty for all
 * @param fixed whether only machines without a plug are meant, or only those with one
 * @param read what is read at this step and held against its limit; none where one only looks
 * @param rulesOut ids of symptoms that the machine does not have where the step holds
 * @param powered whether the machine is under power meanwhile
 * @param text what to do, for a person; words in braces stand for figures of the machine
 */
public record SafetyStep(
    String id,
    String title,
    int order,
    Set<String> kinds,
    Set<String> parts,
    Set<String> rows,
    Optional<Boolean> fixed,
    List<Retest> read,
    List<String> rulesOut,
    boolean powered,
    MarketText text) {

  /**
   * Checks words and place.
   *
   * @throws IllegalArgumentException if the place is below 1
   */
  public SafetyStep {
    Ids.require(id);
    Objects.requireNonNull(title);
    kinds = Set.copyOf(kinds);
    parts = Set.copyOf(parts);
    rows = Set.copyOf(rows);
    read = List.copyOf(read);
    rulesOut = List.copyOf(rulesOut);
    Objects.requireNonNull(text);
    if (order < 1) {
      throw new IllegalArgumentException(id + ": steps are counted from 1");
    }
  }
}

package kelter.core.safety.lockout.table;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import kelter.core.safety.Caution;
import kelter.core.safety.LockState;
import kelter.core.safety.Taken;
import kelter.core.source.Source;
import kelter.core.vocabulary.Ids;

/**
 * One row of the lock-out table.
 *
 * @param id the word for it, unique in the table
 * @param number the number of the row on the page that it comes from, 1 to 24; several rows share
 *     one where a finding can do more than one thing; 0 for what a module adds
 * @param when when it holds
 * @param state the state in which it puts the machine
 * @param allowed how something may still be found out
 * @param only the kinds of components that it is about; empty for the whole machine
 * @param heldBut where present, dead tests inside wait for its release, but for those on these
 *     kinds of components
 * @param first what has to be done first, for a person
 * @param until what releases it
 * @param supervised the one powered step that it has
 * @param suspect the faults that do the same while they are only likely
 * @param text at most twenty words
 * @param source where it comes from
 */
public record LockOutRow(
    String id,
    int number,
    When when,
    LockState state,
    Set<Taken> allowed,
    Set<String> only,
    Optional<Set<String>> heldBut,
    String first,
    Until until,
    Optional<Supervised> supervised,
    Optional<Suspect> suspect,
    MarketText text,
    Source source) {

  /** So long is the text at most, in words. */
  public static final int MOST_WORDS = 20;

  /** So many rows the page has. */
  private static final int ROWS = 24;

  /**
   * A powered step that a row allows once, after readings that conform.
   *
   * @param after what has to conform before
   * @param text what to do, for a person
   */
  public record Supervised(List<Retest> after, MarketText text) {

    public Supervised {
      after = List.copyOf(after);
      Objects.requireNonNull(text);
    }
  }

  /**
   * Checks words and numbers.
   *
   * @throws IllegalArgumentException if the number is none of the page, the text is too long, or a
   *     state allows more than the one that is milder
   */
  public LockOutRow {
    Ids.require(id);
    Objects.requireNonNull(when);
    allowed = Set.copyOf(allowed);
    only = Set.copyOf(only);
    heldBut = heldBut.map(Set::copyOf);
    Objects.requireNonNull(until);
    Objects.requireNonNull(source);
    if (number < 0 || number > ROWS) {
      throw new IllegalArgumentException(id + ": rows have the numbers 0 to " + ROWS);
    }
    if (allowed.contains(Taken.LIVE)) {
      throw new IllegalArgumentException(id + ": no row allows live tests");
    }
    if (text.usual().isBlank()
        || isLong(text.usual())
        || text.own().values().stream().anyMatch(LockOutRow::isLong)) {
      throw new IllegalArgumentException(id + ": a text has 1 to " + MOST_WORDS + " words");
    }
  }

  private static boolean isLong(String text) {
    return text.strip().split("\\s+").length > MOST_WORDS;
  }

  /**
   * What to mind while it holds.
   *
   * @param itsText its text, with the figures of the machine
   * @param holdsByItself whether more than the kind of machine makes it hold
   * @return its caution, of the same id for every machine
   */
  public Caution caution(String itsText, boolean holdsByItself) {
    return new Caution(
        "lock-out-" + id, Caution.Signal.DANGER, itsText, only.isEmpty() && holdsByItself);
  }
}

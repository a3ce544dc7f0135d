package kelter.core.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.check.Finding;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.workshop.AsLeft;

/**
 * How likely the machine is mended.
 *
 * @param chance that what made the complaint is gone, from 0 to 1
 * @param still what may still be wrong, the likeliest first; less than 2 % is left out
 * @param read whether anything was read or seen after the work; if not, the chance rests on what
 *     such work cures, and on what was held before it
 * @param outside what was read after the work and does not conform
 * @param better whether a reading has come nearer to its limits without being within them
 */
public record Cure(
    double chance, List<Still> still, boolean read, List<Finding> outside, boolean better) {

  private static final double WORTH_TELLING = 0.02;

  /** The severity by which something is said to be less bad; own choice. */
  private static final double LESS = 0.1;

  private static final double LIKELIER_NOT = 0.5;

  /** The level of a decision, as of a diagnosis. */
  private static final double DECIDED = 0.95;

  /**
   * A fault that may still be there.
   *
   * @param fault the fault, how likely and how bad it is now
   * @param before the same as found
   */
  public record Still(
      Diagnosis.FaultProbability fault, Optional<Diagnosis.FaultProbability> before) {

    /**
     * Whether it is there, and less bad than before.
     *
     * @return true if it is likelier there than not, with a severity that is lower by a tenth
     */
    public boolean isLessBad() {
      return fault.probability() > LIKELIER_NOT
          && before.isPresent()
          && before.get().probability() > LIKELIER_NOT
          && fault.severity().mean() < before.get().severity().mean() - LESS;
    }
  }

  /** Copies the lists. */
  public Cure {
    still = List.copyOf(still);
    outside = List.copyOf(outside);
  }

  static Cure of(Diagnosis found, AsLeft left, boolean read, boolean better) {
    List<Still> still = new ArrayList<>();
    for (Diagnosis.FaultProbability each : left.diagnosis().faults()) {
      if (each.probability() >= WORTH_TELLING) {
        still.add(new Still(each, found.fault(each.fault().key())));
      }
    }
    return new Cure(left.cured(), still, read, left.outside(), better);
  }

  /**
   * Whether the chance says how the machine stands. That the cause of the complaint is gone says
   * nothing of a machine with another fault.
   *
   * @return false where what was read after the work speaks of such a fault
   */
  public boolean tellsChance() {
    return outside.isEmpty() || chance < LIKELIER_NOT;
  }

  /** What the cure comes to. */
  public enum Outcome {
    /** No work is recorded. */
    NOTHING_DONE("nothing-done", "Nothing is recorded as done"),
    /** Nothing was read or seen after the work. */
    NOTHING_READ(
        "nothing-read", "Nothing was read or seen after the work: whether it worked is open"),
    /** What made the complaint is gone, at the level of a decision. */
    MENDED("mended", "Mended, by what was read after the work"),
    /** It is likelier there than not, and less bad. */
    BETTER("better-not-mended", "Better than before, and not mended"),
    /** It is likelier there than not. */
    NOT_MENDED("not-mended", "Not mended"),
    /** What was read after the work is not within its limits. */
    OUTSIDE_LIMITS(
        "outside-limits", "Not mended: what was read after the work is not within its limits"),
    /** It is likelier gone than not, which is not decided, and less bad. */
    BETTER_UNDECIDED(
        "better-undecided", "Better than before, and not decided whether it is mended"),
    /** It is likelier gone than not, which is not decided. */
    UNDECIDED("undecided", "Not decided whether it worked");

    private final String id;
    private final String words;

    Outcome(String id, String words) {
      this.id = id;
      this.words = words;
    }

    /**
     * The word for programs; it stays the same when the words change.
     *
     * @return lower-case letters and hyphens
     */
    public String id() {
      return id;
    }

    /**
     * The words that a person sees.
     *
     * @return a sentence without its full stop
     */
    public String words() {
      return words;
    }

    /**
     * Whether it speaks against a cure.
     *
     * @return true where the fault is likelier there than not, or a reading is outside its limits
     */
    public boolean isNotMended() {
      return this == BETTER || this == NOT_MENDED || this == OUTSIDE_LIMITS;
    }
  }

  /**
   * What the cure comes to.
   *
   * @return any but {@link Outcome#NOTHING_DONE}
   */
  public Outcome outcome() {
    if (!read) {
      return Outcome.NOTHING_READ;
    }
    boolean less = better || still.stream().anyMatch(Still::isLessBad);
    if (!outside.isEmpty()) {
      return less ? Outcome.BETTER : Outcome.OUTSIDE_LIMITS;
    }
    if (chance >= DECIDED) {
      return Outcome.MENDED;
    }
    if (chance < LIKELIER_NOT) {
      return less ? Outcome.BETTER : Outcome.NOT_MENDED;
    }
    return less ? Outcome.BETTER_UNDECIDED : Outcome.UNDECIDED;
  }

  /**
   * The cure in words.
   *
   * @return a sentence without its full stop
   */
  public String words() {
    return outcome().words();
  }
}

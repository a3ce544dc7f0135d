package kelter.core.safety.lockout;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import kelter.core.check.Finding;
import kelter.core.check.Limits;
import kelter.core.check.Verdict;
import kelter.core.job.work.TestDone;
import kelter.core.vocabulary.Observable;

/**
 * A test on the way back to power.
 *
 * @param step the id of the step of the lock-out table; several tests may belong to one
 * @param title what it is about in a few words, for an owner
 * @param text what to do, with the limit
 * @param powered whether the machine is under power meanwhile
 * @param component the id of the component that is read; empty for what is only looked at
 * @param observable the word for what is read; empty for what is only looked at
 * @param awaited what is read, on a component or where the machine is connected; empty for what is
 *     only looked at
 * @param limits what a figure may be that is written to it, in the coherent SI unit, where the
 *     machine has no component on which it is read
 * @param against the last reading after the work against its limit and source, if there is one
 * @param result how it came out
 * @param note what somebody saw, or why it does not apply; may be empty
 */
public record ReleaseTest(
    String step,
    String title,
    String text,
    boolean powered,
    String component,
    String observable,
    Optional<Observable> awaited,
    Optional<Limits> limits,
    Optional<Finding> against,
    Result result,
    String note) {

  /** Stands in the note of a step for one of its figures that was seen to be met and not told. */
  static final String MET_ALONE = "met";

  /** How a test came out. Only a named person says more. */
  public enum Result {
    /** The reading that was entered meets the limit, or somebody wrote so. */
    MET("met"),
    /** It does not. */
    NOT_MET("not met"),
    /** The reading is too close to the limit to say. */
    UNDECIDED("undecided"),
    /** Nothing was entered. */
    NOT_MEASURED("not measured"),
    /** The machine has nothing to test there. */
    NOT_APPLICABLE("does not apply");

    private final String words;

    Result(String words) {
      this.words = words;
    }

    /**
     * The words that a person sees.
     *
     * @return lower-case words
     */
    public String words() {
      return words;
    }

    /**
     * The word in a result.
     *
     * @return lower-case letters and hyphens
     */
    public String id() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static Result of(Verdict verdict) {
      return switch (verdict) {
        case CONFORMS -> MET;
        case DOES_NOT_CONFORM -> NOT_MET;
        case UNDECIDED -> UNDECIDED;
        case NOT_MEASURED -> NOT_MEASURED;
      };
    }

    /** What several findings of one reading come to: the worst of them. */
    static Result of(List<Finding> findings) {
      Result worst = findings.isEmpty() ? NOT_MEASURED : MET;
      for (Finding finding : findings) {
        Result each = of(finding.verdict());
        worst = WORST.indexOf(each) < WORST.indexOf(worst) ? each : worst;
      }
      return worst;
    }

    private static final List<Result> WORST = List.of(NOT_MET, UNDECIDED, NOT_MEASURED, MET);
  }

  /**
   * Whether the test still has to be made, or made again.
   *
   * @return false if it was met or does not apply
   */
  public boolean isOpen() {
    return result != Result.MET && result != Result.NOT_APPLICABLE;
  }

  /**
   * Whether a figure is read.
   *
   * @return false if it is only looked at
   */
  public boolean isRead() {
    return !observable.isEmpty();
  }

  /**
   * A figure that was read where the machine is connected, held against its limit.
   *
   * @param told what was typed
   * @return how it came out; empty where that is no figure of this test, or none that decides it
   */
  public Optional<TestDone> figure(String told) {
    return NotedFigure.of(told, awaited, limits)
        .filter(figure -> figure.result() != Result.UNDECIDED)
        .map(
            figure ->
                new TestDone(
                    step,
                    figure.result() == Result.MET,
                    isNext() ? note + "; " + told.strip() : told.strip()));
  }

  /**
   * That one of several figures of a step is met, without the figure. It says nothing of the
   * others.
   *
   * @param seen what somebody saw; may be empty
   * @return how it came out
   */
  public TestDone metAlone(String seen) {
    String own = MET_ALONE + (seen.isEmpty() ? "" : " (" + seen.replace(';', ',') + ")");
    return new TestDone(step, true, isNext() ? note + "; " + own : own + ";");
  }

  /** Whether a figure was written to the step that is read before this one. */
  private boolean isNext() {
    return result == Result.NOT_MEASURED && !note.isBlank();
  }

  /** The same with a note. */
  ReleaseTest noting(String words) {
    return new ReleaseTest(
        step, title, text, powered, component, observable, awaited, limits, against, result, words);
  }
}

package kelter.core.file.log;

import java.util.ArrayList;
import java.util.List;
import kelter.core.file.log.LogFormat.Guess;
import kelter.core.file.log.LogFormat.Sureness;
import kelter.core.problem.Problem;

/** What comes up while the times of a log are searched for: guesses, and what must be said. */
final class ClockNotes {

  static final String FLAG = "--time";

  private static final String ABOUT = "times";

  private final List<Guess> guesses = new ArrayList<>();
  private final List<Problem> open = new ArrayList<>();
  private boolean settled = true;

  void guess(String taken, Sureness sureness, String why) {
    guesses.add(new Guess(ABOUT, taken, sureness, why));
  }

  void take(LogDates dates) {
    guesses.add(dates.guess());
    dates.open().ifPresent(open::add);
    settled &= dates.settled();
  }

  void open(String where, String what, String remedy) {
    open.add(new Problem(where, what, remedy));
  }

  /** Notes what must be said unless a further row tells it. */
  void openYet(String where, String what, String remedy) {
    settled = false;
    open(where, what, remedy);
  }

  boolean usesWhatWasSaid() {
    return guesses.stream()
        .anyMatch(each -> each.about().equals(ABOUT) && each.sureness() == Sureness.SAID);
  }

  boolean guessesDates() {
    return guesses.stream()
        .anyMatch(each -> !each.about().equals(ABOUT) && each.sureness() == Sureness.EVEN);
  }

  List<Guess> guesses() {
    return guesses;
  }

  List<Problem> open() {
    return open;
  }

  boolean settled() {
    return settled;
  }
}

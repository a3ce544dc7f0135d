package kelter.core.safety.lockout;

import java.util.List;
import java.util.Set;
import kelter.core.vocabulary.OwnersWords;
import kelter.core.vocabulary.Phrase;

/**
 * Whether words stand in what somebody said. A word of denial up to three words before them in the
 * same clause turns them round; a word of doubt in the clause leaves them standing and asks.
 */
enum Said {
  /** Not at all. */
  NOT,
  /** Denied: it has to be asked once. */
  DENIED,
  /** Doubtful: it counts, and has to be asked once. */
  UNSURE,
  /** Plainly. */
  PLAINLY;

  private static final Set<String> DENIALS =
      Set.of("no", "not", "never", "without", "nobody", "nothing", "none", "neither", "nor");
  private static final Set<String> DOUBTS =
      Set.of("maybe", "perhaps", "might", "may", "unsure", "possibly", "think", "seems", "believe");

  /** So many words a denial stands before what it denies at most. */
  private static final int BEFORE = 3;

  /**
   * The strongest way in which one of some phrases stands in what somebody said.
   *
   * @param clauses the words of each clause, as {@link OwnersWords#clauses} tells them
   */
  static Said of(List<Phrase> phrases, List<List<String>> clauses) {
    Said strongest = NOT;
    for (List<String> clause : clauses) {
      for (Phrase phrase : phrases) {
        strongest = stronger(strongest, in(clause, phrase));
      }
    }
    return strongest;
  }

  private static Said stronger(Said one, Said other) {
    return one.compareTo(other) >= 0 ? one : other;
  }

  private static Said in(List<String> clause, Phrase phrase) {
    Said strongest = NOT;
    for (int start = 0; start < clause.size(); start++) {
      if (phrase.startsAt(clause, start)) {
        strongest = stronger(strongest, at(clause, start));
      }
    }
    return strongest;
  }

  private static Said at(List<String> clause, int start) {
    for (String before : clause.subList(Math.max(0, start - BEFORE), start)) {
      if (DENIALS.contains(before)) {
        return DENIED;
      }
    }
    return clause.stream().anyMatch(DOUBTS::contains) ? UNSURE : PLAINLY;
  }
}

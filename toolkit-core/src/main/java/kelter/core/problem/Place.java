package kelter.core.problem;

import java.util.Collection;
import java.util.Optional;
import kelter.core.quantity.Nearest;

/**
 * Where something stands that is held against rules: in a file, or in a record that a program made.
 * A rule notes mistakes here and need not know which of the two it is.
 */
public interface Place {

  /**
   * Notes a mistake here.
   *
   * @param mistake the sort of mistake
   * @param what what is wrong
   * @param remedy what would be right, may be empty
   */
  void problem(Mistake mistake, String what, String remedy);

  /**
   * Notes that what is here cannot be used.
   *
   * @param what what is wrong
   * @param remedy what would be right, may be empty
   */
  default void problem(String what, String remedy) {
    problem(Mistake.UNUSABLE, what, remedy);
  }

  /**
   * Notes here that something was refused.
   *
   * @param refused the refusal
   * @param <T> what was to be made
   * @return nothing
   */
  default <T> Optional<T> refuse(IllegalArgumentException refused) {
    problem(refused.getMessage(), "");
    return Optional.empty();
  }

  /**
   * Whether a word is one of those that are known here; if not, that is noted.
   *
   * @param word the word
   * @param known the words that are known
   * @param what what they are, for the message
   * @return true if it is
   */
  default boolean isKnown(String word, Collection<String> known, String what) {
    if (known.contains(word)) {
      return true;
    }
    problem(
        Mistake.UNKNOWN_WORD,
        "'" + word + "' is not a known " + what,
        Nearest.of(word, known).map(Place::suggestion).orElse("known: " + listed(known)));
    return false;
  }

  /**
   * Whether something may have a name: one that is known, or one of somebody's own.
   *
   * @param name the name
   * @param known the names that are known
   * @return true if it may
   */
  static boolean mayBeNamed(String name, Collection<String> known) {
    return name.startsWith("x-") || known.contains(name);
  }

  /**
   * Notes that what stands here may not have its name.
   *
   * @param name the name
   * @param known the names that are known
   */
  default void unknownName(String name, Collection<String> known) {
    problem(
        Mistake.UNKNOWN_NAME,
        "is not known",
        Nearest.of(name, known)
            .map(Place::suggestion)
            .orElse("known here: " + listed(known) + "; your own start with x-"));
  }

  private static String suggestion(String near) {
    return "did you mean '" + near + "'?";
  }

  private static String listed(Collection<String> known) {
    return known.isEmpty() ? "none" : String.join(", ", known);
  }
}

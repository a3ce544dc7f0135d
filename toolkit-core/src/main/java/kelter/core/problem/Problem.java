package kelter.core.problem;

import java.util.Objects;
import kelter.core.text.HarmlessText;

/**
 * One mistake in what a person gave.
 *
 * @param mistake the sort of mistake
 * @param where where it is: a JSON pointer, a parameter, a row and column; may be empty
 * @param what what is wrong there, with what was found
 * @param remedy what would be right, may be empty
 * @param place the place of that in a file, if it is known
 */
public record Problem(Mistake mistake, String where, String what, String remedy, FilePlace place) {

  private static final int LONGEST = 300;

  /** Checks that nothing is missing and cuts overlong text. */
  public Problem {
    Objects.requireNonNull(mistake);
    where = shortened(where);
    what = shortened(what);
    Objects.requireNonNull(remedy);
    Objects.requireNonNull(place);
  }

  /**
   * A mistake of which no line of a file is known.
   *
   * @param mistake the sort of mistake
   * @param where where it is: a JSON pointer, a parameter, a row and column
   * @param what what is wrong there, with what was found
   * @param remedy what would be right, may be empty
   */
  public Problem(Mistake mistake, String where, String what, String remedy) {
    this(mistake, where, what, remedy, FilePlace.UNKNOWN);
  }

  /**
   * Something that cannot be used, of which no line of a file is known.
   *
   * @param where where it is: a JSON pointer, a parameter, a row and column
   * @param what what is wrong there, with what was found
   * @param remedy what would be right, may be empty
   */
  public Problem(String where, String what, String remedy) {
    this(Mistake.UNUSABLE, where, what, remedy);
  }

  /**
   * The same mistake with its place in a file.
   *
   * @param found the place
   * @return the mistake
   */
  public Problem at(FilePlace found) {
    return new Problem(mistake, where, what, remedy, found);
  }

  private static String shortened(String text) {
    return text.length() <= LONGEST ? text : text.substring(0, LONGEST) + "...";
  }

  /**
   * The one line that a person sees, made harmless to look at.
   *
   * @return where, what and what would be right
   */
  public String display() {
    String tail = remedy.isEmpty() ? "" : "; " + remedy;
    String found = place.words();
    String at = found.isEmpty() || where.isEmpty() ? found + where : found + " (" + where + ")";
    return HarmlessText.of(at.isEmpty() ? what + tail : at + ": " + what + tail);
  }
}

package kelter.core.problem;

import java.util.Objects;
import kelter.core.text.HarmlessText;

/**
 * One mistake in what a person gave.
 *
 * @param where where it is: a JSON pointer, a parameter, a row and column
 * @param what what is wrong there, with what was found
 * @param remedy what would be right, may be empty
 * @param place the file, line and column of that, in words; empty if it is not known
 */
public record Problem(String where, String what, String remedy, String place) {

  private static final int LONGEST = 300;

  /** Checks that nothing is missing and cuts overlong text. */
  public Problem {
    where = shortened(where);
    what = shortened(what);
    Objects.requireNonNull(remedy);
    place = shortened(place);
  }

  /**
   * A mistake of which no line of a file is known.
   *
   * @param where where it is: a JSON pointer, a parameter, a row and column
   * @param what what is wrong there, with what was found
   * @param remedy what would be right, may be empty
   */
  public Problem(String where, String what, String remedy) {
    this(where, what, remedy, "");
  }

  /**
   * The same mistake with the line of the file that it stands in.
   *
   * @param found the file, line and column, in words
   * @return the mistake
   */
  public Problem at(String found) {
    return new Problem(where, what, remedy, found);
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
    String at = place.isEmpty() || where.isEmpty() ? place + where : place + " (" + where + ")";
    return HarmlessText.of(at.isEmpty() ? what + tail : at + ": " + what + tail);
  }
}

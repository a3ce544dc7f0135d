package kelter.core.problem;

import java.util.Objects;

/**
 * One mistake in what a person gave.
 *
 * @param where where it is: a JSON pointer, a parameter, a row and column
 * @param what what is wrong there, with what was found
 * @param remedy what would be right, may be empty
 */
public record Problem(String where, String what, String remedy) {

  private static final int LONGEST = 300;

  /** Checks that nothing is missing and cuts overlong text. */
  public Problem {
    where = shortened(where);
    what = shortened(what);
    Objects.requireNonNull(remedy);
  }

  private static String shortened(String text) {
    return text.length() <= LONGEST ? text : text.substring(0, LONGEST) + "...";
  }

  /**
   * The one line that a person sees, control characters shown as escapes.
   *
   * @return where, what and what would be right
   */
  public String display() {
    String tail = remedy.isEmpty() ? "" : "; " + remedy;
    return printable(where.isEmpty() ? what + tail : where + ": " + what + tail);
  }

  private static String printable(String text) {
    StringBuilder line = new StringBuilder(text.length());
    text.codePoints()
        .forEach(
            c -> {
              if (Character.isISOControl(c) || Character.getType(c) == Character.FORMAT) {
                line.append(String.format("\\u%04x", c));
              } else {
                line.appendCodePoint(c);
              }
            });
    return line.toString();
  }
}

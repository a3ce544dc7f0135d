package kelter.core.vocabulary;

import java.util.regex.Pattern;

/** The form of ids in job files and on the command line. */
public final class Ids {

  private static final Pattern ID = Pattern.compile("[a-z0-9][a-z0-9-]{0,59}");

  private Ids() {}

  /**
   * Checks an id.
   *
   * @param id lower-case letters, digits and hyphens, at most 60
   * @return the id
   * @throws IllegalArgumentException if it has another form
   */
  public static String require(String id) {
    if (!isId(id)) {
      throw new IllegalArgumentException(
          "'" + id + "' is not an id: lower-case letters, digits and hyphens, at most 60");
    }
    return id;
  }

  /**
   * Whether a text is an id.
   *
   * @param text any text
   * @return true if it has the form of an id
   */
  public static boolean isId(String text) {
    return ID.matcher(text).matches();
  }
}

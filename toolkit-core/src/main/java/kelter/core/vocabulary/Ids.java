package kelter.core.vocabulary;

/** The form of ids in job files and on the command line. */
public final class Ids {

  private static final int LONGEST = 60;

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
    if (text.isEmpty() || text.length() > LONGEST || text.charAt(0) == '-') {
      return false;
    }
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if ((c < 'a' || c > 'z') && (c < '0' || c > '9') && c != '-') {
        return false;
      }
    }
    return true;
  }
}

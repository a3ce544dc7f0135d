package kelter.core.problem;

/**
 * A place in a file.
 *
 * @param file the file, as it was named; empty if no place is known
 * @param line the line, from 1; 0 if only the file is known
 * @param column the column, from 1; 0 if only the line or the file is known
 */
public record FilePlace(String file, long line, long column) {

  /** No place is known. */
  public static final FilePlace UNKNOWN = new FilePlace("", 0, 0);

  private static final int LONGEST = 250;

  /** Checks that nothing is missing and cuts an overlong name. */
  public FilePlace {
    file = file.length() <= LONGEST ? file : file.substring(0, LONGEST) + "...";
  }

  /**
   * Whether nothing is known of it.
   *
   * @return true if there is not even a file
   */
  public boolean isUnknown() {
    return file.isEmpty();
  }

  /**
   * The place in words.
   *
   * @return the file, with line and column if they are known
   */
  public String words() {
    String inLine = line == 0 ? file : file + ", line " + line;
    return column == 0 ? inLine : inLine + ", column " + column;
  }
}

package kelter.core.report;

/**
 * What a fault is called before its owner. Words of the trade that mean something else to him are
 * told by what current does: a heater that is open lets none through, and one that leaks to earth
 * drips no water.
 */
final class OwnersTitle {

  private static final String OPEN = " open";
  private static final String LEAKS = "leaks to ";

  private OwnersTitle() {}

  /**
   * The title for the owner.
   *
   * @param title the title of a fault, for a technician
   * @return the same where its words are plain
   */
  static String of(String title) {
    boolean interrupted = title.endsWith(OPEN) && !title.matches(".*\\b(stuck|not) open");
    return (interrupted
            ? title.substring(0, title.length() - OPEN.length())
                + ": no current gets through, though it should"
            : title)
        .replace(LEAKS, "lets current escape to ");
  }
}

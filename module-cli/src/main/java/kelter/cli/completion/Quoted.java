package kelter.cli.completion;

/** Words that a shell takes as they are, whatever stands in them. */
final class Quoted {

  private Quoted() {}

  /** A word for bash and zsh. */
  static String forBourne(String word) {
    return "'" + oneLine(word).replace("'", "'\\''") + "'";
  }

  /** A word for fish. */
  static String forFish(String word) {
    return "'" + oneLine(word).replace("\\", "\\\\").replace("'", "\\'") + "'";
  }

  private static String oneLine(String word) {
    return word.replaceAll("\\p{Cntrl}", " ");
  }
}

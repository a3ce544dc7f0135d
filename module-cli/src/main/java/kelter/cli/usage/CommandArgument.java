package kelter.cli.usage;

/**
 * An argument of a command: a word that is no option, told apart by its place.
 *
 * @param name what stands for it in the help
 * @param kind what it may be
 * @param optional whether it may be left out; none that must stand there may follow
 * @param repeatable whether several may stand there; none may follow
 * @param text what it is
 */
public record CommandArgument(
    String name, ValueKind kind, boolean optional, boolean repeatable, String text) {

  /**
   * An argument that must stand there once.
   *
   * @param name what stands for it in the help
   * @param kind what it may be
   * @param text what it is
   * @return the argument
   */
  public static CommandArgument one(String name, ValueKind kind, String text) {
    return new CommandArgument(name, kind, false, false, text);
  }

  /**
   * Any number of texts, or none.
   *
   * @param name what stands for each in the help
   * @param text what they are
   * @return the argument
   */
  public static CommandArgument any(String name, String text) {
    return new CommandArgument(name, ValueKind.TEXT, true, true, text);
  }
}

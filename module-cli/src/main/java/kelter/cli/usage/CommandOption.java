package kelter.cli.usage;

import java.util.List;

/**
 * An option of a command.
 *
 * @param letter its short name with one hyphen, such as {@code -n}; empty if it has none
 * @param name its name with two hyphens, such as {@code --jobs}
 * @param kind what its value may be
 * @param label what stands for its value in the help; empty if it takes none
 * @param repeatable whether it may be given several times
 * @param text what it does; empty if the help is silent about it
 */
public record CommandOption(
    String letter, String name, ValueKind kind, String label, boolean repeatable, String text) {

  /**
   * An option without a value.
   *
   * @param name its name with two hyphens
   * @param text what it does
   * @return the option
   */
  public static CommandOption flag(String name, String text) {
    return new CommandOption("", name, ValueKind.NONE, "", false, text);
  }

  /**
   * An option with a value, which may be given once.
   *
   * @param name its name with two hyphens
   * @param kind what its value may be
   * @param label what stands for its value in the help
   * @param text what it does
   * @return the option
   */
  public static CommandOption one(String name, ValueKind kind, String label, String text) {
    return new CommandOption("", name, kind, label, false, text);
  }

  /**
   * An option with a text, which may be given several times.
   *
   * @param name its name with two hyphens
   * @param label what stands for its value in the help
   * @param text what it does
   * @return the option
   */
  public static CommandOption many(String name, String label, String text) {
    return new CommandOption("", name, ValueKind.TEXT, label, true, text);
  }

  /**
   * The same option with a short name.
   *
   * @param letter the short name with one hyphen
   * @return the option
   */
  public CommandOption or(String letter) {
    return new CommandOption(letter, name, kind, label, repeatable, text);
  }

  /**
   * Its name without the hyphens.
   *
   * @return the name
   */
  public String bareName() {
    return name.substring(2);
  }

  /**
   * Whether it takes a value.
   *
   * @return false if it only stands or does not stand there
   */
  public boolean takesValue() {
    return kind != ValueKind.NONE;
  }

  /**
   * Its names.
   *
   * @return the short one first, if it has one
   */
  public List<String> names() {
    return letter.isEmpty() ? List.of(name) : List.of(letter, name);
  }

  /**
   * Whether a word is one of its names.
   *
   * @param word a word of the command line
   * @return true for its name and for its short name
   */
  public boolean isCalled(String word) {
    return word.equals(name) || word.equals(letter);
  }
}

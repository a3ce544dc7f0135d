package kelter.cli.usage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What a command takes, and how its help explains it.
 *
 * @param name the word that calls it
 * @param summary what it does, in one line of the list of commands
 * @param explanation what else is to be known; may be empty
 * @param options its own options
 * @param arguments its arguments, in order
 * @param examples calls of it, as typed into a shell
 * @param hasJson whether its result can be had as JSON
 */
public record CommandUsage(
    String name,
    String summary,
    String explanation,
    List<CommandOption> options,
    List<CommandArgument> arguments,
    List<String> examples,
    boolean hasJson) {

  /** Shows the help instead of doing anything. */
  public static final CommandOption HELP =
      CommandOption.flag("--help", "show this help and stop").or("-h");

  /** How the result is shown. */
  public static final CommandOption FORMAT =
      CommandOption.one("--format", ValueKind.FORMAT, "FORMAT", "text (default) or json");

  /** The folder of modules from outside. */
  public static final CommandOption PLUGINS =
      CommandOption.one("--plugins", ValueKind.FILE, "DIR", "also load the modules in this folder");

  /** How long a call of a plugin may take. */
  public static final CommandOption PLUGIN_SECONDS =
      CommandOption.one(
          "--plugin-seconds",
          ValueKind.COUNT,
          "N",
          "how long a call of a plugin may take (default 10)");

  /** Tells where in the program a defect showed; not for everyday use. */
  public static final CommandOption TRACE = CommandOption.flag("--trace", "");

  public CommandUsage {
    options = List.copyOf(options);
    arguments = List.copyOf(arguments);
    examples = List.copyOf(examples);
  }

  /**
   * A command whose result can be had as JSON.
   *
   * @param name the word that calls it
   * @param summary what it does, in one line of the list of commands
   * @param explanation what else is to be known; may be empty
   * @param options its own options
   * @param arguments its arguments, in order
   * @param examples calls of it, as typed into a shell
   */
  public CommandUsage(
      String name,
      String summary,
      String explanation,
      List<CommandOption> options,
      List<CommandArgument> arguments,
      List<String> examples) {
    this(name, summary, explanation, options, arguments, examples, true);
  }

  /**
   * The same for a command that speaks to people only.
   *
   * @return the usage without {@link #FORMAT}
   */
  public CommandUsage forPeople() {
    return new CommandUsage(name, summary, explanation, options, arguments, examples, false);
  }

  /**
   * Its own options and those that every command has.
   *
   * @return the options
   */
  public List<CommandOption> allOptions() {
    List<CommandOption> all = new ArrayList<>(options);
    if (hasJson) {
      all.add(FORMAT);
    }
    all.add(HELP);
    all.add(PLUGINS);
    all.add(PLUGIN_SECONDS);
    all.add(TRACE);
    return all;
  }

  /**
   * The options that the help tells of.
   *
   * @return the options by name
   */
  public List<CommandOption> shownOptions() {
    List<CommandOption> shown = allOptions();
    shown.removeIf(option -> option.text().isEmpty());
    shown.sort(Comparator.comparing(CommandOption::name));
    return shown;
  }
}

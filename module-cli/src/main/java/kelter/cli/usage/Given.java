package kelter.cli.usage;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.cli.Option;

/** What was given to a command: every value is of the kind that the command declared. */
public final class Given {

  private final Option[] options;
  private final List<String> arguments;

  Given(Option[] options, List<String> arguments) {
    this.options = options;
    this.arguments = List.copyOf(arguments);
  }

  /**
   * Whether an option was given.
   *
   * @param option the option
   * @return true if it was
   */
  public boolean has(CommandOption option) {
    return first(option) != null;
  }

  /**
   * The value of an option.
   *
   * @param option an option that takes one value
   * @return the value, or empty if the option was not given
   */
  public Optional<String> text(CommandOption option) {
    Option found = first(option);
    return found == null ? Optional.empty() : Optional.of(found.getValue());
  }

  /**
   * The file or folder that an option names.
   *
   * @param option an option that takes {@link ValueKind#FILE}
   * @return its path, or empty if the option was not given
   */
  public Optional<Path> path(CommandOption option) {
    Option found = first(option);
    return found == null ? Optional.empty() : Optional.of(Path.of(found.getValue()));
  }

  /**
   * The whole number of an option.
   *
   * @param option an option that takes {@link ValueKind#COUNT}
   * @param usual what holds if the option was not given
   * @return the number
   */
  public int count(CommandOption option, int usual) {
    Option found = first(option);
    return found == null ? usual : Integer.parseInt(found.getValue());
  }

  /**
   * The long whole number of an option.
   *
   * @param option an option that takes {@link ValueKind#WHOLE}
   * @param usual what holds if the option was not given
   * @return the number
   */
  public long whole(CommandOption option, long usual) {
    Option found = first(option);
    return found == null ? usual : Long.parseLong(found.getValue());
  }

  /**
   * The number of an option.
   *
   * @param option an option that takes {@link ValueKind#NUMBER}
   * @param usual what holds if the option was not given
   * @return the number, finite if the usual one is
   */
  public double number(CommandOption option, double usual) {
    Option found = first(option);
    return found == null ? usual : Double.parseDouble(found.getValue());
  }

  /**
   * The values of an option that may be given several times.
   *
   * @param option an option that takes values
   * @return the values in the order in which they were given
   */
  public List<String> list(CommandOption option) {
    List<String> values = new ArrayList<>();
    for (Option found : options) {
      if (option.bareName().equals(found.getLongOpt())) {
        values.add(found.getValue());
      }
    }
    return values;
  }

  /**
   * Whether the result is to be shown as JSON.
   *
   * @return true if {@link CommandUsage#FORMAT} says so
   */
  public boolean isJson() {
    Option format = first(CommandUsage.FORMAT);
    return format != null && format.getValue().equals(ValueKind.AS_JSON);
  }

  /**
   * The arguments.
   *
   * @return the words that are no options, in order
   */
  public List<String> arguments() {
    return arguments;
  }

  private Option first(CommandOption option) {
    for (Option found : options) {
      if (option.bareName().equals(found.getLongOpt())) {
        return found;
      }
    }
    return null;
  }
}

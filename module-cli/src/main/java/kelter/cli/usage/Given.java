package kelter.cli.usage;

import java.nio.file.Path;
import java.util.Arrays;
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
    return first(option).isPresent();
  }

  /**
   * The value of an option.
   *
   * @param option an option that takes one value
   * @return the value, or empty if the option was not given
   */
  public Optional<String> text(CommandOption option) {
    return first(option).map(Option::getValue);
  }

  /**
   * The file or folder that an option names.
   *
   * @param option an option that takes {@link ValueKind#FILE}
   * @return its path, or empty if the option was not given
   */
  public Optional<Path> path(CommandOption option) {
    return text(option).map(Path::of);
  }

  /**
   * The whole number of an option.
   *
   * @param option an option that takes {@link ValueKind#COUNT}
   * @param usual what holds if the option was not given
   * @return the number
   */
  public int count(CommandOption option, int usual) {
    return text(option).map(Integer::parseInt).orElse(usual);
  }

  /**
   * The long whole number of an option.
   *
   * @param option an option that takes {@link ValueKind#WHOLE}
   * @param usual what holds if the option was not given
   * @return the number
   */
  public long whole(CommandOption option, long usual) {
    return text(option).map(Long::parseLong).orElse(usual);
  }

  /**
   * The number of an option.
   *
   * @param option an option that takes {@link ValueKind#NUMBER}
   * @param usual what holds if the option was not given
   * @return the number, finite if the usual one is
   */
  public double number(CommandOption option, double usual) {
    return text(option).map(Double::parseDouble).orElse(usual);
  }

  /**
   * The values of an option that may be given several times.
   *
   * @param option an option that takes values
   * @return the values in the order in which they were given
   */
  public List<String> list(CommandOption option) {
    return Arrays.stream(options)
        .filter(found -> option.bareName().equals(found.getLongOpt()))
        .map(Option::getValue)
        .toList();
  }

  /**
   * Whether the result is to be shown as JSON.
   *
   * @return true if {@link CommandUsage#FORMAT} says so
   */
  public boolean isJson() {
    return text(CommandUsage.FORMAT).filter(ValueKind.AS_JSON::equals).isPresent();
  }

  /**
   * The arguments.
   *
   * @return the words that are no options, in order
   */
  public List<String> arguments() {
    return arguments;
  }

  /** By a loop: every command asks here, and the streams would be linked for this alone. */
  private Optional<Option> first(CommandOption option) {
    for (Option found : options) {
      if (option.bareName().equals(found.getLongOpt())) {
        return Optional.of(found);
      }
    }
    return Optional.empty();
  }
}

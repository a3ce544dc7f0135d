package kelter.cli.usage;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.cli.CommandLine;
import org.apache.commons.cli.DefaultParser;
import org.apache.commons.cli.DefaultParser.NonOptionAction;
import org.apache.commons.cli.Option;
import org.apache.commons.cli.Options;
import org.apache.commons.cli.ParseException;

/**
 * Reads the words behind the name of a command. Options and arguments may be mixed; {@code --} ends
 * the options; a value stands behind its option or, joined by {@code =}, in the same word. A long
 * name behind one hyphen is understood too, but no shortened one.
 */
public final class CommandLineReader {

  private static final String END_OF_OPTIONS = "--";

  private CommandLineReader() {}

  /**
   * Reads words by what a command takes.
   *
   * @param usage what the command takes
   * @param words the words behind its name
   * @return what was given; nothing of it is checked if {@link CommandUsage#HELP} is among it
   * @throws UsageException if they do not fit, with all mistakes
   */
  public static Given read(CommandUsage usage, String... words) {
    int end = Arrays.asList(words).indexOf(END_OF_OPTIONS);
    String[] mixed = end < 0 ? words : Arrays.copyOf(words, end);
    CommandLine line = parse(usage, mixed);
    Option[] options = line.getOptions();
    Mistakes mistakes = new Mistakes(usage);
    List<String> arguments = mistakes.withoutUnknownOptions(line.getArgList());
    if (end >= 0) {
      arguments.addAll(Arrays.asList(words).subList(end + 1, words.length));
    }
    Given given = new Given(options, arguments);
    if (!given.has(CommandUsage.HELP)) {
      mistakes.inOptions(options);
      mistakes.inArguments(arguments);
      mistakes.throwIfAny();
    }
    return given;
  }

  /**
   * Whether a command line asks for a result as JSON, as far as can be seen without understanding
   * it: for telling what is wrong with it.
   *
   * @param words all words
   * @return true if {@link CommandUsage#FORMAT} with its value is among them
   */
  public static boolean asksForJson(String... words) {
    String joined = CommandUsage.FORMAT.name() + "=" + ValueKind.AS_JSON;
    boolean named = false;
    for (String word : words) {
      if (word.equals(joined) || named && word.equals(ValueKind.AS_JSON)) {
        return true;
      }
      named = CommandUsage.FORMAT.isCalled(word);
    }
    return false;
  }

  /** Splits the words; those that it does not know as options are left among the arguments. */
  private static CommandLine parse(CommandUsage usage, String... words) {
    Options options = new Options();
    for (CommandOption option : usage.allOptions()) {
      options.addOption(declared(option));
    }
    DefaultParser parser =
        DefaultParser.builder()
            .setAllowPartialMatching(false)
            .setStripLeadingAndTrailingQuotes(false)
            .get();
    try {
      return parser.parse(options, null, NonOptionAction.SKIP, words);
    } catch (ParseException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  /**
   * An option as the library knows it. Its value is declared optional, since a missing one would
   * end the parsing at once and hide the other mistakes.
   */
  private static Option declared(CommandOption option) {
    String letter = option.letter().isEmpty() ? null : option.letter().substring(1);
    return Option.builder(letter)
        .longOpt(option.bareName())
        .hasArg(option.takesValue())
        .optionalArg(option.takesValue())
        .get();
  }
}

package kelter.cli.usage;

import java.util.ArrayList;
import java.util.List;
import kelter.cli.terminal.Terminal;
import kelter.cli.terminal.Words;
import kelter.cli.text.Layout;

/** The help of a command, made from what it declares. */
public final class HelpText {

  private static final String INDENT = "  ";
  private static final String CONTINUED = "      ";
  private static final String CONTINUATION = " \\";

  /** Room for a short name and the comma behind it. */
  private static final String NO_LETTER = "    ";

  /** How much of the width the names may take before the texts go below them. */
  private static final double NAMES = 0.4;

  private HelpText() {}

  /**
   * The help of a command.
   *
   * @param usage what the command takes
   * @param terminal where it will be shown
   * @return the text
   */
  public static String of(CommandUsage usage, Terminal terminal) {
    List<CommandOption> options = usage.shownOptions();
    Layout layout = new Layout(terminal);
    layout.hanging("kelter " + usage.name() + " ", synopsis(options, usage.arguments()));
    layout.blank().line((usage.summary() + " " + usage.explanation()).stripTrailing());
    List<Row> rows = new ArrayList<>();
    for (CommandArgument argument : usage.arguments()) {
      rows.add(new Row(argument.name(), argument.text()));
    }
    if (!rows.isEmpty()) {
      table(layout, "Arguments", rows, terminal);
    }
    rows.clear();
    for (CommandOption option : options) {
      String letter = option.letter().isEmpty() ? NO_LETTER : option.letter() + ", ";
      rows.add(new Row(letter + named(option), option.text()));
    }
    table(layout, "Options", rows, terminal);
    layout.heading(usage.examples().size() == 1 ? "Example" : "Examples");
    for (String example : usage.examples()) {
      shellLines(example, terminal.width()).forEach(layout::asIs);
    }
    return layout.toString();
  }

  /**
   * A name and what it means.
   *
   * @param name an option, an argument or a command
   * @param text what it means
   */
  public record Row(String name, String text) {}

  /**
   * A heading with names in one column and what they mean in another.
   *
   * @param layout where to write it
   * @param heading the heading
   * @param rows the rows
   * @param terminal where it will be shown
   */
  public static void table(Layout layout, String heading, List<Row> rows, Terminal terminal) {
    int most = (int) (terminal.width() * NAMES);
    int column = 0;
    for (Row row : rows) {
      column = Math.max(column, INDENT.length() + row.name().length() + INDENT.length());
    }
    boolean below = column > most;
    String texts = " ".repeat(below ? CONTINUED.length() + INDENT.length() : column);
    layout.heading(heading);
    for (Row row : rows) {
      String name = INDENT + row.name();
      if (below) {
        layout.line(name.replace(' ', '\u00a0'));
        layout.hanging(texts, row.text());
      } else {
        layout.hanging(name + texts.substring(name.length()), row.text());
      }
    }
  }

  private static String synopsis(List<CommandOption> options, List<CommandArgument> arguments) {
    StringBuilder words = new StringBuilder();
    for (CommandOption option : options) {
      words.append('[').append(named(option).replace(' ', '\u00a0')).append(']');
      words.append(option.repeatable() ? "... " : " ");
    }
    for (CommandArgument argument : arguments) {
      words.append(argument.optional() ? "[" + argument.name() + "]" : argument.name());
      words.append(argument.repeatable() ? "... " : " ");
    }
    return words.toString().stripTrailing();
  }

  private static String named(CommandOption option) {
    return option.takesValue() ? option.name() + " " + option.label() : option.name();
  }

  /** A call in lines as a shell takes them: broken at a space, with a backslash before the end. */
  private static List<String> shellLines(String call, int width) {
    int room = width - CONTINUATION.length();
    List<String> lines =
        Words.lines(shellWords(call), room - INDENT.length(), room - CONTINUED.length());
    List<String> shell = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      shell.add(
          (i == 0 ? INDENT : CONTINUED)
              + lines.get(i)
              + (i + 1 < lines.size() ? CONTINUATION : ""));
    }
    return shell;
  }

  /** The words of a call with their quotes: a space between quotes parts no words. */
  private static List<String> shellWords(String call) {
    List<String> words = new ArrayList<>();
    int start = 0;
    boolean quoted = false;
    for (int i = 0; i < call.length(); i++) {
      quoted ^= call.charAt(i) == '\'';
      if (call.charAt(i) == ' ' && !quoted) {
        words.add(call.substring(start, i));
        start = i + 1;
      }
    }
    words.add(call.substring(start));
    return words;
  }
}

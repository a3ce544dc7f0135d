package kelter.cli.usage;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Manual pages in roff with the macros of the man package, made from what the commands declare. All
 * signs but those of ASCII are written by their numbers, so that a page reads the same anywhere.
 *
 * @param version the version of the tool that stands below a page
 * @param exitCodes what the exit codes mean
 */
public record ManualPage(String version, String exitCodes) {

  private static final int LAST_ASCII = 0x7e;

  /**
   * The page of the tool as a whole.
   *
   * @param summary what the tool does
   * @param commands all commands
   * @return the page
   */
  public String ofAll(String summary, List<CommandUsage> commands) {
    List<String> lines = head("kelter", summary);
    lines.add(bold("kelter") + " COMMAND [OPTIONS] [ARGUMENTS]");
    lines.add(".SH COMMANDS");
    for (CommandUsage command : commands) {
      entry(bold(command.name()), command.summary(), lines);
    }
    foot(lines);
    lines.add(".SH SEE ALSO");
    lines.add(
        String.join(
            ",\n", commands.stream().map(each -> bold(fileName(each.name())) + "(1)").toList()));
    return String.join("\n", lines) + "\n";
  }

  /**
   * The page of a command.
   *
   * @param usage what it takes
   * @return the page
   */
  public String of(CommandUsage usage) {
    List<String> lines = head(fileName(usage.name()), usage.summary());
    lines.add(bold("kelter " + usage.name()));
    for (CommandOption option : usage.shownOptions()) {
      lines.add("[" + named(option, option.name()) + "]" + (option.repeatable() ? "..." : ""));
    }
    for (CommandArgument argument : usage.arguments()) {
      String name = italic(argument.name());
      lines.add(
          (argument.optional() ? "[" + name + "]" : name) + (argument.repeatable() ? "..." : ""));
    }
    if (!usage.explanation().isEmpty()) {
      lines.add(".SH DESCRIPTION");
      lines.add(plain(usage.explanation()));
    }
    if (!usage.arguments().isEmpty()) {
      lines.add(".SH ARGUMENTS");
      usage.arguments().forEach(each -> entry(italic(each.name()), each.text(), lines));
    }
    lines.add(".SH OPTIONS");
    for (CommandOption option : usage.shownOptions()) {
      List<String> names = option.names().stream().map(name -> named(option, name)).toList();
      entry(String.join(", ", names), option.text(), lines);
    }
    lines.add(".SH EXAMPLES");
    lines.add(".nf");
    usage.examples().forEach(example -> lines.add(plain(example)));
    lines.add(".fi");
    foot(lines);
    lines.add(".SH SEE ALSO");
    lines.add(bold("kelter") + "(1)");
    return String.join("\n", lines) + "\n";
  }

  /**
   * The name of a page, without its section.
   *
   * @param command the name of a command
   * @return its name with hyphens, behind that of the tool
   */
  public static String fileName(String command) {
    return "kelter-" + command.replace(' ', '-');
  }

  private List<String> head(String name, String summary) {
    List<String> lines = new ArrayList<>();
    lines.add(".\\\" Made by 'kelter man'.");
    lines.add(
        ".TH \""
            + plain(name).toUpperCase(Locale.ROOT)
            + "\" 1 \"\" \"kelter "
            + plain(version)
            + "\" \"Kelter\"");
    lines.add(".nh");
    lines.add(".SH NAME");
    lines.add(plain(name) + " \\- " + plain(summary));
    lines.add(".SH SYNOPSIS");
    return lines;
  }

  private void foot(List<String> lines) {
    lines.add(".SH EXIT STATUS");
    lines.add(plain(exitCodes));
  }

  private static void entry(String name, String text, List<String> lines) {
    lines.add(".TP");
    lines.add(name);
    lines.add(plain(text));
  }

  private static String named(CommandOption option, String name) {
    return bold(name) + (option.takesValue() ? " " + italic(option.label()) : "");
  }

  private static String bold(String words) {
    return "\\fB" + plain(words) + "\\fR";
  }

  private static String italic(String words) {
    return "\\fI" + plain(words) + "\\fR";
  }

  /** Words that roff shows as they are: nothing in them steers it. */
  static String plain(String words) {
    StringBuilder plain = new StringBuilder();
    words.codePoints().forEach(sign -> plain.append(plain(sign)));
    return plain.indexOf(".") == 0 ? "\\&" + plain : plain.toString();
  }

  private static String plain(int sign) {
    return switch (sign) {
      case '\\' -> "\\(rs";
      case '-' -> "\\-";
      case '\'' -> "\\(aq";
      case '"' -> "\\(dq";
      case '`' -> "\\(ga";
      case '^' -> "\\(ha";
      case '~' -> "\\(ti";
      case '\u00a0' -> "\\ ";
      default -> {
        if (Character.isISOControl(sign)) {
          yield " ";
        }
        yield sign > LAST_ASCII ? "\\[u" + "%04X".formatted(sign) + "]" : Character.toString(sign);
      }
    };
  }
}

package kelter.cli.completion;

import java.util.List;
import java.util.Map;
import kelter.cli.usage.CommandArgument;
import kelter.cli.usage.CommandOption;
import kelter.cli.usage.CommandUsage;
import kelter.cli.usage.ValueKind;

/** Completion for zsh, from version 5 on: what each command declares, as its function takes it. */
final class ZshScript {

  private static final String HEAD =
      """
      #compdef kelter
      # Completion of kelter for zsh, made by 'kelter completion zsh'.
      """;

  private static final String TAIL =
      """

      if [[ $funcstack[1] == _kelter ]]; then
        _kelter "$@"
      else
        compdef _kelter kelter
      fi
      """;

  private final Completion completion;

  ZshScript(Completion completion) {
    this.completion = completion;
  }

  String text() {
    StringBuilder text = new StringBuilder(HEAD);
    completion.words().forEach((kind, words) -> proposing(kind, words, text));
    text.append("\n_kelter() {\n  local -a known\n  if (( CURRENT == 2 )); then\n    known=(\n");
    Map<String, List<CommandUsage>> groups = completion.byFirstWord();
    groups.forEach((word, commands) -> described(word, Completion.summary(commands), text));
    text.append("    )\n    _describe -t commands command known\n    return\n  fi\n")
        .append("  case $words[2] in\n");
    groups.forEach(
        (word, commands) -> {
          text.append("    ").append(Quoted.forBourne(word)).append(")\n");
          if (Completion.isGroup(commands)) {
            group(commands, text);
          } else {
            arguments(commands.get(0), "shift words; (( CURRENT-- ))", text);
          }
          text.append("      ;;\n");
        });
    return text.append("  esac\n}\n").append(TAIL).toString();
  }

  /** A function that proposes the words of a kind. */
  private static void proposing(ValueKind kind, List<String> words, StringBuilder text) {
    text.append("\n_kelter_").append(Completion.word(kind)).append("() {\n  local -a known=(\n");
    words.forEach(word -> text.append("    ").append(Quoted.forBourne(word)).append('\n'));
    text.append("  )\n  compadd \"$@\" -a known\n}\n");
  }

  private static void described(String word, String summary, StringBuilder text) {
    String both = word.replace("\\", "\\\\").replace(":", "\\:") + ":" + summary;
    text.append("      ").append(Quoted.forBourne(both)).append('\n');
  }

  private void group(List<CommandUsage> commands, StringBuilder text) {
    text.append("      if (( CURRENT == 3 )); then\n    known=(\n");
    for (CommandUsage command : commands) {
      described(Completion.secondWord(command), command.summary(), text);
    }
    text.append("    )\n    _describe -t commands command known\n    return\n      fi\n")
        .append("      case $words[3] in\n");
    for (CommandUsage command : commands) {
      text.append("    ").append(Quoted.forBourne(Completion.secondWord(command))).append(")\n");
      arguments(command, "shift 2 words; (( CURRENT -= 2 ))", text);
      text.append("      ;;\n");
    }
    text.append("      esac\n");
  }

  private void arguments(CommandUsage command, String shift, StringBuilder text) {
    text.append("      ").append(shift).append("\n      _arguments -S");
    for (CommandOption option : command.shownOptions()) {
      for (String name : option.names()) {
        argument(option(option, name), text);
      }
    }
    for (CommandArgument each : command.arguments()) {
      String front = each.repeatable() ? "*" : each.optional() ? ":" : "";
      argument(front + ":" + message(each.name()) + ":" + action(each.kind()), text);
    }
    text.append('\n');
  }

  private static void argument(String declared, StringBuilder text) {
    text.append(" \\\n        ").append(Quoted.forBourne(declared));
  }

  private String option(CommandOption option, String name) {
    String front = option.repeatable() ? "*" : "(" + String.join(" ", option.names()) + ")";
    String joined = option.takesValue() && name.startsWith("--") ? "=" : "";
    String told = option.text().replace("\\", "\\\\").replace("[", "\\[").replace("]", "\\]");
    String value =
        option.takesValue() ? ":" + message(option.label()) + ":" + action(option.kind()) : "";
    return front + name + joined + "[" + told + "]" + value;
  }

  private static String message(String label) {
    return label.replace("\\", "\\\\").replace(":", "\\:");
  }

  /** What proposes values of a kind; a space where there is nothing to propose. */
  private String action(ValueKind kind) {
    if (kind == ValueKind.FILE) {
      return "_files";
    }
    return completion.words().containsKey(kind) ? "_kelter_" + Completion.word(kind) : " ";
  }
}

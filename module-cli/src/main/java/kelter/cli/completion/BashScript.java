package kelter.cli.completion;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kelter.cli.usage.CommandArgument;
import kelter.cli.usage.CommandOption;
import kelter.cli.usage.CommandUsage;

/**
 * Completion for bash, from version 3.2 on. Bash parts what is typed at {@code =}, and so the
 * script puts it together again.
 */
final class BashScript {

  private static final String HEAD =
      """
      # Completion of kelter for bash, made by 'kelter completion bash'.

      """;

  private static final String TAIL =
      """

      # Proposes those lines of $1 that begin with what is typed.
      _kelter_propose() {
        local word
        while IFS= read -r word; do
          if [[ -n $word && $word == "$current"* ]]; then
            printf -v word %q "$word"
            COMPREPLY+=("$word")
          fi
        done <<<"$1"
      }

      _kelter_propose_files() {
        local word
        compopt -o filenames 2>/dev/null
        while IFS= read -r word; do
          COMPREPLY+=("$word")
        done < <(compgen -f -- "$current")
      }

      _kelter() {
        local current=${COMP_WORDS[COMP_CWORD]} command=${COMP_WORDS[1]} options='' take='' words=''
        local index=2 place=1 before='' joined='' ended='' word
        COMPREPLY=()
        if [[ $COMP_CWORD -le 1 ]]; then
          _kelter_propose "$_kelter_commands"
          return
        fi
        words=''
        _kelter_seconds "$command"
        if [[ -n $words ]]; then
          if [[ $COMP_CWORD -eq 2 ]]; then
            _kelter_propose "$words"
            return
          fi
          command="$command ${COMP_WORDS[2]}"
          index=3
        fi
        while [[ $index -lt $COMP_CWORD ]]; do
          word=${COMP_WORDS[index]}
          index=$((index + 1))
          if [[ $word == = ]]; then
            [[ -n $before ]] || joined=yes
          elif [[ -n $joined ]]; then
            joined=''
          elif [[ -n $before ]]; then
            before=''
          elif [[ $word == -- && -z $ended ]]; then
            ended=yes
          elif [[ $word == -* && -z $ended ]]; then
            take=''
            _kelter_declared "$command" "$word"
            [[ -z $take ]] || before=$word
          else
            place=$((place + 1))
          fi
        done
        if [[ $current == = ]]; then
          current=''
          [[ -n $before ]] || joined=yes
        fi
        [[ -z $joined ]] || return
        take=''
        if [[ -n $before ]]; then
          _kelter_declared "$command" "$before"
        else
          _kelter_declared "$command" "$place"
          if [[ $current == -* && -z $ended ]]; then
            _kelter_propose "$options"
            return
          fi
        fi
        if [[ $take == file ]]; then
          _kelter_propose_files
        else
          words=''
          _kelter_words "$take"
          _kelter_propose "$words"
        fi
      }

      complete -F _kelter kelter
      """;

  private final Completion completion;

  BashScript(Completion completion) {
    this.completion = completion;
  }

  String text() {
    StringBuilder text = new StringBuilder(HEAD);
    text.append("_kelter_commands=")
        .append(lines(first()))
        .append("\n\n# The second words of commands that have two.\n")
        .append("_kelter_seconds() {\n  case $1 in\n");
    completion
        .byFirstWord()
        .forEach(
            (word, commands) -> {
              if (Completion.isGroup(commands)) {
                branch(word, lines(commands.stream().map(Completion::secondWord).toList()), text);
              }
            });
    text.append("  esac\n}\n\n# The words that a kind of value is one of.\n")
        .append("_kelter_words() {\n  case $1 in\n");
    completion.words().forEach((kind, words) -> branch(Completion.word(kind), lines(words), text));
    text.append("  esac\n}\n\n")
        .append(
            "# The options of a command, and what its option or its argument of a place takes.\n")
        .append("_kelter_declared() {\n  case $1 in\n");
    completion.commands().forEach(command -> declared(command, text));
    return text.append("  esac\n}\n").append(TAIL).toString();
  }

  private List<String> first() {
    List<String> first = new ArrayList<>(completion.byFirstWord().keySet());
    first.add("--help");
    first.add("--version");
    return first;
  }

  private static void branch(String word, String lines, StringBuilder text) {
    text.append("    ")
        .append(Quoted.forBourne(word))
        .append(")\n      words=")
        .append(lines)
        .append("\n      ;;\n");
  }

  private static void declared(CommandUsage command, StringBuilder text) {
    List<String> options = command.shownOptions().stream().flatMap(BashScript::names).toList();
    text.append("    ")
        .append(Quoted.forBourne(command.name()))
        .append(")\n      options=")
        .append(lines(options))
        .append("\n      case $2 in\n");
    for (CommandOption option : command.shownOptions()) {
      if (option.takesValue()) {
        String names = names(option).map(Quoted::forBourne).collect(Collectors.joining(" | "));
        take(names, Completion.word(option.kind()), text);
      }
    }
    int place = 1;
    for (CommandArgument argument : command.arguments()) {
      String places = argument.repeatable() ? "[1-9]*" : Quoted.forBourne(String.valueOf(place));
      take(places, Completion.word(argument.kind()), text);
      place++;
    }
    text.append("      esac\n      ;;\n");
  }

  private static void take(String pattern, String kind, StringBuilder text) {
    text.append("        ").append(pattern).append(") take=").append(kind).append(" ;;\n");
  }

  private static Stream<String> names(CommandOption option) {
    return option.names().stream();
  }

  private static String lines(Collection<String> words) {
    return words.stream().map(BashScript::inside).collect(Collectors.joining("\n", "'", "'"));
  }

  /** A word as it stands between quotes. */
  private static String inside(String word) {
    String quoted = Quoted.forBourne(word);
    return quoted.substring(1, quoted.length() - 1);
  }
}

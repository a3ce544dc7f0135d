package kelter.cli.completion;

import java.util.ArrayList;
import java.util.List;
import kelter.cli.usage.CommandArgument;
import kelter.cli.usage.CommandOption;
import kelter.cli.usage.CommandUsage;
import kelter.cli.usage.ValueKind;

/** Completion for fish, from version 3 on: a line for each thing that can stand somewhere. */
final class FishScript {

  private static final String HEAD =
      """
      # Completion of kelter for fish, made by 'kelter completion fish'.

      # Whether what is typed so far begins with the words of a command.
      function __kelter_is
          set -l typed (commandline -opc)
          set -l named (string split ' ' -- $argv[1])
          set -l last (math 1 + (count $named))
          test (count $typed) -ge $last
          and test "$typed[2..$last]" = "$argv[1]"
      end

      # Whether the argument of a place comes next: the command, the place from 1 on or 'rest', and
      # the options with values.
      function __kelter_argument
          __kelter_is $argv[1]
          or return 1
          set -l typed (commandline -opc)
          set -l skipped (math 2 + (count (string split ' ' -- $argv[1])))
          set -l place 1
          set -l value no
          for word in $typed[$skipped..-1]
              if test $value = yes
                  set value no
              else if contains -- $word $argv[3..-1]
                  set value yes
              else if not string match -q -- '-*' $word
                  set place (math $place + 1)
              end
          end
          test $argv[2] = rest
          or test $place -eq $argv[2]
      end

      # Nothing is a file unless it is said so.
      complete -c kelter -f
      """;

  private final Completion completion;
  private final StringBuilder text = new StringBuilder(HEAD);

  FishScript(Completion completion) {
    this.completion = completion;
  }

  String text() {
    completion.words().forEach(this::proposing);
    text.append('\n');
    String atFirst = "test (count (commandline -opc)) -eq 1";
    completion
        .byFirstWord()
        .forEach(
            (word, commands) -> {
              line(atFirst, "-a " + Quoted.forFish(word), Completion.summary(commands));
              if (Completion.isGroup(commands)) {
                second(word, commands);
              }
            });
    line(atFirst, "-l help -s h", "show the commands and stop");
    line(atFirst, "-l version", "tell the version and stop");
    completion.commands().forEach(this::command);
    return text.toString();
  }

  /** A function that proposes the words of a kind. */
  private void proposing(ValueKind kind, List<String> words) {
    text.append("\nfunction ").append(proposes(kind)).append("\n    printf '%s\\n'");
    words.forEach(word -> text.append(" \\\n        ").append(Quoted.forFish(word)));
    text.append("\nend\n");
  }

  private static String proposes(ValueKind kind) {
    return "__kelter_" + Completion.word(kind) + "_words";
  }

  private void second(String word, List<CommandUsage> commands) {
    String condition =
        "__kelter_is " + Quoted.forFish(word) + "; and test (count (commandline -opc)) -eq 2";
    for (CommandUsage command : commands) {
      line(condition, "-a " + Quoted.forFish(Completion.secondWord(command)), command.summary());
    }
  }

  private void command(CommandUsage command) {
    String name = Quoted.forFish(command.name());
    List<String> valued = new ArrayList<>();
    for (CommandOption option : command.shownOptions()) {
      StringBuilder words = new StringBuilder("-l " + Quoted.forFish(option.bareName()));
      if (!option.letter().isEmpty()) {
        words.append(" -s ").append(Quoted.forFish(option.letter().substring(1)));
      }
      if (option.takesValue()) {
        words.append(" -r ").append(values(option.kind()));
        option.names().forEach(each -> valued.add(Quoted.forFish(each)));
      }
      line("__kelter_is " + name, words.toString(), option.text());
    }
    int place = 1;
    for (CommandArgument argument : command.arguments()) {
      String where = argument.repeatable() ? "rest" : String.valueOf(place);
      String condition = "__kelter_argument " + name + " " + where + " " + String.join(" ", valued);
      if (argument.kind() == ValueKind.FILE || completion.words().containsKey(argument.kind())) {
        line(condition, values(argument.kind()), "");
      }
      place++;
    }
  }

  /** What is proposed for values of a kind. */
  private String values(ValueKind kind) {
    if (kind == ValueKind.FILE) {
      return "-F";
    }
    return completion.words().containsKey(kind) ? "-f -a '(" + proposes(kind) + ")'" : "-f";
  }

  private void line(String condition, String words, String told) {
    text.append("complete -c kelter -n ")
        .append(Quoted.forFish(condition))
        .append(' ')
        .append(words);
    if (!told.isEmpty()) {
      text.append(" -d ").append(Quoted.forFish(told));
    }
    text.append('\n');
  }
}

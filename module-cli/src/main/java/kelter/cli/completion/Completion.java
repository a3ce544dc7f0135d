package kelter.cli.completion;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import kelter.cli.usage.CommandUsage;
import kelter.cli.usage.ValueKind;

/**
 * What a shell can complete.
 *
 * @param commands what the commands take, in the order in which they are proposed
 * @param words what is proposed for values that are one of some words; a word with a control
 *     character in it is left out, since no shell would take it back
 */
public record Completion(List<CommandUsage> commands, Map<ValueKind, List<String>> words) {

  public Completion {
    commands = List.copyOf(commands);
    Map<ValueKind, List<String>> fit = new LinkedHashMap<>();
    words.forEach(
        (kind, proposed) ->
            fit.put(
                kind,
                proposed.stream()
                    .filter(word -> word.codePoints().noneMatch(Character::isISOControl))
                    .toList()));
    for (ValueKind kind : ValueKind.values()) {
      if (!kind.choices().isEmpty()) {
        fit.put(kind, kind.choices());
      }
    }
    words = fit;
  }

  /**
   * The script for a shell.
   *
   * @param shell one of the words of {@link ValueKind#SHELL}
   * @return the text
   */
  public String script(String shell) {
    return switch (shell) {
      case "bash" -> new BashScript(this).text();
      case "zsh" -> new ZshScript(this).text();
      case "fish" -> new FishScript(this).text();
      default -> throw new IllegalArgumentException("no script for the shell '" + shell + "'");
    };
  }

  /** The commands by their first words; of several words are those that go by a second one. */
  Map<String, List<CommandUsage>> byFirstWord() {
    Map<String, List<CommandUsage>> groups = new LinkedHashMap<>();
    for (CommandUsage command : commands) {
      String first = command.name().split(" ")[0];
      groups.computeIfAbsent(first, word -> new ArrayList<>()).add(command);
    }
    return groups;
  }

  /** Whether commands share a first word, so that a second one tells them apart. */
  static boolean isGroup(List<CommandUsage> commands) {
    return commands.get(0).name().indexOf(' ') >= 0;
  }

  /** The second word of a command of two words. */
  static String secondWord(CommandUsage command) {
    return command.name().split(" ")[1];
  }

  /** What a first word does, in one line. */
  static String summary(List<CommandUsage> commands) {
    return isGroup(commands)
        ? String.join(", ", commands.stream().map(CommandUsage::name).toList())
        : commands.get(0).summary();
  }

  /** The word for a kind of value in a script. */
  static String word(ValueKind kind) {
    return kind.name().toLowerCase(Locale.ROOT);
  }
}

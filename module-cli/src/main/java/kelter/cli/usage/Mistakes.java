package kelter.cli.usage;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import kelter.core.quantity.Nearest;
import org.apache.commons.cli.Option;

/** Collects what is wrong with a command line, so that all of it can be told at once. */
final class Mistakes {

  private final CommandUsage usage;
  private final List<CommandOption> known;
  private final List<String> found = new ArrayList<>();

  /** How many arguments may be the values of options that are not known. */
  private int doubtful;

  Mistakes(CommandUsage usage) {
    this.usage = usage;
    this.known = usage.allOptions();
  }

  /** The words that are arguments; the others, which look like options, are mistakes. */
  List<String> withoutUnknownOptions(List<String> words) {
    List<String> arguments = new ArrayList<>();
    boolean doubt = false;
    for (String word : words) {
      boolean option = word.startsWith("-") && word.length() > 1;
      if (option) {
        found.add(unknown(word));
      } else {
        doubtful += doubt ? 1 : 0;
        arguments.add(word);
      }
      doubt = option && word.indexOf('=') < 0;
    }
    return arguments;
  }

  private String unknown(String word) {
    int sign = word.indexOf('=');
    String name = sign < 0 ? word : word.substring(0, sign);
    List<String> names = new ArrayList<>();
    for (CommandOption option : known) {
      if (option.isCalled(name)) {
        return name + " takes " + ValueKind.NONE.allowed();
      }
      if (!option.text().isEmpty()) {
        names.add(option.name());
      }
    }
    if (CommandUsage.FORMAT.isCalled(name)) {
      return "'" + usage.name() + "' has no result as JSON; leave " + name + " away";
    }
    if (ValueKind.FILE.takes(word) && Files.exists(Path.of(word))) {
      return "there is no option '" + word + "'; for the file of that name write './" + word + "'";
    }
    String near =
        Nearest.of(name, names).map(other -> "; did you mean '" + other + "'?").orElse("");
    return "there is no option '" + name + "'" + near;
  }

  /** Values that are missing or of another kind, and options that are given too often. */
  void inOptions(Option... given) {
    for (CommandOption option : known) {
      int times = 0;
      for (Option each : given) {
        if (option.bareName().equals(each.getLongOpt())) {
          times++;
          inValue(option, each.getValue());
        }
      }
      if (times > 1 && !option.repeatable()) {
        found.add(option.name() + " is given " + times + " times; keep one of them");
      }
    }
  }

  private void inValue(CommandOption option, String value) {
    if (!option.takesValue()) {
      return;
    }
    if (value == null || value.isEmpty()) {
      found.add(option.name() + " needs a value: " + option.label());
    } else if (value.startsWith("--")) {
      found.add(option.name() + " needs a value, " + option.label() + ", before '" + value + "'");
    } else {
      inKind(option.name(), option.kind(), value);
    }
  }

  private void inKind(String what, ValueKind kind, String value) {
    if (!kind.takes(value)) {
      found.add(what + " takes " + kind.allowed() + ", not '" + value + "'");
    }
  }

  /** Arguments that are missing, of another kind, or too many. */
  void inArguments(List<String> given) {
    int next = 0;
    for (CommandArgument argument : usage.arguments()) {
      int end = argument.repeatable() ? given.size() : Math.min(next + 1, given.size());
      if (next == end && !argument.optional()) {
        found.add(argument.name() + " is missing: " + argument.text());
      }
      while (next < end) {
        inKind(argument.name(), argument.kind(), given.get(next));
        next++;
      }
    }
    for (int i = next + doubtful; i < given.size(); i++) {
      found.add("'" + given.get(i) + "' is an argument too many");
    }
  }

  void throwIfAny() {
    if (!found.isEmpty()) {
      throw new UsageException(found);
    }
  }
}

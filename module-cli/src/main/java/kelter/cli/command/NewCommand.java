package kelter.cli.command;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import kelter.cli.template.Template;
import kelter.cli.usage.CommandArgument;
import kelter.cli.usage.CommandOption;
import kelter.cli.usage.CommandUsage;
import kelter.cli.usage.ValueKind;
import kelter.core.file.JobFile;
import kelter.core.problem.InputException;
import kelter.core.quantity.Nearest;
import kelter.core.vocabulary.Vocabulary;

/** {@code kelter new KIND}: a job file to fill in. */
final class NewCommand implements Command {

  private static final CommandOption OUTPUT =
      CommandOption.one(
              "--output",
              ValueKind.FILE,
              "FILE",
              "where to write; an existing file is kept (default: the terminal)")
          .or("-o");

  @Override
  public CommandUsage usage() {
    return new CommandUsage(
        "new",
        "Write a job file to fill in, for a kind of appliance.",
        "The kind 'other' makes a job without components.",
        List.of(OUTPUT),
        List.of(CommandArgument.one("KIND", ValueKind.TEXT, "the kind of appliance")),
        List.of("kelter new washer-extractor -o job.json", "kelter new other"));
  }

  @Override
  public void run(Invocation invocation) {
    String kind = invocation.argument();
    Vocabulary vocabulary = invocation.workshop().vocabulary();
    if (!Template.kinds().contains(kind)) {
      throw unknown(kind, Template.kinds());
    }
    String text = Template.of(kind, LocalDate.now(invocation.clock()).toString(), vocabulary);
    Optional<Path> file = invocation.given().path(OUTPUT);
    if (file.isPresent()) {
      JobFile.writeNew(JobFile.parse(text, vocabulary), file.get());
    } else {
      invocation.terminal().printJson(text);
    }
  }

  private static InputException unknown(String kind, List<String> kinds) {
    String part = kind.toLowerCase(Locale.ROOT);
    List<String> holding =
        kinds.stream().filter(known -> kind.length() > 2 && known.contains(part)).toList();
    List<String> meant = holding.isEmpty() ? Nearest.of(kind, kinds).stream().toList() : holding;
    String remedy =
        meant.isEmpty()
            ? "known: " + String.join(", ", kinds)
            : "did you mean '" + String.join("' or '", meant) + "'?";
    return new InputException(kind, "is not a known kind of appliance", remedy);
  }
}

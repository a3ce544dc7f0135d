package kelter.cli.command;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import kelter.cli.template.Template;
import kelter.core.file.JobFile;
import kelter.core.problem.InputException;
import kelter.core.quantity.Nearest;
import kelter.core.vocabulary.Vocabulary;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** {@code kelter new KIND}: a job file to fill in. */
final class NewCommand implements Command {

  private static final String OUTPUT = "--output";

  @Override
  public CommandSpec spec() {
    return Arguments.command(
            "new",
            Arguments.lines("Write a job file to fill in, for a kind of appliance."),
            "kelter new washer-extractor -o job.json",
            "kelter new other                    a job without components")
        .addOption(
            OptionSpec.builder("-o", OUTPUT)
                .paramLabel("FILE")
                .type(Path.class)
                .description("where to write; an existing file is kept (default: the terminal)")
                .build())
        .addPositional(Arguments.parameter("KIND", String.class, "the kind of appliance"));
  }

  @Override
  public void run(Invocation invocation) {
    String kind = invocation.argument();
    Vocabulary vocabulary = invocation.workshop().vocabulary();
    if (!Template.kinds().contains(kind)) {
      throw unknown(kind, Template.kinds());
    }
    String text = Template.of(kind, LocalDate.now().toString(), vocabulary);
    Optional<Path> file = invocation.option(OUTPUT);
    if (file.isPresent()) {
      JobFile.writeNew(JobFile.parse(text, vocabulary), file.get());
    } else {
      invocation.terminal().printUtf8(text);
    }
  }

  private static InputException unknown(String kind, List<String> kinds) {
    String remedy =
        Nearest.of(kind, kinds)
            .map(near -> "did you mean '" + near + "'?")
            .orElse("known: " + String.join(", ", kinds));
    return new InputException(kind, "is not a known kind of appliance", remedy);
  }
}

package kelter.cli.command;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import kelter.core.file.JobFile;
import kelter.core.problem.InputException;
import kelter.core.quantity.Nearest;
import kelter.core.vocabulary.Vocabulary;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code kelter new KIND}: a job file to fill in. */
@Command(
    name = "new",
    description = "Write a job file to fill in, for a kind of appliance.",
    footer = {
      "",
      "Examples:",
      "  kelter new washer-extractor -o job.json",
      "  kelter new other                    a job without components"
    })
final class NewCommand implements Action {

  @Mixin private Shared shared;

  @Parameters(paramLabel = "KIND", description = "the kind of appliance")
  private String kind;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "FILE",
      description = "where to write; an existing file is kept (default: the terminal)")
  private Path file;

  @Override
  public Shared shared() {
    return shared;
  }

  @Override
  public void run(Shared options) {
    Vocabulary vocabulary = options.workshop().vocabulary();
    if (!Template.kinds().contains(kind)) {
      throw unknown(Template.kinds());
    }
    String text = Template.of(kind, LocalDate.now().toString(), vocabulary);
    if (file == null) {
      options.terminal().printUtf8(text);
    } else {
      JobFile.writeNew(JobFile.parse(text, vocabulary), file);
    }
  }

  private InputException unknown(List<String> kinds) {
    String remedy =
        Nearest.of(kind, kinds)
            .map(near -> "did you mean '" + near + "'?")
            .orElse("known: " + String.join(", ", kinds));
    return new InputException(kind, "is not a known kind of appliance", remedy);
  }
}

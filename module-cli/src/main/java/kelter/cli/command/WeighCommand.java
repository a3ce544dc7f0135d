package kelter.cli.command;

import java.nio.file.Path;
import kelter.cli.json.ResultJson;
import kelter.cli.text.WeighingText;
import kelter.cli.wiring.Workshop;
import kelter.core.file.JobFile;
import kelter.core.job.Job;
import kelter.core.option.Weigher;
import kelter.core.option.Weighing;
import kelter.core.problem.InputException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code kelter weigh JOB}: repair or replace. */
@Command(
    name = "weigh",
    description = "Weigh the repairs of a job against a new machine, by cost over the years.",
    footer = {"", "Example:", "  kelter weigh demo/jobs/washer-extractor.json"})
final class WeighCommand implements Action {

  @Mixin private Shared shared;

  @Parameters(paramLabel = "JOB", description = "a job file with prices")
  private Path file;

  @Option(
      names = "--seed",
      paramLabel = "N",
      defaultValue = "1",
      description = "seed of the draws (default 1); the same seed gives the same figures")
  private long seed;

  @Override
  public Shared shared() {
    return shared;
  }

  @Override
  public void run(Shared options) {
    Workshop workshop = options.workshop();
    Job job = JobFile.read(file, workshop.vocabulary()).job();
    Weigher weigher =
        workshop
            .weigher()
            .orElseThrow(() -> new InputException("weigh", "no module that weighs is loaded", ""));
    Weighing weighing = weigher.weigh(job, workshop.diagnose(job), seed);
    if (options.isJson()) {
      options.terminal().printUtf8(ResultJson.weighing(job, weighing));
    } else {
      options.terminal().print(WeighingText.of(job, weighing, options.terminal()));
    }
  }
}

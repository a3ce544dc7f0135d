package kelter.cli.command;

import java.nio.file.Path;
import java.util.List;
import kelter.cli.json.ResultJson;
import kelter.cli.text.FindingsText;
import kelter.cli.wiring.Workshop;
import kelter.core.check.Finding;
import kelter.core.file.JobFile;
import kelter.core.job.Job;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code kelter check JOB}: the findings. */
@Command(
    name = "check",
    description = "Hold the readings of a job against their limits.",
    footer = {"", "Example:", "  kelter check demo/jobs/washer-extractor.json"})
final class CheckCommand implements Action {

  @Mixin private Shared shared;

  @Parameters(paramLabel = "JOB", description = "a job file")
  private Path file;

  @Override
  public Shared shared() {
    return shared;
  }

  @Override
  public void run(Shared options) {
    Workshop workshop = options.workshop();
    Job job = JobFile.read(file, workshop.vocabulary()).job();
    List<Finding> findings = workshop.findings(job);
    if (options.isJson()) {
      options.terminal().printUtf8(ResultJson.findings(job, findings));
    } else {
      options.terminal().print(FindingsText.of(job, findings, options.terminal()));
    }
  }
}

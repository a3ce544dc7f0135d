package kelter.cli.command;

import java.nio.file.Path;
import java.util.List;
import kelter.cli.json.ResultJson;
import kelter.cli.text.FindingsText;
import kelter.cli.wiring.Workshop;
import kelter.core.check.Finding;
import kelter.core.file.JobFile;
import kelter.core.job.Job;
import picocli.CommandLine.Model.CommandSpec;

/** {@code kelter check JOB}: the findings. */
final class CheckCommand implements Command {

  @Override
  public CommandSpec spec() {
    return Arguments.command(
            "check",
            Arguments.lines("Hold the readings of a job against their limits."),
            "kelter check demo/jobs/washer-extractor.json")
        .addPositional(Arguments.jobFile("a job file"));
  }

  @Override
  public void run(Invocation invocation) {
    Workshop workshop = invocation.workshop();
    Job job = JobFile.read(invocation.<Path>argument(), workshop.vocabulary()).job();
    List<Finding> findings = workshop.findings(job);
    if (invocation.isJson()) {
      invocation.terminal().printUtf8(ResultJson.findings(job, findings));
    } else {
      invocation
          .terminal()
          .print(FindingsText.of(job, findings, workshop.rule(), invocation.terminal()));
    }
  }
}

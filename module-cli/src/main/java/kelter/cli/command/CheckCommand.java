package kelter.cli.command;

import java.util.List;
import kelter.cli.json.ResultJson;
import kelter.cli.terminal.Terminal;
import kelter.cli.text.FindingsText;
import kelter.cli.text.InstrumentsText;
import kelter.cli.wiring.Workshop;
import kelter.core.check.Finding;
import kelter.core.job.Job;
import kelter.core.safety.Caution;
import picocli.CommandLine.Model.CommandSpec;

/** {@code kelter check JOB}: the findings. */
final class CheckCommand implements Command {

  @Override
  public CommandSpec spec() {
    return Arguments.command(
            "check",
            Arguments.lines("Hold the readings of a job against their limits."),
            "kelter check demo/jobs/washer-extractor.json")
        .addOption(Arguments.shop())
        .addPositional(Arguments.jobFile("a job file"));
  }

  @Override
  public void run(Invocation invocation) {
    Workshop workshop = invocation.workshop();
    Job job = workshop.read(invocation.argument()).job();
    List<Caution> cautions = workshop.cautions(job);
    List<Finding> findings = workshop.findings(job);
    if (invocation.isJson()) {
      invocation.terminal().printUtf8(ResultJson.findings(job, cautions, findings));
    } else {
      Terminal terminal = invocation.terminal();
      terminal.print(
          InstrumentsText.of(cautions, terminal)
              + FindingsText.of(job, findings, workshop.rule(), terminal));
    }
  }
}

package kelter.cli.command;

import java.util.List;
import kelter.cli.json.ResultJson;
import kelter.cli.terminal.Terminal;
import kelter.cli.text.FindingsText;
import kelter.cli.text.JobText;
import kelter.cli.wiring.Workshop;
import kelter.core.check.Finding;
import kelter.core.job.Job;
import kelter.core.safety.Caution;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** {@code kelter check JOB}: the findings. */
final class CheckCommand implements Command {

  private static final String RISK = "--risk";

  @Override
  public CommandSpec spec() {
    return Arguments.command(
            "check",
            Arguments.lines("Hold the readings of a job against their limits."),
            "kelter check demo/jobs/washer-extractor.json",
            "kelter check --risk demo/jobs/heater-coarse.json")
        .addOption(Arguments.shop())
        .addOption(
            OptionSpec.builder(RISK)
                .type(boolean.class)
                .description("also tell the risks of a wrong verdict, and guard bands")
                .build())
        .addPositional(Arguments.jobFile("a job file"));
  }

  @Override
  public void run(Invocation invocation) {
    Workshop workshop = invocation.workshop();
    Job job = workshop.read(invocation.argument()).job();
    List<Caution> cautions = workshop.cautions(job);
    List<Finding> findings = workshop.findings(job);
    boolean risk = invocation.given().hasMatchedOption(RISK);
    if (invocation.isJson()) {
      invocation
          .terminal()
          .printUtf8(ResultJson.findings(job, cautions, findings, workshop.settling(job), risk));
    } else {
      Terminal terminal = invocation.terminal();
      terminal.print(
          JobText.cautions(cautions, terminal)
              + FindingsText.of(job, findings, workshop.settling(job), risk, terminal));
    }
  }
}

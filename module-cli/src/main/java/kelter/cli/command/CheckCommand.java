package kelter.cli.command;

import java.util.List;
import kelter.cli.json.ResultJson;
import kelter.cli.terminal.Terminal;
import kelter.cli.text.FindingsText;
import kelter.cli.text.JobText;
import kelter.cli.usage.CommandOption;
import kelter.cli.usage.CommandUsage;
import kelter.core.check.Finding;
import kelter.core.job.Job;
import kelter.core.safety.Caution;
import kelter.core.workshop.Case;

/** {@code kelter check JOB}: the findings. */
final class CheckCommand implements Command {

  private static final CommandOption RISK =
      CommandOption.flag("--risk", "also tell the risks of a wrong verdict, and guard bands");

  @Override
  public CommandUsage usage() {
    return new CommandUsage(
        "check",
        "Hold the readings of a job against their limits.",
        "",
        List.of(RISK, Invocation.SHOP),
        List.of(Invocation.jobFile("a job file")),
        List.of(
            "kelter check demo/jobs/washer-extractor.json",
            "kelter check --risk demo/jobs/heater-coarse.json"));
  }

  @Override
  public void run(Invocation invocation) {
    Case machine = invocation.open();
    Job job = machine.job();
    List<Caution> cautions = machine.cautions();
    List<Finding> findings = machine.findings();
    boolean risk = invocation.given().has(RISK);
    Terminal terminal = invocation.terminal();
    Command.show(
        invocation,
        () -> ResultJson.findings(job, cautions, findings, machine.settling(), risk),
        () -> JobText.cautions(cautions, terminal) + FindingsText.of(machine, risk, terminal));
  }
}

package kelter.cli.command.diagnosis;

import java.util.List;
import kelter.cli.command.Command;
import kelter.cli.command.Invocation;
import kelter.cli.json.ResultJson;
import kelter.cli.terminal.Terminal;
import kelter.cli.text.FindingsText;
import kelter.cli.text.JobText;
import kelter.cli.usage.CommandOption;
import kelter.cli.usage.CommandUsage;
import kelter.core.workshop.Case;

/** {@code kelter check JOB}: the findings. */
public final class CheckCommand implements Command {

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
    boolean risk = invocation.given().has(RISK);
    Terminal terminal = invocation.terminal();
    Command.show(
        invocation,
        () -> ResultJson.findings(machine, risk),
        () ->
            JobText.cautions(machine.cautions(), terminal)
                + FindingsText.of(machine, risk, terminal));
  }
}

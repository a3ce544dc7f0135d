package kelter.cli.command;

import java.util.List;
import kelter.cli.json.ResultJson;
import kelter.cli.terminal.Terminal;
import kelter.cli.text.JobText;
import kelter.cli.text.WeighingText;
import kelter.cli.wiring.Workshop;
import kelter.core.job.Job;
import kelter.core.option.Weigher;
import kelter.core.option.Weighing;
import kelter.core.problem.InputException;
import kelter.core.safety.Caution;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** {@code kelter weigh JOB}: repair or replace. */
final class WeighCommand implements Command {

  private static final String SEED = "--seed";
  private static final long USUAL_SEED = 1;

  @Override
  public CommandSpec spec() {
    return Arguments.command(
            "weigh",
            Arguments.lines(
                "Weigh the repairs of a job against a new machine, by cost over the years."),
            "kelter weigh demo/jobs/washer-extractor.json")
        .addOption(
            OptionSpec.builder(SEED)
                .paramLabel("N")
                .type(Long.class)
                .description("seed of the draws (default 1); the same seed gives the same figures")
                .build())
        .addOption(Arguments.shop())
        .addPositional(Arguments.jobFile("a job file with prices"));
  }

  @Override
  public void run(Invocation invocation) {
    Workshop workshop = invocation.workshop();
    Job job = workshop.read(invocation.argument()).job();
    Weigher weigher =
        workshop
            .weigher()
            .orElseThrow(() -> new InputException("weigh", "no module that weighs is loaded", ""));
    long seed = invocation.<Long>option(SEED).orElse(USUAL_SEED);
    Weighing weighing = weigher.weigh(job, workshop.diagnose(job), seed);
    List<Caution> cautions = workshop.cautions(job);
    Terminal terminal = invocation.terminal();
    if (invocation.isJson()) {
      terminal.printUtf8(ResultJson.weighing(job, cautions, weighing));
    } else {
      terminal.print(
          JobText.cautions(cautions, terminal) + WeighingText.of(job, weighing, terminal));
    }
  }
}

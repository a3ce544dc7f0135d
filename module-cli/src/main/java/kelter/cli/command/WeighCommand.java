package kelter.cli.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import kelter.cli.json.WeighingJson;
import kelter.cli.terminal.Terminal;
import kelter.cli.text.JobText;
import kelter.cli.weighing.Weighed;
import kelter.cli.weighing.WeighingChart;
import kelter.cli.weighing.WeighingText;
import kelter.cli.wiring.Workshop;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.file.json.JsonFile;
import kelter.core.job.Job;
import kelter.core.option.CarbonBalance;
import kelter.core.option.Reasons;
import kelter.core.option.Weigher;
import kelter.core.option.Weighing;
import kelter.core.problem.InputException;
import kelter.core.safety.Caution;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** {@code kelter weigh JOB}: repair or replace. */
final class WeighCommand implements Command {

  private static final String SEED = "--seed";
  private static final String WHY = "--why";
  private static final String CARBON = "--carbon";
  private static final String PLOT = "--plot";
  private static final String DRAWING = ".svg";
  private static final String NOTHING_TO_DRAW = "the module that weighs gives nothing to draw";
  private static final long USUAL_SEED = 1;

  @Override
  public CommandSpec spec() {
    return Arguments.command(
            "weigh",
            Arguments.lines(
                "Weigh the repairs of a job against a new machine, by cost over the years."),
            "kelter weigh demo/jobs/washer-extractor.json",
            "kelter weigh --why demo/jobs/washer-extractor.json",
            "kelter weigh --plot cost.svg demo/jobs/washer-extractor.json")
        .addOption(
            OptionSpec.builder(WHY)
                .type(boolean.class)
                .description("also what would turn the answer, odds, regret, cost by the years")
                .build())
        .addOption(
            OptionSpec.builder(PLOT)
                .paramLabel("FILE.svg")
                .type(Path.class)
                .description("also draw cost by the years and odds into this file")
                .build())
        .addOption(
            OptionSpec.builder(CARBON)
                .type(boolean.class)
                .description("also what keeping and replacing the machine emit")
                .build())
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
    Optional<Path> plot = invocation.option(PLOT);
    plot.ifPresent(WeighCommand::requireDrawing);
    Workshop workshop = invocation.workshop();
    Job job = workshop.read(invocation.argument()).job();
    Weigher weigher =
        workshop
            .weigher()
            .orElseThrow(() -> new InputException("weigh", "no module that weighs is loaded", ""));
    long seed = invocation.<Long>option(SEED).orElse(USUAL_SEED);
    Diagnosis diagnosis = workshop.diagnose(job);
    Weighing weighing = weigher.weigh(job, diagnosis, seed);
    boolean asked = invocation.given().hasMatchedOption(WHY);
    Optional<Reasons> reasons =
        asked || plot.isPresent() ? weigher.explain(job, diagnosis, seed) : Optional.empty();
    if (plot.isPresent()) {
      Reasons drawn = reasons.orElseThrow(() -> new InputException(PLOT, NOTHING_TO_DRAW, ""));
      JsonFile.write(WeighingChart.of(job, weighing, drawn), plot.get());
    }
    Optional<CarbonBalance> carbon =
        invocation.given().hasMatchedOption(CARBON)
            ? weigher.carbon(job, diagnosis)
            : Optional.empty();
    Weighed weighed = new Weighed(job, weighing, asked ? reasons : Optional.empty(), carbon);
    show(invocation, weighed, workshop.cautions(job));
  }

  /** The drawing takes the place of an older one, but never of a file of another kind. */
  private static void requireDrawing(Path file) {
    if (!file.toString().toLowerCase(Locale.ROOT).endsWith(DRAWING)) {
      throw new InputException(
          file.toString(), "is not the name of a drawing", "let it end in " + DRAWING);
    }
  }

  private static void show(Invocation invocation, Weighed weighed, List<Caution> cautions) {
    Terminal terminal = invocation.terminal();
    if (invocation.isJson()) {
      terminal.printUtf8(WeighingJson.of(weighed, cautions));
    } else {
      terminal.print(JobText.cautions(cautions, terminal) + WeighingText.of(weighed, terminal));
    }
  }
}

package kelter.cli.command.work;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import kelter.cli.advice.PriceAdvice;
import kelter.cli.command.Command;
import kelter.cli.command.Invocation;
import kelter.cli.json.WeighingJson;
import kelter.cli.terminal.Terminal;
import kelter.cli.text.JobText;
import kelter.cli.usage.CommandOption;
import kelter.cli.usage.CommandUsage;
import kelter.cli.usage.ValueKind;
import kelter.cli.weighing.Weighed;
import kelter.cli.weighing.WeighingChart;
import kelter.cli.weighing.WeighingScreen;
import kelter.cli.weighing.WeighingText;
import kelter.core.file.disk.TextFile;
import kelter.core.job.Job;
import kelter.core.option.CarbonBalance;
import kelter.core.option.Explained;
import kelter.core.option.Reasons;
import kelter.core.problem.InputException;
import kelter.core.safety.Caution;
import kelter.core.workshop.Case;

/** {@code kelter weigh JOB}: repair or replace. */
public final class WeighCommand implements Command {

  private static final CommandOption SEED =
      CommandOption.one(
          "--seed",
          ValueKind.WHOLE,
          "N",
          "seed of the draws (default 1); the same seed gives the same figures");
  private static final CommandOption FULL =
      CommandOption.flag("--full", "all of it: every option, all assumptions and sources");
  private static final CommandOption WHY =
      CommandOption.flag(
          "--why", "also what would turn the answer, odds, regret, cost by the years");
  private static final CommandOption CARBON =
      CommandOption.flag("--carbon", "also what keeping and replacing the machine emit");
  private static final CommandOption PLOT =
      CommandOption.one(
          "--plot",
          ValueKind.FILE,
          "FILE.svg",
          "also draw cost by the years and odds into this file");
  private static final String DRAWING = ".svg";
  private static final String NOTHING_TO_DRAW = "the module that weighs gives nothing to draw";

  /** From which chance is drawn unless another one is given. */
  public static final long USUAL_SEED = 1;

  @Override
  public CommandUsage usage() {
    return new CommandUsage(
        "weigh",
        "Weigh repairs against a new machine, by cost over the years.",
        "",
        List.of(FULL, WHY, PLOT, CARBON, SEED, Invocation.WITHOUT_BOOK, Invocation.SHOP),
        List.of(Invocation.jobFile("a job file with prices")),
        List.of(
            "kelter weigh demo/jobs/washer-extractor.json",
            "kelter weigh --why demo/jobs/washer-extractor.json",
            "kelter weigh --plot cost.svg demo/jobs/washer-extractor.json"));
  }

  @Override
  public boolean diagnoses() {
    return true;
  }

  @Override
  public void run(Invocation invocation) {
    Optional<Path> plot = invocation.given().path(PLOT);
    if (plot.isPresent()) {
      requireDrawing(plot.get());
    }
    Case machine = invocation.open();
    Job job = machine.job();
    long seed = invocation.given().whole(SEED, USUAL_SEED);
    invocation.advise(PriceAdvice.of(job, machine.remedies()));
    invocation.adviseOnShop(machine);
    Optional<CarbonBalance> carbon =
        invocation.given().has(CARBON) ? machine.carbon() : Optional.empty();
    boolean asked = invocation.given().has(WHY);
    boolean onOneScreen = isOnOneScreen(invocation);
    Explained explained =
        asked || onOneScreen || plot.isPresent()
            ? machine.explainedOptions(seed)
            : new Explained(machine.options(seed), Optional.empty());
    if (plot.isPresent()) {
      draw(job, explained, plot.get());
    }
    Optional<Reasons> reasons = asked || onOneScreen ? explained.reasons() : Optional.empty();
    Weighed weighed = new Weighed(job, machine.vocabulary(), explained.weighing(), reasons, carbon);
    List<Caution> cautions = machine.cautions();
    Terminal terminal = invocation.terminal();
    Command.show(
        invocation,
        () -> WeighingJson.of(weighed, machine),
        () ->
            onOneScreen
                ? WeighingScreen.of(weighed, cautions, terminal)
                : JobText.cautions(cautions, terminal) + WeighingText.of(weighed, terminal));
  }

  /** Whether neither all of it was asked for nor anything that stands in all of it only. */
  private static boolean isOnOneScreen(Invocation invocation) {
    boolean more = false;
    for (CommandOption option : List.of(FULL, WHY, PLOT, CARBON)) {
      more |= invocation.given().has(option);
    }
    return !more && !invocation.isJson();
  }

  private static void draw(Job job, Explained explained, Path file) {
    if (explained.reasons().isEmpty()) {
      throw new InputException(PLOT.name(), NOTHING_TO_DRAW, "");
    }
    TextFile.write(file, WeighingChart.of(job, explained.weighing(), explained.reasons().get()));
  }

  /** The drawing takes the place of an older one, but never of a file of another kind. */
  private static void requireDrawing(Path file) {
    if (!file.toString().toLowerCase(Locale.ROOT).endsWith(DRAWING)) {
      throw new InputException(
          file.toString(), "is not the name of a drawing", "let it end in " + DRAWING);
    }
  }
}

package kelter.cli.command.diagnosis;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import kelter.cli.command.Command;
import kelter.cli.command.Invocation;
import kelter.cli.command.KindWords;
import kelter.cli.json.SimulationJson;
import kelter.cli.simulation.SimulationText;
import kelter.cli.terminal.Terminal;
import kelter.cli.usage.CommandArgument;
import kelter.cli.usage.CommandOption;
import kelter.cli.usage.CommandUsage;
import kelter.cli.usage.Given;
import kelter.cli.usage.ValueKind;
import kelter.core.catalogue.Kind;
import kelter.core.diagnosis.simulation.SimulationPlan;
import kelter.core.diagnosis.simulation.SimulationReport;
import kelter.core.job.Appliance;
import kelter.core.job.Nameplate;
import kelter.core.problem.InputException;
import kelter.core.workshop.Workshop;

/** {@code kelter simulate JOB-or-KIND}: how good the diagnosis is, on machines that are drawn. */
public final class SimulateCommand implements Command {

  private static final CommandOption JOBS =
      CommandOption.one("--jobs", ValueKind.COUNT, "N", "how many machines (default 2000)")
          .or("-n");
  private static final CommandOption LED =
      CommandOption.one(
          "--led",
          ValueKind.COUNT,
          "N",
          "how many of them are also measured reading by reading, which takes far longer (default"
              + " 100)");
  private static final CommandOption SYMPTOMS =
      CommandOption.one(
          "--symptoms",
          ValueKind.COUNT,
          "N",
          "for how many symptoms the owner is asked before anything is measured, 0 to 8 (default"
              + " 6)");
  private static final CommandOption SEED =
      CommandOption.one("--seed", ValueKind.WHOLE, "N", "seed of the draws (default 1)");
  private static final CommandOption THREADS =
      CommandOption.one(
          "--threads",
          ValueKind.COUNT,
          "N",
          "how many threads; the result is the same (default: one for each processor)");
  private static final CommandOption WRONG_BY =
      CommandOption.one(
          "--wrong-by",
          ValueKind.NUMBER,
          "PERCENT",
          "the curves of the machines lie so much higher than those that the diagnosis is told");

  private static final int USUAL_JOBS = 2000;
  private static final int USUAL_LED = 100;
  private static final int USUAL_SYMPTOMS = 6;
  private static final long USUAL_SEED = 1;
  private static final int STEPS_OF_PROGRESS = 100;

  @Override
  public CommandUsage usage() {
    return new CommandUsage(
        "simulate",
        "Try the diagnosis on machines that are drawn by chance.",
        "Their faults are known, and so it shows how often the diagnosis is right, whether it is"
            + " right as often as it says, and how soon it is sure when it leads the measuring.",
        List.of(
            JOBS, LED, SYMPTOMS, SEED, THREADS, WRONG_BY, Invocation.WITHOUT_BOOK, Invocation.SHOP),
        List.of(
            CommandArgument.one(
                "JOB-or-KIND",
                ValueKind.FILE,
                "a job file, for its machine, or a kind of appliance")),
        List.of(
            "kelter simulate demo/jobs/washer-extractor.json -n 500",
            "kelter simulate glasswasher --led 0",
            "kelter simulate demo/jobs/tumble-dryer.json --symptoms 8",
            "kelter simulate demo/jobs/washer-extractor.json --wrong-by 10"));
  }

  @Override
  public boolean diagnoses() {
    return true;
  }

  @Override
  public void run(Invocation invocation) {
    String what = invocation.argument();
    Workshop workshop = invocation.workshop();
    Terminal terminal = invocation.terminal();
    Appliance appliance = appliance(what, invocation);
    double wrongBy = invocation.given().number(WRONG_BY, 0) / 100;
    SimulationPlan plan;
    SimulationReport report;
    try {
      plan = plan(invocation, workshop, appliance);
      report = workshop.simulate(appliance, 1 + wrongBy, plan, progress(plan.jobs(), terminal));
    } catch (IllegalArgumentException unusable) {
      throw new InputException(what, unusable.getMessage(), "");
    } finally {
      terminal.progress("");
    }
    Command.show(
        invocation,
        () -> SimulationJson.of(appliance, plan, wrongBy, report),
        () -> SimulationText.of(appliance, plan, wrongBy, report, terminal));
  }

  private static SimulationPlan plan(
      Invocation invocation, Workshop workshop, Appliance appliance) {
    Given given = invocation.given();
    int jobs = given.count(JOBS, USUAL_JOBS);
    return new SimulationPlan(
        jobs,
        given.count(LED, Math.min(jobs, USUAL_LED)),
        given.count(SYMPTOMS, USUAL_SYMPTOMS),
        given.whole(SEED, USUAL_SEED),
        given.count(
            THREADS,
            Math.min(SimulationPlan.MOST_THREADS, Runtime.getRuntime().availableProcessors())),
        workshop.world(appliance));
  }

  private static IntConsumer progress(int jobs, Terminal terminal) {
    int step = Math.max(1, jobs / STEPS_OF_PROGRESS);
    return done -> {
      if (done % step == 0) {
        terminal.progress(done + " of " + jobs + " machines");
      }
    };
  }

  private static Appliance appliance(String what, Invocation invocation) {
    if (isFile(what) || invocation.shop().hasJob(what)) {
      return invocation.job().appliance();
    }
    Workshop workshop = invocation.workshop();
    Optional<Kind> kind = KindWords.kind(what, workshop.kinds());
    return workshop.whole(
        new Appliance(
            kind.map(Kind::id).orElse(KindWords.OTHER),
            "",
            "",
            "",
            Optional.empty(),
            Nameplate.UNREADABLE,
            List.of()));
  }

  private static boolean isFile(String what) {
    try {
      return Files.exists(Path.of(what));
    } catch (InvalidPathException none) {
      return false;
    }
  }
}

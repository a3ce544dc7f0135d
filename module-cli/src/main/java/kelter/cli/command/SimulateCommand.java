package kelter.cli.command;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntConsumer;
import kelter.cli.json.SimulationJson;
import kelter.cli.simulation.SimulationText;
import kelter.cli.template.Template;
import kelter.cli.terminal.Terminal;
import kelter.cli.wiring.Workshop;
import kelter.core.diagnosis.simulation.SimulationPlan;
import kelter.core.diagnosis.simulation.SimulationReport;
import kelter.core.job.Appliance;
import kelter.core.problem.InputException;
import kelter.core.quantity.Nearest;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** {@code kelter simulate JOB-or-KIND}: how good the diagnosis is, on machines that are drawn. */
final class SimulateCommand implements Command {

  private static final String JOBS = "--jobs";
  private static final String LED = "--led";
  private static final String SEED = "--seed";
  private static final String THREADS = "--threads";
  private static final String WRONG_BY = "--wrong-by";

  private static final int USUAL_JOBS = 2000;
  private static final int USUAL_LED = 100;
  private static final long USUAL_SEED = 1;
  private static final int STEPS_OF_PROGRESS = 100;

  @Override
  public CommandSpec spec() {
    return Arguments.command(
            "simulate",
            Arguments.lines(
                "Try the diagnosis on machines that are drawn by chance, whose faults are",
                "therefore known: how often it is right, whether it is right as often as it",
                "says, and how soon it is sure when it leads the measuring."),
            "kelter simulate demo/jobs/washer-extractor.json -n 500",
            "kelter simulate glasswasher --led 0",
            "kelter simulate demo/jobs/washer-extractor.json --wrong-by 10")
        .addOption(Arguments.shop())
        .addOption(number("N", Integer.class, "how many machines (default 2000)", "-n", JOBS))
        .addOption(
            number(
                "N",
                Integer.class,
                "how many of them are also measured reading by reading, which takes far longer"
                    + " (default 100)",
                LED))
        .addOption(number("N", Long.class, "seed of the draws (default 1)", SEED))
        .addOption(
            number(
                "N",
                Integer.class,
                "how many threads; the result is the same (default: one for each processor)",
                THREADS))
        .addOption(
            number(
                "PERCENT",
                Double.class,
                "the curves of the machines lie so much higher than those that the diagnosis is"
                    + " told",
                WRONG_BY))
        .addPositional(
            Arguments.parameter(
                "JOB-or-KIND",
                String.class,
                "a job file, for its machine, or a kind of appliance"));
  }

  private static OptionSpec number(
      String label, Class<?> type, String description, String... names) {
    return OptionSpec.builder(names).paramLabel(label).type(type).description(description).build();
  }

  @Override
  public void run(Invocation invocation) {
    String what = invocation.argument();
    Workshop workshop = invocation.workshop();
    Terminal terminal = invocation.terminal();
    Appliance appliance = appliance(what, workshop);
    double wrongBy = invocation.<Double>option(WRONG_BY).orElse(0.0) / 100;
    SimulationPlan plan;
    SimulationReport report;
    try {
      plan = plan(invocation, workshop);
      report = workshop.simulate(appliance, 1 + wrongBy, plan, progress(plan.jobs(), terminal));
    } catch (IllegalArgumentException unusable) {
      throw new InputException(what, unusable.getMessage(), "");
    } finally {
      terminal.progress("");
    }
    if (invocation.isJson()) {
      terminal.printUtf8(SimulationJson.of(appliance, plan, wrongBy, report));
    } else {
      terminal.print(SimulationText.of(appliance, plan, wrongBy, report, terminal));
    }
  }

  private static SimulationPlan plan(Invocation invocation, Workshop workshop) {
    int jobs = invocation.<Integer>option(JOBS).orElse(USUAL_JOBS);
    return new SimulationPlan(
        jobs,
        invocation.<Integer>option(LED).orElse(Math.min(jobs, USUAL_LED)),
        invocation.<Long>option(SEED).orElse(USUAL_SEED),
        invocation
            .<Integer>option(THREADS)
            .orElse(
                Math.min(SimulationPlan.MOST_THREADS, Runtime.getRuntime().availableProcessors())),
        workshop.world());
  }

  private static IntConsumer progress(int jobs, Terminal terminal) {
    int step = Math.max(1, jobs / STEPS_OF_PROGRESS);
    return done -> {
      if (done % step == 0) {
        terminal.progress(done + " of " + jobs + " machines");
      }
    };
  }

  private static Appliance appliance(String what, Workshop workshop) {
    if (Template.kinds().contains(what)) {
      String text = Template.of(what, LocalDate.EPOCH.toString(), workshop.vocabulary());
      return workshop.parse(text).job().appliance();
    }
    if (isFile(what)) {
      return workshop.read(Path.of(what)).job().appliance();
    }
    List<String> kinds = new ArrayList<>(Template.kinds());
    throw new InputException(
        what,
        "is neither a job file nor a known kind of appliance",
        Nearest.of(what, kinds)
            .map(near -> "did you mean '" + near + "'?")
            .orElse("known kinds: " + String.join(", ", kinds)));
  }

  private static boolean isFile(String what) {
    try {
      return Files.exists(Path.of(what));
    } catch (InvalidPathException none) {
      return false;
    }
  }
}

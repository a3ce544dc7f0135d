package kelter.cli.command.tool;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.cli.command.Command;
import kelter.cli.command.Invocation;
import kelter.cli.json.ComputationJson;
import kelter.cli.terminal.Terminal;
import kelter.cli.text.BudgetText;
import kelter.cli.text.ComputationText;
import kelter.cli.usage.CommandArgument;
import kelter.cli.usage.CommandOption;
import kelter.cli.usage.CommandUsage;
import kelter.cli.usage.ValueKind;
import kelter.core.module.Calculation;
import kelter.core.module.Computation;
import kelter.core.module.UncertaintyAnalysis;
import kelter.core.problem.InputException;
import kelter.core.problem.Mistake;
import kelter.core.problem.Problem;
import kelter.core.quantity.Nearest;
import kelter.core.uncertainty.montecarlo.MonteCarlo;

/** {@code kelter compute NAME k=v}: one calculation by itself. */
public final class ComputeCommand implements Command {

  private static final CommandOption BUDGET =
      CommandOption.flag("--budget", "where the uncertainty comes from, and a Monte Carlo check");
  private static final CommandOption SHARED =
      CommandOption.one(
          "--shared",
          ValueKind.TEXT,
          "NAMES",
          "with --budget: these inputs, with commas between them, have one error in common, as when"
              + " read with one instrument");
  private static final CommandOption SEED =
      CommandOption.one(
          "--seed",
          ValueKind.WHOLE,
          "N",
          "with --budget: seed of the Monte Carlo check (default 1)");
  private static final CommandOption TRIALS =
      CommandOption.one(
          "--trials",
          ValueKind.COUNT,
          "N",
          "with --budget: at most so many trials (default 100000)");

  @Override
  public CommandUsage usage() {
    return new CommandUsage(
        "compute",
        "Run one calculation, or tell what it takes.",
        "Without values it tells what the calculation takes; 'kelter modules' tells the names. An"
            + " uncertainty may stand behind a value: '26.4\u00a0ohm\u00a0±\u00a00.3',"
            + " '±\u00a01\u00a0%', '±\u00a00.3\u00a0(k=2)', '±\u00a00.3\u00a0(k=2.26,\u00a0dof=9)',"
            + " '±\u00a00.3\u00a0(triangular)' or '(U-shaped)'; without a word it is taken as"
            + " limits of error (rectangular). Several readings of one value are written with ;"
            + " between them. A result is told in the unit of the first value of its kind.",
        List.of(BUDGET, SHARED, SEED, TRIALS),
        List.of(
            CommandArgument.one("NAME", ValueKind.CALCULATION, "the name of a calculation"),
            CommandArgument.any("PARAMETER=VALUE", "what it takes, with units")),
        List.of(
            "kelter compute heater-resistance power=2kW voltage=230V",
            "kelter compute heater-resistance power='2kW±5%' voltage=230V --budget",
            "kelter compute heater-resistance"));
  }

  @Override
  public void run(Invocation invocation) {
    String name = invocation.argument();
    List<String> arguments = invocation.given().arguments();
    List<String> given = arguments.subList(1, arguments.size());
    List<Calculation> known = invocation.workshop().calculations();
    Calculation calculation = named(name, known);
    Terminal terminal = invocation.terminal();
    if (given.isEmpty() && calculation.parameters().stream().anyMatch(p -> p.usual().isEmpty())) {
      Command.show(
          invocation,
          () -> ComputationJson.describe(calculation),
          () -> ComputationText.describe(calculation, terminal));
      return;
    }
    Computation computation = Computation.of(calculation, values(given));
    Optional<UncertaintyAnalysis> analysis = analysis(computation, invocation);
    Command.show(
        invocation,
        () -> ComputationJson.of(computation, analysis),
        () ->
            ComputationText.of(computation, terminal)
                + analysis.map(found -> BudgetText.of(found, terminal)).orElse(""));
  }

  private static Optional<UncertaintyAnalysis> analysis(
      Computation computation, Invocation invocation) {
    if (!invocation.given().has(BUDGET)) {
      for (CommandOption option : List.of(SHARED, SEED, TRIALS)) {
        if (invocation.given().has(option)) {
          throw new InputException(
              option.name(), "says how to draw up a budget", "add " + BUDGET.name());
        }
      }
      return Optional.empty();
    }
    List<String> shared =
        invocation
            .given()
            .text(SHARED)
            .map(names -> List.of(names.strip().split("\\s*,\\s*")))
            .orElse(List.of());
    return Optional.of(UncertaintyAnalysis.of(computation, shared, settings(invocation)));
  }

  private static MonteCarlo.Settings settings(Invocation invocation) {
    MonteCarlo.Settings usual = MonteCarlo.Settings.USUAL;
    try {
      return new MonteCarlo.Settings(
          invocation.given().whole(SEED, usual.seed()),
          invocation.given().count(TRIALS, usual.mostTrials()));
    } catch (IllegalArgumentException outside) {
      throw new InputException(BUDGET.name(), outside.getMessage(), "");
    }
  }

  private static Calculation named(String name, List<Calculation> known) {
    return known.stream()
        .filter(calculation -> calculation.id().equals(name))
        .findFirst()
        .orElseThrow(() -> no(name, known));
  }

  private static InputException no(String name, List<Calculation> known) {
    String remedy =
        Nearest.of(name, known.stream().map(Calculation::id).toList())
            .map(near -> "did you mean '" + near + "'?")
            .orElse("'kelter modules' tells the names");
    return new InputException(name, "is not a known calculation", remedy);
  }

  private static Map<String, String> values(List<String> given) {
    List<Problem> problems = new ArrayList<>();
    Map<String, String> values = new LinkedHashMap<>();
    for (String pair : given) {
      int sign = pair.indexOf('=');
      if (sign <= 0) {
        problems.add(new Problem(pair, "is not of the form parameter=value", ""));
      } else if (values.put(pair.substring(0, sign).strip(), pair.substring(sign + 1)) != null) {
        problems.add(
            new Problem(Mistake.TWICE, pair, "gives a parameter twice", "keep one of them"));
      }
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    return values;
  }
}

package kelter.cli.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.cli.json.ComputationJson;
import kelter.cli.terminal.Terminal;
import kelter.cli.text.BudgetText;
import kelter.cli.text.ComputationText;
import kelter.core.module.Calculation;
import kelter.core.module.Computation;
import kelter.core.module.UncertaintyAnalysis;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.quantity.Nearest;
import kelter.core.uncertainty.montecarlo.MonteCarlo;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** {@code kelter compute NAME k=v}: one calculation by itself. */
final class ComputeCommand implements Command {

  private static final String BUDGET = "--budget";
  private static final String SHARED = "--shared";
  private static final String SEED = "--seed";
  private static final String TRIALS = "--trials";

  @Override
  public CommandSpec spec() {
    return Arguments.command(
            "compute",
            Arguments.lines(
                "Run one calculation by itself; without values, tell what it takes.",
                "An uncertainty may stand behind a value: '26.4 ohm ± 0.3', '± 1 %%',",
                "'± 0.3 (k=2)', '± 0.3 (k=2.26, dof=9)', '± 0.3 (triangular)' or '(U-shaped)';",
                "without a word it is taken as limits of error (rectangular). Several readings",
                "of one value are written with ; between them."),
            "kelter compute heater-resistance power=2kW voltage=230V",
            "kelter compute heater-resistance power='2kW±5%%' voltage=230V --budget",
            "kelter compute heater-resistance",
            "kelter modules                      tells the names")
        .addOption(
            OptionSpec.builder(BUDGET)
                .type(boolean.class)
                .description("where the uncertainty comes from, and a Monte Carlo check")
                .build())
        .addOption(
            OptionSpec.builder(SHARED)
                .paramLabel("NAMES")
                .type(String.class)
                .description(
                    "with --budget: these inputs, with commas between them, have one "
                        + "error in common, as when read with one instrument")
                .build())
        .addOption(
            OptionSpec.builder(SEED)
                .paramLabel("N")
                .type(Long.class)
                .description("with --budget: seed of the Monte Carlo check (default 1)")
                .build())
        .addOption(
            OptionSpec.builder(TRIALS)
                .paramLabel("N")
                .type(Integer.class)
                .description("with --budget: at most so many trials (default 100000)")
                .build())
        .addPositional(Arguments.parameter("NAME", String.class, "the name of a calculation"))
        .addPositional(
            PositionalParamSpec.builder()
                .index("1..*")
                .arity("0..*")
                .paramLabel("PARAMETER=VALUE")
                .type(List.class)
                .auxiliaryTypes(String.class)
                .description("what it takes, with units")
                .build());
  }

  @Override
  public void run(Invocation invocation) {
    String name = invocation.argument();
    List<String> given = given(invocation);
    List<Calculation> known = invocation.workshop().calculations();
    Calculation calculation =
        known.stream()
            .filter(c -> c.id().equals(name))
            .findFirst()
            .orElseThrow(() -> no(name, known));
    Terminal terminal = invocation.terminal();
    if (given.isEmpty() && calculation.parameters().stream().anyMatch(p -> p.usual().isEmpty())) {
      terminal.print(ComputationText.describe(calculation, terminal));
      return;
    }
    Computation computation = Computation.of(calculation, values(given));
    Optional<UncertaintyAnalysis> analysis = analysis(computation, invocation);
    if (invocation.isJson()) {
      terminal.printUtf8(ComputationJson.of(computation, analysis));
    } else {
      terminal.print(
          ComputationText.of(computation, terminal)
              + analysis.map(found -> BudgetText.of(found, terminal)).orElse(""));
    }
  }

  private static Optional<UncertaintyAnalysis> analysis(
      Computation computation, Invocation invocation) {
    if (!invocation.given().hasMatchedOption(BUDGET)) {
      for (String option : List.of(SHARED, SEED, TRIALS)) {
        if (invocation.given().hasMatchedOption(option)) {
          throw new InputException(option, "says how to draw up a budget", "add " + BUDGET);
        }
      }
      return Optional.empty();
    }
    List<String> shared =
        invocation
            .<String>option(SHARED)
            .map(names -> List.of(names.strip().split("\\s*,\\s*")))
            .orElse(List.of());
    return Optional.of(UncertaintyAnalysis.of(computation, shared, settings(invocation)));
  }

  private static MonteCarlo.Settings settings(Invocation invocation) {
    MonteCarlo.Settings usual = MonteCarlo.Settings.USUAL;
    try {
      return new MonteCarlo.Settings(
          invocation.<Long>option(SEED).orElse(usual.seed()),
          invocation.<Integer>option(TRIALS).orElse(usual.mostTrials()));
    } catch (IllegalArgumentException outside) {
      throw new InputException(BUDGET, outside.getMessage(), "");
    }
  }

  private static List<String> given(Invocation invocation) {
    return invocation.given().hasMatchedPositional(1)
        ? invocation.given().matchedPositional(1).getValue()
        : List.of();
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
        problems.add(new Problem(pair, "gives a parameter twice", "keep one of them"));
      }
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    return values;
  }
}

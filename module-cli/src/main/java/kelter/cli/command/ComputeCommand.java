package kelter.cli.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kelter.cli.json.ResultJson;
import kelter.cli.terminal.Terminal;
import kelter.cli.text.ComputationText;
import kelter.core.module.Calculation;
import kelter.core.module.Computation;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.quantity.Nearest;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** {@code kelter compute NAME k=v}: one calculation by itself. */
final class ComputeCommand implements Command {

  @Override
  public CommandSpec spec() {
    return Arguments.command(
            "compute",
            Arguments.lines(
                "Run one calculation by itself; without values, tell what it takes.",
                "An uncertainty may stand behind a value: resistance='26.4 ohm ± 0.3'."),
            "kelter compute heater-resistance power=2kW voltage=230V",
            "kelter compute heater-resistance",
            "kelter modules                      tells the names")
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
    if (invocation.isJson()) {
      terminal.printUtf8(ResultJson.computation(computation));
    } else {
      terminal.print(ComputationText.of(computation, terminal));
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

package kelter.cli.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kelter.cli.json.ResultJson;
import kelter.cli.text.ComputationText;
import kelter.core.module.Calculation;
import kelter.core.module.Computation;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.quantity.Nearest;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code kelter compute NAME k=v}: one calculation by itself. */
@Command(
    name = "compute",
    description = {
      "Run one calculation by itself; without values, tell what it takes.",
      "An uncertainty may stand behind a value: resistance='26.4 ohm ± 0.3'."
    },
    footer = {
      "",
      "Examples:",
      "  kelter compute heater-resistance power=2kW voltage=230V",
      "  kelter compute heater-resistance",
      "  kelter modules                      tells the names"
    })
final class ComputeCommand implements Action {

  @Mixin private Shared shared;

  @Parameters(index = "0", paramLabel = "NAME", description = "the name of a calculation")
  private String name;

  @Parameters(
      index = "1..*",
      arity = "0..*",
      paramLabel = "PARAMETER=VALUE",
      description = "what it takes, with units")
  private List<String> given = new ArrayList<>();

  @Override
  public Shared shared() {
    return shared;
  }

  @Override
  public void run(Shared options) {
    List<Calculation> known = options.workshop().calculations();
    Calculation calculation =
        known.stream().filter(c -> c.id().equals(name)).findFirst().orElseThrow(() -> no(known));
    if (given.isEmpty() && calculation.parameters().stream().anyMatch(p -> p.usual().isEmpty())) {
      options.terminal().print(ComputationText.describe(calculation, options.terminal()));
      return;
    }
    Computation computation = Computation.of(calculation, values());
    if (options.isJson()) {
      options.terminal().printUtf8(ResultJson.computation(computation));
    } else {
      options.terminal().print(ComputationText.of(computation, options.terminal()));
    }
  }

  private InputException no(List<Calculation> known) {
    String remedy =
        Nearest.of(name, known.stream().map(Calculation::id).toList())
            .map(near -> "did you mean '" + near + "'?")
            .orElse("'kelter modules' tells the names");
    return new InputException(name, "is not a known calculation", remedy);
  }

  private Map<String, String> values() {
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

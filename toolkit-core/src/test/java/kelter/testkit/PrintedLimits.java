package kelter.testkit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kelter.core.module.Calculation;
import kelter.core.module.Computation;
import kelter.core.module.Parameter;
import kelter.core.problem.InputException;
import kelter.core.quantity.Quantity;

/**
 * Whether a calculation takes every limit that it prints, and what comes out there is finite. The
 * other figures are those of an ordinary machine or, where a figure at its limit goes with no such
 * machine, of another one.
 *
 * @param ordinary figures that go together, where nothing is usual: by parameter, or by calculation
 *     and parameter with a space between
 * @param others what is different about other machines, by parameter
 */
public record PrintedLimits(Map<String, String> ordinary, List<Map<String, String>> others) {

  /** Copies both. */
  public PrintedLimits {
    ordinary = Map.copyOf(ordinary);
    others = List.copyOf(others);
  }

  /**
   * The limits that no machine takes, with what the ordinary one says.
   *
   * @param calculation the calculation
   * @return for each of them a line; none if every limit is taken
   */
  public List<String> refused(Calculation calculation) {
    List<String> refused = new ArrayList<>();
    for (Parameter parameter : calculation.parameters()) {
      for (String limit : printed(parameter)) {
        String said = trouble(calculation, parameter.id(), limit, Map.of());
        if (!said.isEmpty() && !anyOtherTakes(calculation, parameter.id(), limit)) {
          refused.add(
              "%s with %s = %s: %s".formatted(calculation.id(), parameter.id(), limit, said));
        }
      }
    }
    return refused;
  }

  /** The low and the high end with their unit; none where words are to choose from. */
  private static List<String> printed(Parameter parameter) {
    return parameter.choices().isEmpty()
        ? List.of(
            Quantity.ofSi(parameter.low(), 0, parameter.kind()).display(),
            Quantity.ofSi(parameter.high(), 0, parameter.kind()).display())
        : List.of();
  }

  private boolean anyOtherTakes(Calculation calculation, String id, String limit) {
    return others.stream().anyMatch(other -> trouble(calculation, id, limit, other).isEmpty());
  }

  private String trouble(
      Calculation calculation, String id, String limit, Map<String, String> different) {
    Map<String, String> given = new HashMap<>();
    for (Parameter parameter : calculation.parameters()) {
      String other = different.get(parameter.id());
      if (other != null) {
        given.put(parameter.id(), other);
      } else if (parameter.usual().isEmpty()) {
        String own = ordinary.get(calculation.id() + " " + parameter.id());
        given.put(parameter.id(), own != null ? own : ordinary.get(parameter.id()));
      }
    }
    given.put(id, limit);
    try {
      return Computation.of(calculation, given).results().stream()
          .filter(result -> !Double.isFinite(result.quantity().si()))
          .map(Computation.Result::toString)
          .findFirst()
          .orElse("");
    } catch (InputException no) {
      return no.getMessage();
    }
  }
}

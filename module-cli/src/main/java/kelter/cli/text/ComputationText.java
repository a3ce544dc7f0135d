package kelter.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import kelter.cli.terminal.Terminal;
import kelter.core.module.Calculation;
import kelter.core.module.Computation;
import kelter.core.module.Parameter;
import kelter.core.quantity.Quantity;

/** A calculation, run or described, for a person. */
public final class ComputationText {

  private ComputationText() {}

  /**
   * Writes what came out of a calculation.
   *
   * @param computation the computation
   * @param terminal where it will be shown
   * @return the text, with a line end after the last line
   */
  public static String of(Computation computation, Terminal terminal) {
    Calculation calculation = computation.calculation();
    Layout layout = new Layout(terminal);
    new CautionLines(layout).write("  ", calculation.cautions());
    layout.heading(calculation.title());
    List<List<String>> rows = new ArrayList<>();
    for (Computation.Result result : computation.results()) {
      rows.add(List.of(result.output().id(), result.quantity().display(), result.output().title()));
    }
    layout.table("  ", rows);
    layout.blank();
    layout.hanging("  given    ", inputs(computation, true));
    if (computation.inputs().stream().anyMatch(input -> !input.given())) {
      layout.hanging("  assumed  ", inputs(computation, false));
    }
    about(calculation, layout);
    return layout.toString();
  }

  private static String inputs(Computation computation, boolean given) {
    return computation.inputs().stream()
        .filter(input -> input.given() == given)
        .map(input -> input.parameter().id() + " = " + input.text())
        .collect(Collectors.joining(", "));
  }

  /**
   * Describes a calculation without running it.
   *
   * @param calculation the calculation
   * @param terminal where it will be shown
   * @return the text, with a line end after the last line
   */
  public static String describe(Calculation calculation, Terminal terminal) {
    Layout layout = new Layout(terminal);
    layout.heading(calculation.id() + ": " + calculation.title());
    List<List<String>> rows = new ArrayList<>();
    for (Parameter parameter : calculation.parameters()) {
      rows.add(List.of(parameter.id(), parameter.title() + ", " + allowed(parameter)));
    }
    layout.table("  ", rows);
    layout.blank();
    about(calculation, layout);
    return layout.toString();
  }

  private static String allowed(Parameter parameter) {
    String range =
        parameter.choices().isEmpty()
            ? limit(parameter, parameter.low()) + " to " + limit(parameter, parameter.high())
            : String.join(", ", parameter.choices());
    return range + parameter.usual().map(usual -> "; if left out " + usual).orElse("");
  }

  private static String limit(Parameter parameter, double si) {
    return Double.isInfinite(si) ? "any" : Quantity.ofSi(si, 0, parameter.kind()).display();
  }

  private static void about(Calculation calculation, Layout layout) {
    layout.hanging("  formula  ", calculation.formula());
    layout.hanging("  range    ", calculation.range());
    layout.hanging("  source   ", calculation.source().display());
  }
}

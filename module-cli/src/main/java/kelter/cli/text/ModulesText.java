package kelter.cli.text;

import java.util.ArrayList;
import java.util.List;
import kelter.cli.terminal.Terminal;
import kelter.core.check.Check;
import kelter.core.module.Calculation;
import kelter.core.module.CalculationModule;

/** What is loaded, for a person. */
public final class ModulesText {

  private ModulesText() {}

  /**
   * Writes what the modules can compute and check.
   *
   * @param modules the modules
   * @param terminal where it will be shown
   * @return the text, with a line end after the last line
   */
  public static String of(List<CalculationModule> modules, Terminal terminal) {
    Layout layout = new Layout(terminal);
    for (CalculationModule module : modules) {
      layout.heading(
          "%s %s: %s"
              .formatted(module.about().id(), module.about().version(), module.about().title()));
      List<List<String>> rows = new ArrayList<>();
      for (Calculation calculation : module.calculations()) {
        rows.add(
            List.of(calculation.id(), calculation.title() + ". " + calculation.source().display()));
      }
      for (Check check : module.checks()) {
        rows.add(List.of("check " + check.id(), check.title()));
      }
      module
          .componentKinds()
          .forEach(
              kind ->
                  rows.add(
                      List.of(
                          "part " + kind.id(),
                          String.join(
                              ", ", kind.observables().stream().map(o -> o.id()).toList()))));
      if (module.weigher().isPresent()) {
        rows.add(List.of("weigh", "repair or replace"));
      }
      layout.table("  ", rows);
    }
    return layout.toString();
  }
}

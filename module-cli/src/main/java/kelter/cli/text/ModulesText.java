package kelter.cli.text;

import java.util.List;
import kelter.cli.terminal.Terminal;
import kelter.core.module.Calculation;
import kelter.core.module.CalculationModule;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;

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
      for (Calculation calculation : module.calculations()) {
        layout.hanging("  ", calculation.id() + ": " + calculation.title());
        layout.hanging("      ", calculation.source().display());
      }
      module.parts().checks().stream()
          .map(check -> check.id() + ": " + check.title())
          .distinct()
          .forEach(check -> layout.hanging("  check ", check));
      for (ComponentKind kind : module.parts().kinds()) {
        List<String> observables = kind.observables().stream().map(Observable::id).toList();
        layout.hanging("  part ", kind.id() + ": " + String.join(", ", observables));
      }
      if (module.weigher().isPresent()) {
        layout.hanging("  ", "weighs repair against replacement");
      }
    }
    return layout.toString();
  }
}

package kelter.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import kelter.cli.terminal.Terminal;
import kelter.core.catalogue.KindCause;
import kelter.core.module.Calculation;
import kelter.core.module.CalculationModule;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Meaning;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Symptom;
import kelter.core.vocabulary.Vocabulary;
import kelter.core.workshop.Coverage;

/** What is loaded, for a person. */
public final class ModulesText {

  /** So many causes without a model are told of a kind. */
  private static final int WITHOUT = 4;

  private ModulesText() {}

  /**
   * Writes what the modules can compute and check, and the words for symptoms.
   *
   * @param modules the modules
   * @param vocabulary the words in which jobs are told
   * @param terminal where it will be shown
   * @return the text, with a line end after the last line
   */
  public static String of(
      List<CalculationModule> modules, Vocabulary vocabulary, Terminal terminal) {
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
    symptoms(vocabulary, layout);
    return layout.toString();
  }

  /**
   * Writes how much of what is behind calls has a model.
   *
   * @param coverage the coverage of each kind
   * @param terminal where it will be shown
   * @return the text
   */
  public static String coverage(List<Coverage> coverage, Terminal terminal) {
    Layout layout = new Layout(terminal);
    layout.heading("Share of causes with a model, by kind of machine; without one");
    List<List<String>> rows = new ArrayList<>();
    for (Coverage each : coverage) {
      String without =
          each.without().stream()
              .limit(WITHOUT)
              .map(KindCause::key)
              .collect(Collectors.joining(", "));
      rows.add(
          List.of(
              each.kind().id(),
              Math.round(100 * each.share()) + " %",
              without.isEmpty() ? "-" : without));
    }
    return layout.table("  ", rows).toString();
  }

  private static void symptoms(Vocabulary vocabulary, Layout layout) {
    List<List<String>> displayed = new ArrayList<>();
    List<Symptom> shown = new ArrayList<>();
    for (Meaning meaning : Meaning.values()) {
      shown.add(meaning.symptom());
      displayed.add(List.of(meaning.id(), meaning.symptom().title()));
    }
    List<List<String>> rows = new ArrayList<>();
    for (Symptom symptom : vocabulary.symptoms()) {
      if (!shown.contains(symptom)) {
        rows.add(List.of(symptom.id(), symptom.title() + ". " + symptom.question()));
      }
    }
    layout.heading("\"symptoms\" of a job, answered yes, no or sometimes");
    layout.table("  ", rows);
    layout.heading("\"displayed\" of a job, what a lamp or code means");
    layout.table("  ", displayed);
  }
}

package kelter.cli.wiring;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.ServiceLoader;
import java.util.Set;
import kelter.core.instrument.InstrumentLibrary;
import kelter.core.job.Instrument;
import kelter.core.module.Calculation;
import kelter.core.module.CalculationModule;
import kelter.core.problem.Problem;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Vocabulary;

/** Finds the modules on the module path, and those in a plugin folder that go with them. */
final class ModuleSearch {

  private ModuleSearch() {}

  private static final class ById implements Comparator<CalculationModule> {
    @Override
    public int compare(CalculationModule one, CalculationModule other) {
      return one.about().id().compareTo(other.about().id());
    }
  }

  /**
   * Finds all modules.
   *
   * @param plugins the plugin folder, if the user named one
   * @return the modules on the module path and those plugins that go with them
   */
  static Found find(Optional<Path> plugins) {
    List<CalculationModule> accepted = new ArrayList<>();
    // The layer is named, since otherwise the class path, which is empty, is searched as well.
    for (CalculationModule module :
        ServiceLoader.load(ModuleSearch.class.getModule().getLayer(), CalculationModule.class)) {
      accepted.add(module);
    }
    List<Problem> refused = new ArrayList<>();
    if (plugins.isPresent()) {
      PluginFolder.Content content = PluginFolder.load(plugins.get());
      refused.addAll(content.problems());
      for (CalculationModule module : content.modules()) {
        accept(module, accepted, refused);
      }
    }
    accepted.sort(new ById());
    return new Found(accepted, refused);
  }

  private static void accept(
      CalculationModule module, List<CalculationModule> accepted, List<Problem> refused) {
    try {
      Optional<String> conflict = conflict(module, accepted);
      if (conflict.isEmpty()) {
        accepted.add(module);
      } else {
        refused.add(refusal(module, conflict.get()));
      }
    } catch (RuntimeException | LinkageError broken) {
      refused.add(refusal(module, "fails when asked what it is: " + broken));
    }
  }

  private static Problem refusal(CalculationModule module, String reason) {
    return new Problem("plugin " + module.getClass().getName(), reason, "left out");
  }

  private static Optional<String> conflict(
      CalculationModule module, List<CalculationModule> accepted) {
    Set<String> calculations = new HashSet<>();
    Set<String> instruments = new HashSet<>(InstrumentLibrary.ids());
    List<ComponentKind> kinds = new ArrayList<>(module.parts().kinds());
    for (CalculationModule other : accepted) {
      if (other.about().id().equals(module.about().id())) {
        return Optional.of("a module '" + other.about().id() + "' is loaded already");
      }
      other.calculations().stream().map(Calculation::id).forEach(calculations::add);
      other.instruments().stream().map(Instrument::id).forEach(instruments::add);
      kinds.addAll(other.parts().kinds());
    }
    for (Calculation calculation : module.calculations()) {
      if (!calculations.add(calculation.id())) {
        return Optional.of("there is a calculation '" + calculation.id() + "' already");
      }
    }
    for (Instrument instrument : module.instruments()) {
      if (!instruments.add(instrument.id())) {
        return Optional.of("there is an instrument '" + instrument.id() + "' already");
      }
    }
    try {
      new Vocabulary(kinds);
      return Optional.empty();
    } catch (IllegalArgumentException twoMeanings) {
      return Optional.of(twoMeanings.getMessage());
    }
  }
}

package kelter.cli.wiring;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kelter.cli.plugin.Guard;
import kelter.cli.plugin.GuardedModule;
import kelter.cli.plugin.PluginWatch;
import kelter.core.check.Check;
import kelter.core.instrument.InstrumentLibrary;
import kelter.core.job.Instrument;
import kelter.core.module.Calculation;
import kelter.core.module.CalculationModule;
import kelter.core.problem.Problem;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Symptom;
import kelter.core.vocabulary.Symptoms;

/**
 * Finds the modules in a plugin folder that go with those on the module path. A class of its own,
 * so that nothing of plugins is loaded where there are none.
 */
final class PluginSearch {

  private PluginSearch() {}

  /** The modules on the module path and those plugins that go with them, by id. */
  static Found find(Path plugins, PluginWatch watch) {
    List<CalculationModule> accepted = ModuleSearch.onModulePath();
    PluginFolder.Content content = PluginFolder.load(plugins, watch);
    List<Problem> refused = new ArrayList<>(content.problems());
    for (PluginFolder.Plugin plugin : content.plugins()) {
      accept(plugin, accepted, refused);
    }
    return ModuleSearch.byId(accepted, refused);
  }

  private static void accept(
      PluginFolder.Plugin plugin, List<CalculationModule> accepted, List<Problem> refused) {
    try {
      CalculationModule module = GuardedModule.of(plugin.guard(), plugin.module(), accepted);
      Optional<String> claimed = claimed(module, accepted);
      if (claimed.isEmpty()) {
        accepted.add(module);
      } else {
        refused.add(plugin.guard().refused(claimed.get(), "give its own another name"));
      }
    } catch (Guard.Failed failed) {
      refused.add(plugin.guard().refused(failed));
    }
  }

  /** What a module claims that is another's already, in words. */
  private static Optional<String> claimed(
      CalculationModule module, List<CalculationModule> accepted) {
    Set<String> calculations = new HashSet<>();
    Set<String> instruments = new HashSet<>(InstrumentLibrary.ids());
    Set<String> checks = new HashSet<>();
    Set<String> symptoms = new HashSet<>();
    Symptoms.ALL.forEach(symptom -> symptoms.add(symptom.id()));
    Map<String, ComponentKind> kinds = new HashMap<>();
    for (CalculationModule other : accepted) {
      if (other.about().id().equals(module.about().id())) {
        return Optional.of("a module '" + other.about().id() + "' is loaded already");
      }
      other.calculations().stream().map(Calculation::id).forEach(calculations::add);
      other.instruments().stream().map(Instrument::id).forEach(instruments::add);
      other.parts().checks().stream().map(Check::id).forEach(checks::add);
      other.symptoms().forEach(symptom -> symptoms.add(symptom.id()));
      other.parts().kinds().forEach(kind -> kinds.put(kind.id(), kind));
    }
    for (Calculation calculation : module.calculations()) {
      if (!calculations.add(calculation.id())) {
        return Optional.of("there is a calculation '" + calculation.id() + "' already");
      }
    }
    for (Symptom symptom : module.symptoms()) {
      if (!symptoms.add(symptom.id())) {
        return Optional.of("there is a symptom '" + symptom.id() + "' already");
      }
    }
    for (Symptom symptom : module.symptoms()) {
      if (!symptoms.containsAll(symptom.maskedBy())) {
        return Optional.of("the symptom '" + symptom.id() + "' is hidden by one that nobody knows");
      }
    }
    for (Instrument instrument : module.instruments()) {
      if (!instruments.add(instrument.id())) {
        return Optional.of("there is an instrument '" + instrument.id() + "' already");
      }
    }
    for (Check check : module.parts().checks()) {
      if (checks.contains(check.id())) {
        return Optional.of("there is a check '" + check.id() + "' already");
      }
    }
    for (ComponentKind kind : module.parts().kinds()) {
      ComponentKind earlier = kinds.put(kind.id(), kind);
      if (earlier != null && !earlier.equals(kind)) {
        return Optional.of("the kind of component '" + kind.id() + "' has another meaning already");
      }
    }
    return Optional.empty();
  }
}

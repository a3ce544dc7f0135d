package kelter.cli.wiring;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import kelter.cli.plugin.Guard;
import kelter.cli.plugin.GuardedModule;
import kelter.cli.plugin.PluginWatch;
import kelter.core.module.CalculationModule;
import kelter.core.module.Claims;
import kelter.core.problem.Problem;

/**
 * Finds the modules in a plugin folder that go with those on the module path. A class of its own,
 * so that nothing of plugins is loaded where there are none.
 */
final class PluginSearch {

  private static final String REMEDY = "give its own another name";

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
      List<String> claimed = new Claims(accepted).claimedBy(module);
      if (claimed.isEmpty()) {
        accepted.add(module);
      } else {
        claimed.forEach(each -> refused.add(plugin.guard().refused(each, REMEDY)));
      }
    } catch (Guard.Failed failed) {
      refused.add(plugin.guard().refused(failed));
    }
  }
}

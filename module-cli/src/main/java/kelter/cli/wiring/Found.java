package kelter.cli.wiring;

import java.nio.file.Path;
import java.util.List;
import kelter.cli.plugin.PluginWatch;
import kelter.core.module.CalculationModule;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;

/**
 * The modules that were found.
 *
 * @param modules those on the module path and the plugins that go with them, by id
 * @param refused plugins that were left out, each with the reason
 */
public record Found(List<CalculationModule> modules, List<Problem> refused) {

  public Found {
    modules = List.copyOf(modules);
    refused = List.copyOf(refused);
  }

  /**
   * Finds the modules on the module path.
   *
   * @return these modules
   */
  public static Found usual() {
    return ModuleSearch.find();
  }

  /**
   * Finds all modules.
   *
   * @param plugins the plugin folder that the user named
   * @param watch watches over the plugins
   * @return the modules on the module path and those plugins that go with them
   * @throws InputException if the folder cannot be read
   */
  public static Found with(Path plugins, PluginWatch watch) {
    return PluginSearch.find(plugins, watch);
  }
}

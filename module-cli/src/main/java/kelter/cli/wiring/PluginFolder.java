package kelter.cli.wiring;

import java.io.IOException;
import java.lang.module.Configuration;
import java.lang.module.FindException;
import java.lang.module.ModuleFinder;
import java.lang.module.ModuleReference;
import java.lang.module.ResolutionException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.ServiceConfigurationError;
import java.util.ServiceLoader;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kelter.core.module.CalculationModule;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;

/**
 * Loads plugins from a folder that the user names. A plugin is a jar, or a folder of jars that
 * belong together; each gets a module layer of its own, so that two plugins can carry different
 * versions of a library. A broken plugin is named with the reason, and the rest goes on.
 */
final class PluginFolder {

  private final List<CalculationModule> modules = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();

  private PluginFolder() {}

  /**
   * What a plugin folder holds.
   *
   * @param modules the modules that could be loaded
   * @param problems what was wrong with the rest
   */
  record Content(List<CalculationModule> modules, List<Problem> problems) {}

  static Content load(Path folder) {
    PluginFolder plugins = new PluginFolder();
    for (Path plugin : sortedEntries(folder)) {
      plugins.add(plugin);
    }
    return new Content(List.copyOf(plugins.modules), List.copyOf(plugins.problems));
  }

  private static List<Path> sortedEntries(Path folder) {
    if (!Files.isDirectory(folder)) {
      throw new InputException(
          "--plugins " + folder, "is not a folder", "name a folder that holds plugins");
    }
    try (Stream<Path> entries = Files.list(folder)) {
      return entries.filter(e -> Files.isDirectory(e) || isJar(e)).sorted().toList();
    } catch (IOException unreadable) {
      throw new InputException(
          "--plugins " + folder, "cannot be read: " + unreadable.getMessage(), "");
    }
  }

  private static boolean isJar(Path path) {
    return path.getFileName().toString().endsWith(".jar");
  }

  // A wrong jar fails in the finder, in the resolution, or while its providers are made; the last
  // throws errors, not exceptions.
  private void add(Path plugin) {
    try {
      List<CalculationModule> found = providers(plugin);
      if (found.isEmpty()) {
        refuse(plugin, "provides no CalculationModule");
      }
      modules.addAll(found);
    } catch (FindException | ResolutionException | LayerInstantiationException wrongJar) {
      refuse(plugin, reason(wrongJar));
    } catch (ServiceConfigurationError | LinkageError wrongProvider) {
      refuse(plugin, reason(wrongProvider));
    } catch (IOException | RuntimeException other) {
      refuse(plugin, reason(other));
    }
  }

  private void refuse(Path plugin, String reason) {
    problems.add(new Problem("plugin " + plugin.getFileName(), reason, "left out"));
  }

  private static String reason(Throwable thrown) {
    Throwable cause = thrown;
    while (cause.getCause() != null && cause.getCause() != cause) {
      cause = cause.getCause();
    }
    String message = cause.getMessage();
    return cause.getClass().getSimpleName() + (message == null ? "" : ": " + message);
  }

  private static List<CalculationModule> providers(Path plugin) throws IOException {
    ModuleFinder finder = ModuleFinder.of(jars(plugin).toArray(Path[]::new));
    Set<String> names =
        finder.findAll().stream()
            .map(ModuleReference::descriptor)
            .map(descriptor -> descriptor.name())
            .collect(Collectors.toSet());
    ModuleLayer parent = PluginFolder.class.getModule().getLayer();
    Configuration configuration = parent.configuration().resolve(finder, ModuleFinder.of(), names);
    ModuleLayer layer =
        parent.defineModulesWithOneLoader(configuration, PluginFolder.class.getClassLoader());
    // A layer also tells the providers of its parents, which are loaded already.
    return ServiceLoader.load(layer, CalculationModule.class).stream()
        .filter(provider -> provider.type().getModule().getLayer() == layer)
        .map(ServiceLoader.Provider::get)
        .toList();
  }

  private static List<Path> jars(Path plugin) throws IOException {
    if (!Files.isDirectory(plugin)) {
      return List.of(plugin);
    }
    try (Stream<Path> entries = Files.list(plugin)) {
      return entries.filter(PluginFolder::isJar).sorted().toList();
    }
  }
}

package kelter.cli.wiring;

import java.io.IOException;
import java.lang.module.Configuration;
import java.lang.module.FindException;
import java.lang.module.ModuleDescriptor;
import java.lang.module.ModuleFinder;
import java.lang.module.ModuleReference;
import java.lang.module.ResolutionException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.ServiceLoader;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kelter.cli.plugin.Guard;
import kelter.cli.plugin.PluginWatch;
import kelter.core.module.CalculationModule;
import kelter.core.problem.InputException;
import kelter.core.problem.Mistake;
import kelter.core.problem.Problem;

/**
 * Loads plugins from a folder that the user names. A plugin is a jar, or a folder of jars that
 * belong together; each gets a module layer of its own, so that two plugins can carry different
 * versions of a library. A broken plugin is named with the reason, and the rest goes on.
 */
final class PluginFolder {

  private static final String SERVICE = CalculationModule.class.getName();
  private static final String OWN = "kelter.";

  private final PluginWatch watch;
  private final List<Plugin> plugins = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();

  private PluginFolder(PluginWatch watch) {
    this.watch = watch;
  }

  /**
   * A module of a plugin.
   *
   * @param guard calls it
   * @param module the module as the plugin made it
   */
  record Plugin(Guard guard, CalculationModule module) {}

  /**
   * What a plugin folder holds.
   *
   * @param plugins the modules that could be loaded
   * @param problems what was wrong with the rest
   */
  record Content(List<Plugin> plugins, List<Problem> problems) {

    List<CalculationModule> modules() {
      return plugins.stream().map(Plugin::module).toList();
    }
  }

  /** A plugin cannot be loaded. */
  private static final class Refused extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String remedy;

    Refused(String reason, String remedy) {
      super(reason);
      this.remedy = remedy;
    }
  }

  static Content load(Path folder, PluginWatch watch) {
    PluginFolder loading = new PluginFolder(watch);
    List<Path> entries = sortedEntries(folder);
    if (entries.isEmpty()) {
      loading.problems.add(
          new Problem(
              Mistake.FILE,
              "--plugins " + folder,
              "holds no plugin",
              "a plugin is a jar, or a folder of jars that belong together"));
    }
    for (Path plugin : entries) {
      loading.add(plugin);
    }
    return new Content(List.copyOf(loading.plugins), List.copyOf(loading.problems));
  }

  private static List<Path> sortedEntries(Path folder) {
    if (!Files.isDirectory(folder)) {
      throw new InputException(
          Mistake.FILE,
          "--plugins " + folder,
          Files.exists(folder) ? "is not a folder" : "is not there",
          "name a folder that holds plugins");
    }
    try (Stream<Path> entries = Files.list(folder)) {
      return entries.filter(e -> Files.isDirectory(e) || isJar(e)).sorted().toList();
    } catch (IOException unreadable) {
      throw new InputException(
          Mistake.FILE, "--plugins " + folder, "cannot be read: " + unreadable.getMessage(), "");
    }
  }

  private static boolean isJar(Path path) {
    return path.getFileName().toString().endsWith(".jar");
  }

  private void add(Path plugin) {
    Guard guard = new Guard(plugin.getFileName().toString(), watch);
    try {
      for (CalculationModule module : guard.ask("loading", () -> providers(guard, plugin))) {
        plugins.add(new Plugin(guard, module));
      }
    } catch (Guard.Failed failed) {
      Throwable cause = failed.getCause();
      if (cause instanceof Refused refused) {
        problems.add(guard.refused(refused.getMessage(), refused.remedy));
      } else if (cause instanceof FindException || cause instanceof ResolutionException) {
        problems.add(guard.refused("is no module: " + message(cause), ""));
      } else {
        problems.add(guard.refused(failed));
      }
    }
  }

  private static String message(Throwable thrown) {
    Throwable cause = thrown;
    while (cause.getCause() != null) {
      cause = cause.getCause();
    }
    return cause.getMessage();
  }

  private static List<CalculationModule> providers(Guard guard, Path plugin) {
    ModuleFinder finder = ModuleFinder.of(jars(plugin).toArray(Path[]::new));
    Set<ModuleReference> found = finder.findAll();
    ModuleLayer parent = PluginFolder.class.getModule().getLayer();
    requireNoneOfKelter(found);
    requireAPlugin(found);
    requireLibraries(found, finder, parent);
    tellVersion(found, guard);
    Set<String> names =
        found.stream().map(each -> each.descriptor().name()).collect(Collectors.toSet());
    Configuration configuration = parent.configuration().resolve(finder, ModuleFinder.of(), names);
    guard.know(configuration);
    ModuleLayer layer =
        parent.defineModulesWithOneLoader(configuration, PluginFolder.class.getClassLoader());
    // A layer also tells the providers of its parents, which are loaded already.
    return ServiceLoader.load(layer, CalculationModule.class).stream()
        .filter(provider -> provider.type().getModule().getLayer() == layer)
        .map(ServiceLoader.Provider::get)
        .toList();
  }

  private static void requireNoneOfKelter(Set<ModuleReference> found) {
    for (ModuleReference each : found) {
      if (Stream.of("core", "cli", "hydraulics", "electrical", "costing")
          .anyMatch(own -> each.descriptor().name().equals(OWN + own))) {
        throw new Refused(
            "holds " + fileName(each) + ", which is a jar of Kelter itself",
            "take that jar out: a plugin gets " + each.descriptor().name() + " from Kelter");
      }
    }
  }

  private static boolean isPlugin(ModuleDescriptor descriptor) {
    return descriptor.provides().stream().anyMatch(provided -> provided.service().equals(SERVICE));
  }

  /** At least one module with a descriptor must provide what Kelter asks for. */
  private static void requireAPlugin(Set<ModuleReference> found) {
    Optional<ModuleReference> automatic = Optional.empty();
    for (ModuleReference each : found) {
      ModuleDescriptor descriptor = each.descriptor();
      if (descriptor.isAutomatic()) {
        automatic = Optional.of(each);
      } else if (isPlugin(descriptor)) {
        return;
      }
    }
    String remedy =
        "its module-info.java must say 'provides "
            + SERVICE
            + " with ...'; see demo/outside-module";
    throw new Refused(
        automatic
            .map(each -> "has no module-info.class in " + fileName(each))
            .orElse(found.isEmpty() ? "holds no jar" : "provides no CalculationModule"),
        remedy);
  }

  /** Another version is told and no more: what does not fit any longer is told where it fails. */
  private static void tellVersion(Set<ModuleReference> found, Guard guard) {
    for (ModuleReference each : found) {
      if (isPlugin(each.descriptor())) {
        String mismatch = CoreVersion.of(each.descriptor()).mismatch();
        if (!mismatch.isEmpty()) {
          guard.note(mismatch, "what fails may fail for that: build it anew against this version");
        }
      }
    }
  }

  private static void requireLibraries(
      Set<ModuleReference> found, ModuleFinder finder, ModuleLayer parent) {
    Set<String> missing = new TreeSet<>();
    for (ModuleReference each : found) {
      for (ModuleDescriptor.Requires required : each.descriptor().requires()) {
        boolean optional = required.modifiers().contains(ModuleDescriptor.Requires.Modifier.STATIC);
        if (!optional
            && finder.find(required.name()).isEmpty()
            && parent.findModule(required.name()).isEmpty()) {
          missing.add(required.name());
        }
      }
    }
    if (!missing.isEmpty()) {
      boolean ofJava = missing.stream().allMatch(name -> name.matches("(java|jdk)\\..*"));
      throw new Refused(
          "needs what is not there: module " + String.join(", ", missing),
          ofJava
              ? "run Kelter with KELTER_RUNTIME=system on a Java that has it"
              : "put the plugin and the jars that it needs into one folder, and that folder into"
                  + " the plugin folder");
    }
  }

  private static String fileName(ModuleReference module) {
    return module
        .location()
        .map(Path::of)
        .map(path -> path.getFileName().toString())
        .orElse(module.descriptor().name());
  }

  private static List<Path> jars(Path plugin) {
    if (!Files.isDirectory(plugin)) {
      return List.of(plugin);
    }
    try (Stream<Path> entries = Files.list(plugin)) {
      return entries.filter(PluginFolder::isJar).sorted().toList();
    } catch (IOException unreadable) {
      throw new Refused("cannot be read: " + unreadable.getMessage(), "");
    }
  }
}

package kelter.testkit.trial;

import java.io.File;
import java.lang.module.FindException;
import java.lang.module.ModuleDescriptor;
import java.lang.module.ModuleFinder;
import java.lang.module.ModuleReference;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kelter.core.module.CalculationModule;

/**
 * The modules that a test can see. On the class path {@code ServiceLoader} does not read module
 * descriptors; here they are read, so that it does not matter which path the test runs on.
 */
public final class FoundModules {

  private static final String SERVICE = CalculationModule.class.getName();

  private FoundModules() {}

  /**
   * The descriptor beside a class.
   *
   * @param type the class
   * @return the descriptor of its module; empty if it has none of its own
   */
  public static Optional<ModuleDescriptor> descriptor(Class<?> type) {
    if (type.getModule().isNamed()) {
      return Optional.of(type.getModule().getDescriptor());
    }
    return place(type).map(FoundModules::in).flatMap(found -> found.stream().findFirst());
  }

  private static Optional<Path> place(Class<?> type) {
    CodeSource source = type.getProtectionDomain().getCodeSource();
    try {
      return source == null ? Optional.empty() : Optional.of(Path.of(source.getLocation().toURI()));
    } catch (URISyntaxException strange) {
      throw new IllegalStateException(strange);
    }
  }

  /** What a jar or a folder of classes says of itself, if it has a descriptor. */
  private static List<ModuleDescriptor> in(Path place) {
    boolean folderWithout =
        Files.isDirectory(place) && !Files.exists(place.resolve("module-info.class"));
    if (folderWithout || !Files.exists(place)) {
      return List.of();
    }
    try {
      return ModuleFinder.of(place).findAll().stream()
          .map(ModuleReference::descriptor)
          .filter(descriptor -> !descriptor.isAutomatic())
          .toList();
    } catch (FindException noModule) {
      return List.of();
    }
  }

  /**
   * The modules beside which one will be loaded.
   *
   * @param own the class of that one
   * @return all others that the class path and the module path of the test have
   */
  public static List<CalculationModule> beside(Class<?> own) {
    Set<String> providers = new LinkedHashSet<>();
    for (Path place : places()) {
      for (ModuleDescriptor descriptor : in(place)) {
        providers.addAll(providers(descriptor));
      }
    }
    providers.remove(own.getName());
    List<CalculationModule> modules = new ArrayList<>();
    providers.forEach(provider -> modules.add(made(provider)));
    return modules;
  }

  /**
   * What a module provides to Kelter.
   *
   * @param descriptor its descriptor
   * @return the names of classes
   */
  static List<String> providers(ModuleDescriptor descriptor) {
    return descriptor.provides().stream()
        .filter(provided -> provided.service().equals(SERVICE))
        .flatMap(provided -> provided.providers().stream())
        .toList();
  }

  private static Set<Path> places() {
    Set<Path> places = new LinkedHashSet<>();
    for (String name : List.of("jdk.module.path", "surefire.test.class.path", "java.class.path")) {
      Arrays.stream(System.getProperty(name, "").split(File.pathSeparator))
          .filter(place -> !place.isEmpty())
          .map(Path::of)
          .forEach(places::add);
    }
    return places;
  }

  private static CalculationModule made(String provider) {
    try {
      Class<?> type = Class.forName(provider);
      for (var method : type.getMethods()) {
        if (method.getName().equals("provider") && method.getParameterCount() == 0) {
          return (CalculationModule) method.invoke(null);
        }
      }
      return (CalculationModule) type.getConstructor().newInstance();
    } catch (ReflectiveOperationException impossible) {
      throw new IllegalStateException(
          provider + " is provided to Kelter and cannot be made", impossible);
    }
  }
}

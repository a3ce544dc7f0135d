package kelter.cli.architecture;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.Location;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.module.ModuleFinder;
import java.lang.module.ModuleReference;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.jar.JarFile;
import java.util.stream.Stream;

/** Where the compiled code of the parts lies: folders or jars on the class path or module path. */
final class House {

  /** The folder of each part's sources, by the package that its code starts with. */
  static final Map<String, String> PARTS =
      new TreeMap<>(
          Map.of(
              "kelter.core", "toolkit-core",
              "kelter.hydraulics", "module-hydraulics",
              "kelter.electrical", "module-electrical",
              "kelter.costing", "module-costing",
              "kelter.cli", "module-cli"));

  private House() {}

  /** Whether a part has main code of its own in the source tree beside this one. */
  static boolean isWritten(String part) {
    Path sources = Path.of("..", PARTS.get(part), "src", "main", "java");
    return Files.isRegularFile(sources.resolve("module-info.java"));
  }

  /** The folder or jar with the main classes of a part, or empty if it is not there. */
  static Optional<Path> location(String part) {
    String folder = part.replace('.', '/');
    return entries().filter(entry -> isMain(entry) && contains(entry, folder)).findFirst();
  }

  static ModuleReference module(String part) {
    Path location = location(part).orElseThrow(() -> new AssertionError(part + " is not there"));
    return ModuleFinder.of(location)
        .find(part)
        .orElseThrow(() -> new AssertionError(location + " is not the module " + part));
  }

  /** The main classes of all parts that are there. */
  static JavaClasses classes() {
    List<Location> locations =
        PARTS.keySet().stream().flatMap(part -> location(part).stream()).map(House::read).toList();
    return new ClassFileImporter().importLocations(locations);
  }

  private static Location read(Path entry) {
    if (Files.isDirectory(entry)) {
      return Location.of(entry);
    }
    return Location.of(URI.create("jar:" + entry.toAbsolutePath().toUri() + "!/"));
  }

  /** The classes of the small house that breaks every rule. */
  static JavaClasses broken() {
    return new ClassFileImporter()
        .importPath(Path.of("target/test-classes/kelter/cli/architecture/broken"));
  }

  private static Stream<Path> entries() {
    Stream<String> paths =
        Stream.of("jdk.module.path", "java.class.path")
            .map(property -> System.getProperty(property, ""))
            .flatMap(path -> Stream.of(path.split(File.pathSeparator)));
    return Stream.concat(Stream.of("target/classes"), paths)
        .filter(entry -> !entry.isEmpty())
        .map(Path::of)
        .filter(Files::exists);
  }

  private static boolean isMain(Path entry) {
    return !entry.endsWith("test-classes") && !contains(entry, "kelter/testkit");
  }

  private static boolean contains(Path entry, String folder) {
    if (Files.isDirectory(entry)) {
      return Files.isDirectory(entry.resolve(folder));
    }
    try (JarFile jar = new JarFile(entry.toFile())) {
      return jar.stream().anyMatch(file -> file.getName().startsWith(folder + "/"));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}

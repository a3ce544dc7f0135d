package kelter.cli.wiring;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.spi.ToolProvider;
import java.util.stream.Stream;

/** Compiles small modules for the tests of the plugin folder. */
public final class PluginJar {

  private PluginJar() {}

  /** Compiles sources, by path, and packs them into a jar. */
  public static void compile(Path jar, Map<String, String> sources, Path... modulePath) {
    try {
      Path work = Files.createTempDirectory("plugin");
      try {
        compile(work, jar, sources, modulePath);
      } finally {
        delete(work);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }

  private static void compile(Path work, Path jar, Map<String, String> sources, Path... modulePath)
      throws IOException {
    List<String> arguments = new ArrayList<>();
    arguments.addAll(List.of("--release", "17", "-d", work.resolve("out").toString()));
    arguments.add("--module-path");
    arguments.add(modulePath(modulePath));
    for (Map.Entry<String, String> source : sources.entrySet()) {
      Path file = work.resolve("src").resolve(source.getKey());
      Files.createDirectories(file.getParent());
      Files.writeString(file, source.getValue());
      arguments.add(file.toString());
    }
    StringWriter said = new StringWriter();
    PrintWriter out = new PrintWriter(said);
    int code =
        ToolProvider.findFirst("javac")
            .orElseThrow()
            .run(out, out, arguments.toArray(String[]::new));
    if (code != 0) {
      throw new IllegalStateException("the plugin of the test does not compile: " + said);
    }
    pack(work.resolve("out"), jar);
  }

  private static String modulePath(Path... more) throws IOException {
    List<String> path = new ArrayList<>();
    path.add(System.getProperty("jdk.module.path", ""));
    for (Path each : more) {
      path.add(each.toString());
    }
    return String.join(java.io.File.pathSeparator, path);
  }

  private static void pack(Path folder, Path jar) throws IOException {
    Map<String, byte[]> entries = new LinkedHashMap<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
        entries.put(
            folder.relativize(file).toString().replace('\\', '/'), Files.readAllBytes(file));
      }
    }
    write(jar, entries);
  }

  public static void write(Path jar, Map<String, byte[]> entries) throws IOException {
    Files.createDirectories(jar.getParent());
    try (OutputStream out = Files.newOutputStream(jar);
        JarOutputStream packed = new JarOutputStream(out)) {
      for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
        packed.putNextEntry(new JarEntry(entry.getKey()));
        packed.write(entry.getValue());
        packed.closeEntry();
      }
    }
  }

  public static Map<String, byte[]> read(Path jar) throws IOException {
    Map<String, byte[]> entries = new LinkedHashMap<>();
    try (java.util.jar.JarFile file = new java.util.jar.JarFile(jar.toFile())) {
      for (JarEntry entry : file.stream().toList()) {
        try (var in = file.getInputStream(entry)) {
          entries.put(entry.getName(), in.readAllBytes());
        }
      }
    }
    return entries;
  }

  /** A module with one provider, whose body and id are given. */
  public static Map<String, String> module(String name, String id, String body, String requires) {
    String folder = name.replace('.', '/');
    return Map.of(
        "module-info.java",
        """
        module %s {
          requires kelter.core;%s
          provides kelter.core.module.CalculationModule with %s.Plugin;
        }
        """
            .formatted(name, requires, name),
        folder + "/Plugin.java",
        """
        package %s;

        import kelter.core.module.About;
        import kelter.core.module.CalculationModule;

        public final class Plugin implements CalculationModule {
          %s

          @Override
          public About about() {
            return new About("%s", "a plugin of a test", version());
          }
        }
        """
            .formatted(name, body, id));
  }

  /** The body of a plugin that works. */
  public static final String GOOD = "private static String version() { return \"1\"; }";
}

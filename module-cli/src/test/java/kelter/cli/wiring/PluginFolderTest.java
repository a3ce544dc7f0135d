package kelter.cli.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import kelter.cli.plugin.PluginWatch;
import kelter.cli.terminal.Terminal;
import kelter.core.module.CalculationModule;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PluginFolderTest {

  @TempDir private Path folder;

  private void good(String jar, String name, String id) {
    PluginJar.compile(folder.resolve(jar), PluginJar.module(name, id, PluginJar.GOOD, ""));
  }

  private static final PluginWatch WATCH =
      new PluginWatch(
          new Terminal(System.err, System.err, StandardCharsets.UTF_8, false, false, 80),
          Duration.ofSeconds(10));

  private static List<String> ids(List<CalculationModule> modules) {
    return modules.stream().map(module -> module.about().id()).toList();
  }

  /** Loads a folder that holds one good plugin beside a broken one and returns the complaint. */
  private Problem onlyTheBrokenOneIsLeftOut() {
    good("z-good.jar", "good.plugin", "good");
    PluginFolder.Content content = PluginFolder.load(folder, WATCH);
    assertEquals(List.of("good"), ids(content.modules()), "the rest goes on");
    assertEquals(1, content.problems().size());
    return content.problems().get(0);
  }

  @Test
  void pluginsAreLoadedInTheOrderOfTheirNames() {
    good("b.jar", "plugin.b", "b");
    good("a.jar", "plugin.a", "a");

    PluginFolder.Content content = PluginFolder.load(folder, WATCH);

    assertEquals(List.of("a", "b"), ids(content.modules()));
    assertEquals(List.of(), content.problems());
  }

  /** What loading says beside what it gives. */
  private String told() {
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    PrintStream complaints = new PrintStream(err, true, StandardCharsets.UTF_8);
    Terminal terminal =
        new Terminal(complaints, complaints, StandardCharsets.UTF_8, false, false, 80);
    PluginFolder.Content content =
        PluginFolder.load(folder, new PluginWatch(terminal, Duration.ofSeconds(10)));
    assertEquals(List.of("good"), ids(content.modules()), "it is loaded all the same");
    assertEquals(List.of(), content.problems());
    return err.toString(StandardCharsets.UTF_8);
  }

  /** The compiler has noted for which version it was built; another one of the same length. */
  private void builtFor(String version) throws IOException {
    Path jar = folder.resolve("good.jar");
    String running = CalculationModule.class.getModule().getDescriptor().rawVersion().orElseThrow();
    Map<String, byte[]> entries = PluginJar.read(jar);
    String descriptor = new String(entries.get("module-info.class"), StandardCharsets.ISO_8859_1);
    assertTrue(descriptor.contains(running));
    String other = version + running.substring(version.length());
    entries.put(
        "module-info.class",
        descriptor.replace(running, other).getBytes(StandardCharsets.ISO_8859_1));
    PluginJar.write(jar, entries);
  }

  @Test
  void anotherVersionOfTheCoreIsTold() throws IOException {
    good("good.jar", "good.plugin", "good");
    assertEquals("", told());

    builtFor("9.7");
    String told = told();
    assertTrue(told.contains("plugin good.jar: was built for Kelter 9.7"), told);
    assertTrue(told.contains("; this is "), told);
  }

  @ParameterizedTest
  @CsvSource({
    "0.1.0, 0.1.3, ''",
    "0.1.0-SNAPSHOT, 0.1.0, ''",
    "1.4, 1.4.0, ''",
    "0.2.0, 0.1.0, was built for Kelter 0.2.0; this is 0.1.0",
    "1.0.0, 2.0.0, was built for Kelter 1.0.0; this is 2.0.0",
    "'', 1.0.0, does not tell for which version of Kelter it was built; this is 1.0.0",
    "1.0.0, '', ''"
  })
  void versionsGoTogetherWithTheSameFirstTwoNumbers(String built, String running, String told) {
    assertEquals(told, new CoreVersion(built, running).mismatch());
  }

  @Test
  void twoPluginsCarryTwoVersionsOfALibrary() throws IOException {
    for (String version : List.of("1", "2")) {
      Path library = folder.resolve("plugin" + version).resolve("library.jar");
      Files.createDirectories(library.getParent());
      PluginJar.compile(
          library,
          Map.of(
              "module-info.java",
              "module library { exports library; }",
              "library/Version.java",
              "package library; public final class Version { private Version() {}"
                  + " public static String of() { return \"%s\"; } }".formatted(version)));
      PluginJar.compile(
          folder.resolve("plugin" + version).resolve("plugin.jar"),
          PluginJar.module(
              "plugin." + (version.equals("1") ? "former" : "later"),
              "of-" + version,
              "private static String version() { return library.Version.of(); }",
              "\n  requires library;"),
          library);
    }

    List<CalculationModule> modules = PluginFolder.load(folder, WATCH).modules();

    assertEquals(List.of("1", "2"), modules.stream().map(m -> m.about().version()).toList());
  }

  @Test
  void corruptJar() throws IOException {
    Files.write(folder.resolve("broken.jar"), "no jar".getBytes(StandardCharsets.UTF_8));
    assertTrue(onlyTheBrokenOneIsLeftOut().where().contains("broken.jar"));
  }

  @Test
  void jarWithoutAProvider() {
    PluginJar.compile(
        folder.resolve("silent.jar"), Map.of("module-info.java", "module silent { }"));
    assertTrue(onlyTheBrokenOneIsLeftOut().what().contains("provides no CalculationModule"));
  }

  @Test
  void missingModule() throws IOException {
    Path library = folder.resolve("library.jar");
    PluginJar.compile(
        library,
        Map.of(
            "module-info.java",
            "module library { exports library; }",
            "library/Some.java",
            "package library; public interface Some {}"));
    PluginJar.compile(
        folder.resolve("needy.jar"),
        PluginJar.module("needy", "needy", PluginJar.GOOD, "\n  requires library;"),
        library);
    Files.delete(library);
    Problem told = onlyTheBrokenOneIsLeftOut();
    assertEquals("needs what is not there: module library", told.what());
    assertTrue(told.remedy().contains("put the plugin and the jars that it needs into one folder"));
  }

  @Test
  void throwingConstructor() {
    PluginJar.compile(
        folder.resolve("throwing.jar"),
        PluginJar.module(
            "throwing",
            "throwing",
            PluginJar.GOOD + " public Plugin() { throw new IllegalStateException(\"not today\"); }",
            ""));
    assertTrue(onlyTheBrokenOneIsLeftOut().what().contains("not today"));
  }

  @Test
  void classOfANewerJava() throws IOException {
    Path jar = folder.resolve("newer.jar");
    PluginJar.compile(jar, PluginJar.module("newer", "newer", PluginJar.GOOD, ""));
    Map<String, byte[]> entries = PluginJar.read(jar);
    // Bytes 6 and 7 of a class file are its major version (Java Virtual Machine Specification,
    // 4.1).
    entries.get("newer/Plugin.class")[7] = 99;
    PluginJar.write(jar, entries);
    assertTrue(onlyTheBrokenOneIsLeftOut().what().contains("UnsupportedClassVersionError"));
  }

  @Test
  void copyOfABuiltInModuleIsLeftOut() {
    CalculationModule builtIn = Found.usual().modules().get(0);
    good("copy.jar", "copy.plugin", builtIn.about().id());

    Found found = Found.with(folder, WATCH);

    assertEquals(1, found.refused().size());
    assertTrue(found.refused().get(0).what().contains("loaded already"));
    assertEquals(
        found.modules().size(),
        found.modules().stream().map(m -> m.about().id()).distinct().count());
  }

  @Test
  void aJarOfKelterBesideIt() throws IOException {
    Path plugin = folder.resolve("belts");
    PluginJar.compile(
        plugin.resolve("plugin.jar"), PluginJar.module("belts", "belts", PluginJar.GOOD, ""));
    PluginJar.compile(
        plugin.resolve("kelter-core-0.1.jar"),
        Map.of("module-info.java", "module kelter.core { }"));
    Problem told = onlyTheBrokenOneIsLeftOut();
    assertEquals("plugin belts", told.where());
    assertTrue(told.what().contains("holds kelter-core-0.1.jar, which is a jar of Kelter"));
    assertTrue(told.remedy().contains("take that jar out"), told.remedy());
  }

  @Test
  void aJarWithoutADescriptor() throws IOException {
    Path jar = folder.resolve("automatic.jar");
    PluginJar.compile(jar, PluginJar.module("automatic", "automatic", PluginJar.GOOD, ""));
    Map<String, byte[]> entries = PluginJar.read(jar);
    entries.remove("module-info.class");
    entries.put(
        "META-INF/services/kelter.core.module.CalculationModule",
        "automatic.Plugin\n".getBytes(StandardCharsets.UTF_8));
    PluginJar.write(jar, entries);
    Problem told = onlyTheBrokenOneIsLeftOut();
    assertEquals("has no module-info.class in automatic.jar", told.what());
    assertTrue(told.remedy().contains("module-info.java must say 'provides"), told.remedy());
  }

  @Test
  void anEmptyFolderInIt() throws IOException {
    Files.createDirectory(folder.resolve("empty"));
    assertEquals("holds no jar", onlyTheBrokenOneIsLeftOut().what());
  }

  @Test
  void aFolderWithoutAPlugin() {
    PluginFolder.Content content = PluginFolder.load(folder, WATCH);
    assertEquals("holds no plugin", content.problems().get(0).what());
  }

  @Test
  void folderThatIsNone() {
    assertThrows(InputException.class, () -> PluginFolder.load(folder.resolve("none"), WATCH));
  }
}

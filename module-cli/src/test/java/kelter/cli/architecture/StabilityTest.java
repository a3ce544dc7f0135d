package kelter.cli.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.module.ModuleDescriptor;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every exported package states how stable it is, and a stable one rests on stable ones only. */
class StabilityTest {

  static Set<String> parts() {
    return House.PARTS.keySet();
  }

  private static Set<String> exported(String part) {
    return House.module(part).descriptor().exports().stream()
        .map(ModuleDescriptor.Exports::source)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static List<String> stated(String part, String name) throws IOException {
    Path sources = Path.of("..", House.PARTS.get(part), "src", "main", "java");
    Path description = sources.resolve(name.replace('.', '/')).resolve("package-info.java");
    return Files.exists(description)
        ? StabilityRules.stated(Files.readString(description))
        : List.of();
  }

  private static Set<String> stable(String part) throws IOException {
    Set<String> stable = new TreeSet<>();
    for (String name : exported(part)) {
      if (stated(part, name).equals(List.of("stable"))) {
        stable.add(name);
      }
    }
    return stable;
  }

  @ParameterizedTest
  @MethodSource("parts")
  void everyExportedPackageSaysHowStableItIs(String part) throws IOException {
    Set<String> exported = exported(part);
    List<String> breaches = new ArrayList<>();
    for (String name : House.module(part).descriptor().packages()) {
      breaches.addAll(StabilityRules.breaches(name, exported.contains(name), stated(part, name)));
    }
    assertEquals(List.of(), breaches);
  }

  /** Nobody outside can compile against what nobody outside may count on. */
  @Test
  void internalPackagesOfTheCoreAreOpenToNamedPartsOnly() throws IOException {
    Set<String> internal = new TreeSet<>();
    for (String name : exported("kelter.core")) {
      if (stated("kelter.core", name).equals(List.of("internal"))) {
        internal.add(name);
      }
    }
    Set<String> toNamed =
        House.module("kelter.core").descriptor().exports().stream()
            .filter(ModuleDescriptor.Exports::isQualified)
            .map(ModuleDescriptor.Exports::source)
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(internal, toNamed);
  }

  @Test
  void theContractForModulesIsStableAndRestsOnWhatIs() throws IOException {
    Set<String> stable = stable("kelter.core");
    assertTrue(stable.contains("kelter.core.module"), stable.toString());
    assertEquals(List.of(), StabilityRules.leaks(stable, House.classes()));
  }

  /** The profile api names them in the build file, which cannot read descriptions of packages. */
  @Test
  void theBuildComparesTheStablePackages() throws IOException {
    String build = Files.readString(Path.of("..", House.PARTS.get("kelter.core"), "pom.xml"));
    Set<String> compared =
        Pattern.compile("<include>(kelter\\.core\\..*)</include>")
            .matcher(build)
            .results()
            .map(found -> found.group(1))
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(stable("kelter.core"), compared);
  }

  @Test
  void aMissingWordIsTold() {
    assertEquals(List.of(), StabilityRules.stated("/** Pumps. */\npackage pump;\n"));
    assertEquals(
        List.of("for ever"),
        StabilityRules.stated("/**\n * Pumps.\n *\n * <p>Stability: for ever.\n */"));
    assertEquals(1, StabilityRules.breaches("pump", true, List.of()).size());
    assertEquals(1, StabilityRules.breaches("pump", true, List.of("for ever")).size());
    assertEquals(1, StabilityRules.breaches("pump", true, List.of("stable", "internal")).size());
    assertEquals(1, StabilityRules.breaches("pump", false, List.of("stable")).size());
  }

  /** The way in for programs hands out cases with the stock of a shop, which may change. */
  @Test
  void aLeakIsTold() {
    List<String> leaks = StabilityRules.leaks(Set.of("kelter.core.workshop"), House.classes());
    assertTrue(
        leaks.contains("kelter.core.workshop.Workshop hands out kelter.core.shop"),
        leaks.toString());
  }
}

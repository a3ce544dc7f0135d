package kelter.cli.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.lang.ArchRule;
import java.io.IOException;
import java.io.InputStream;
import java.lang.module.ModuleReader;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The rules of the house hold for the code of all parts. */
class ArchitectureTest {

  /** The major version of class files of Java 17 (The Java Virtual Machine Specification, 4.1). */
  private static final int JAVA_17 = 61;

  private static JavaClasses house;

  static Stream<String> parts() {
    return House.PARTS.keySet().stream().filter(House::isWritten);
  }

  static Stream<Arguments> rules() {
    return new HouseRules("kelter")
        .all().entrySet().stream().map(rule -> Arguments.of(rule.getKey(), rule.getValue()));
  }

  @BeforeAll
  static void find() {
    house = House.classes();
    assertTrue(parts().toList().contains("kelter.core"), "the core is written");
    parts().forEach(ArchitectureTest::requireClasses);
    assertTrue(
        house.stream().noneMatch(type -> type.getName().startsWith("kelter.testkit")),
        "tests are left out");
    assertTrue(
        house.stream().noneMatch(type -> type.getName().startsWith("kelter.cli.architecture")),
        "tests are left out");
  }

  private static void requireClasses(String part) {
    long found = house.stream().filter(type -> type.getName().startsWith(part + ".")).count();
    assertTrue(found > 0, "no class of " + part + " was found");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("rules")
  void holds(String name, ArchRule rule) {
    rule.check(house);
  }

  @ParameterizedTest
  @MethodSource("parts")
  void descriptorSaysWhatThePartMayDo(String part) {
    assertEquals(List.of(), DescriptorRules.breaches(House.module(part).descriptor()));
  }

  @ParameterizedTest
  @MethodSource("parts")
  void classesAreThoseOfJava17(String part) throws IOException {
    try (ModuleReader reader = House.module(part).open();
        InputStream descriptor = reader.open("module-info.class").orElseThrow()) {
      byte[] head = descriptor.readNBytes(8);
      assertEquals(JAVA_17, head[6] << 8 | head[7]);
    }
  }
}

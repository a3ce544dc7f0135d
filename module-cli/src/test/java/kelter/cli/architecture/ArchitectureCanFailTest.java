package kelter.cli.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.lang.ArchRule;
import java.lang.module.ModuleDescriptor;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each rule of the house is told when the small house under {@code broken} breaks it. */
class ArchitectureCanFailTest {

  private static final Map<String, ArchRule> RULES =
      new HouseRules("kelter.cli.architecture.broken").all();
  private static final JavaClasses BROKEN = House.broken();

  private static String report(String rule) {
    return String.join("\n", RULES.get(rule).evaluate(BROKEN).getFailureReport().getDetails());
  }

  @Test
  void theBrokenHouseWasFound() {
    assertTrue(BROKEN.size() >= RULES.size(), "classes found: " + BROKEN.size());
  }

  @Test
  void everyRuleIsBrokenOnce() {
    RULES.keySet().forEach(rule -> assertFalse(report(rule).isEmpty(), rule));
  }

  @ParameterizedTest
  @CsvSource({
    "the core depends on no other part, core.KnowsTerminal",
    "hydraulics depends on the core only, hydraulics.KnowsNeighbour",
    "hydraulics depends on the core only, hydraulics.KnowsContainer",
    "electrical depends on the core only, electrical.KnowsContainer",
    "costing depends on the core only, costing.KnowsNeighbour",
    "only the command line knows the container, hydraulics.KnowsContainer",
    "only the command line writes to the terminal, core.Prints",
    "only the command line writes to the terminal, costing.PrintsTrace",
    "only the command line writes to the terminal, costing.AsksConsole",
    "only the command line writes to the terminal, costing.Logs",
    "only the core's file package touches the disk, core.Stores",
    "only the core's file package touches the disk, costing.Loads",
    "only the core's file package touches the disk, costing.OpensByName",
    "files are written in one place, core.file.Keeper",
    "no cycles between packages, core.alpha.First",
    "a calculation never reads a job, electrical.ReadsJob",
    "laws know no part, hydraulics.flow.KnowsPart",
    "physics knows no fault, hydraulics.KnowsFault",
    "faults are rows of a part's model, hydraulics.valve.Valve",
    "limits are rows of checks, hydraulics.Judges"
  })
  void theOffenderIsNamed(String rule, String offender) {
    assertTrue(report(rule).contains("broken." + offender), report(rule));
  }

  @ParameterizedTest
  @CsvSource({
    "only the command line writes to the terminal, cli.Terminal",
    "only the command line knows the container, cli.Terminal",
    "only the core's file package touches the disk, core.file.Keeper",
    "only the core's file package touches the disk, cli.Terminal",
    "files are written in one place, core.file.disk.Writes"
  })
  void whoMayIsNotNamed(String rule, String innocent) {
    assertFalse(report(rule).contains("broken." + innocent), report(rule));
  }

  @Test
  void aDescriptorThatRequiresTooMuch() {
    assertEquals(
        List.of("kelter.core requires com.google.guice"),
        DescriptorRules.breaches(
            ModuleDescriptor.newModule("kelter.core").requires("com.google.guice").build()));
    assertTold("kelter.core requires kelter.costing", module("core").requires("kelter.costing"));
    assertTold(
        "kelter.costing requires kelter.electrical",
        module("costing").requires("kelter.electrical"));
    assertTold("kelter.cli requires kelter.costing", module("cli").requires("kelter.costing"));
  }

  @Test
  void aDescriptorThatExportsOrHoldsTooMuchOrProvidesNothing() {
    assertTold(
        "kelter.core exports kelter.core.internal", module("core").exports("kelter.core.internal"));
    assertTold(
        "kelter.corelation does not belong", module("core").packages(Set.of("kelter.corelation")));
    assertTold("kelter.hydraulics provides no", module("hydraulics"));
    assertTold(
        "has no descriptor of its own", ModuleDescriptor.newAutomaticModule("kelter.electrical"));
    assertTold("has no descriptor of its own", ModuleDescriptor.newOpenModule("kelter.electrical"));
  }

  private static ModuleDescriptor.Builder module(String part) {
    return ModuleDescriptor.newModule("kelter." + part);
  }

  private static void assertTold(String part, ModuleDescriptor.Builder builder) {
    List<String> breaches = DescriptorRules.breaches(builder.build());
    assertTrue(breaches.stream().anyMatch(b -> b.contains(part)), breaches.toString());
  }
}

package kelter.cli.wiring;

import java.lang.module.ModuleDescriptor;
import java.util.Arrays;
import java.util.List;
import kelter.core.module.CalculationModule;

/**
 * For which version of the core a plugin was built: the compiler notes it in the descriptor of a
 * module beside what it requires. Versions go together whose first two numbers are the same.
 *
 * @param builtFor the version that the descriptor notes; empty if it notes none
 * @param running the version at work; empty if it was built without one
 */
record CoreVersion(String builtFor, String running) {

  private static final String NUMBERS_END = "[-+]";

  /** For which version a module was built. */
  static CoreVersion of(ModuleDescriptor plugin) {
    ModuleDescriptor core = CalculationModule.class.getModule().getDescriptor();
    return new CoreVersion(
        plugin.requires().stream()
            .filter(required -> required.name().equals(core.name()))
            .findFirst()
            .flatMap(ModuleDescriptor.Requires::rawCompiledVersion)
            .orElse(""),
        core.rawVersion().orElse(""));
  }

  /** What does not fit, in words; empty if nothing is known to. */
  String mismatch() {
    if (running.isEmpty() || firstTwo(builtFor).equals(firstTwo(running))) {
      return "";
    }
    return builtFor.isEmpty()
        ? "does not tell for which version of Kelter it was built; this is " + running
        : "was built for Kelter " + builtFor + "; this is " + running;
  }

  private static List<String> firstTwo(String version) {
    return Arrays.stream(version.split(NUMBERS_END)[0].split("\\.")).limit(2).toList();
  }
}

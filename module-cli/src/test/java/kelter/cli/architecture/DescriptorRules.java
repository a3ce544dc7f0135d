package kelter.cli.architecture;

import java.lang.module.ModuleDescriptor;
import java.lang.module.ModuleDescriptor.Requires;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** What the descriptor of a part must say. */
final class DescriptorRules {

  private static final Set<String> MODULES =
      Set.of("kelter.hydraulics", "kelter.electrical", "kelter.costing");
  private static final String CONTRACT = "kelter.core.module.CalculationModule";

  private DescriptorRules() {}

  /** What is wrong with the descriptor of a part. */
  static List<String> breaches(ModuleDescriptor descriptor) {
    List<String> breaches = new ArrayList<>();
    if (descriptor.isAutomatic() || descriptor.isOpen()) {
      breaches.add(descriptor.name() + " has no descriptor of its own, or an open one");
    }
    for (String name : descriptor.packages()) {
      if (!(name + ".").startsWith(descriptor.name() + ".")) {
        breaches.add(name + " does not belong to " + descriptor.name());
      }
    }
    for (ModuleDescriptor.Exports exports : descriptor.exports()) {
      if (List.of(exports.source().split("\\.")).contains("internal")) {
        breaches.add(descriptor.name() + " exports " + exports.source());
      }
    }
    for (Requires requires : descriptor.requires()) {
      if (!allowed(descriptor.name(), requires.name())) {
        breaches.add(descriptor.name() + " requires " + requires.name());
      }
    }
    boolean provides = descriptor.provides().stream().anyMatch(p -> p.service().equals(CONTRACT));
    if (MODULES.contains(descriptor.name()) && !provides) {
      breaches.add(descriptor.name() + " provides no " + CONTRACT);
    }
    return breaches;
  }

  private static boolean allowed(String part, String required) {
    if (part.equals("kelter.cli")) {
      return !MODULES.contains(required);
    }
    boolean kernel = required.equals("java.base") || required.startsWith("org.apache.commons.");
    return part.equals("kelter.core")
        ? kernel || required.equals("com.fasterxml.jackson.core")
        : kernel || required.equals("kelter.core");
  }
}

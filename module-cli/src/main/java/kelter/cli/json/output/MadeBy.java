package kelter.cli.json.output;

import java.io.IOException;
import java.lang.module.ModuleDescriptor;
import java.util.List;
import kelter.core.module.About;

/**
 * Who made a result.
 *
 * @param kelter the version of the tool
 * @param modules the modules that were loaded; none where a mistake was found before
 */
public record MadeBy(String kelter, List<About> modules) {

  public MadeBy {
    modules = List.copyOf(modules);
  }

  /**
   * This tool with modules.
   *
   * @param modules the modules that were loaded
   * @return who makes a result now
   */
  public static MadeBy loaded(List<About> modules) {
    return new MadeBy(version(), modules);
  }

  /**
   * The version of the tool.
   *
   * @return the one that was built; from classes without a descriptor it is not known
   */
  public static String version() {
    ModuleDescriptor descriptor = MadeBy.class.getModule().getDescriptor();
    return descriptor == null ? "unknown" : descriptor.rawVersion().orElse("unknown");
  }

  void write(JsonOutput out) throws IOException {
    out.text("kelter", kelter);
    out.objects(
        "modules",
        modules,
        module -> {
          out.text("id", module.id());
          out.text("version", module.version());
        });
  }
}

package kelter.cli.json.output;

import java.io.IOException;
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

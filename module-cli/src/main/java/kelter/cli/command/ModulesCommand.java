package kelter.cli.command;

import kelter.cli.json.ResultJson;
import kelter.cli.text.ModulesText;
import kelter.cli.wiring.Workshop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code kelter modules}: what is loaded. */
@Command(
    name = "modules",
    description = "Tell what is loaded, and what each module can compute, with sources.",
    footer = {"", "Example:", "  kelter modules --plugins plugins"})
final class ModulesCommand implements Action {

  @Mixin private Shared shared;

  @Override
  public Shared shared() {
    return shared;
  }

  @Override
  public void run(Shared options) {
    Workshop workshop = options.workshop();
    if (options.isJson()) {
      options.terminal().printUtf8(ResultJson.modules(workshop.modules()));
    } else {
      options.terminal().print(ModulesText.of(workshop.modules(), options.terminal()));
    }
  }
}

package kelter.cli.command;

import kelter.cli.json.ResultJson;
import kelter.cli.text.ModulesText;
import kelter.cli.wiring.Workshop;
import picocli.CommandLine.Model.CommandSpec;

/** {@code kelter modules}: what is loaded. */
final class ModulesCommand implements Command {

  @Override
  public CommandSpec spec() {
    return Arguments.command(
        "modules",
        Arguments.lines("Tell what is loaded, and what each module can compute, with sources."),
        "kelter modules --plugins plugins");
  }

  @Override
  public void run(Invocation invocation) {
    Workshop workshop = invocation.workshop();
    if (invocation.isJson()) {
      invocation.terminal().printUtf8(ResultJson.modules(workshop.modules()));
    } else {
      invocation.terminal().print(ModulesText.of(workshop.modules(), invocation.terminal()));
    }
  }
}

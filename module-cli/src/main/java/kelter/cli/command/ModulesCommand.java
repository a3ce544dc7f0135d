package kelter.cli.command;

import java.util.List;
import kelter.cli.json.ResultJson;
import kelter.cli.text.ModulesText;
import kelter.cli.usage.CommandUsage;
import kelter.core.module.CalculationModule;
import kelter.core.vocabulary.Vocabulary;

/** {@code kelter modules}: what is loaded. */
final class ModulesCommand implements Command {

  @Override
  public CommandUsage usage() {
    return new CommandUsage(
        "modules",
        "Tell what is loaded, what it can compute, and the words for symptoms.",
        "It ends with 1 where a plugin was left out.",
        List.of(),
        List.of(),
        List.of("kelter modules", "kelter modules --plugins my-plugins"));
  }

  @Override
  public void run(Invocation invocation) {
    List<CalculationModule> modules = invocation.workshop().modules();
    Vocabulary vocabulary = invocation.workshop().vocabulary();
    Command.show(
        invocation,
        () -> ResultJson.modules(modules, vocabulary),
        () -> ModulesText.of(modules, vocabulary, invocation.terminal()));
    if (invocation.refusedPlugins()) {
      invocation.fail();
    }
  }
}

package kelter.cli.command.tool;

import java.util.List;
import kelter.cli.command.Command;
import kelter.cli.command.Invocation;
import kelter.cli.json.ModulesJson;
import kelter.cli.text.ModulesText;
import kelter.cli.usage.CommandOption;
import kelter.cli.usage.CommandUsage;
import kelter.core.module.CalculationModule;
import kelter.core.vocabulary.Vocabulary;
import kelter.core.workshop.Coverage;

/** {@code kelter modules}: what is loaded. */
public final class ModulesCommand implements Command {

  private static final CommandOption COVERAGE =
      CommandOption.flag(
          "--coverage", "how much of what is behind calls has a model, by kind of machine");

  @Override
  public CommandUsage usage() {
    return new CommandUsage(
        "modules",
        "Tell what is loaded, what it computes, and the words of jobs.",
        "It ends with 1 where a plugin was left out.",
        List.of(COVERAGE),
        List.of(),
        List.of(
            "kelter modules", "kelter modules --coverage", "kelter modules --plugins my-plugins"));
  }

  @Override
  public void run(Invocation invocation) {
    List<CalculationModule> modules = invocation.workshop().modules();
    Vocabulary vocabulary = invocation.workshop().vocabulary();
    if (invocation.given().has(COVERAGE)) {
      List<Coverage> coverage = invocation.workshop().coverage();
      Command.show(
          invocation,
          () -> ModulesJson.coverage(coverage),
          () -> ModulesText.coverage(coverage, invocation.terminal()));
      return;
    }
    Command.show(
        invocation,
        () -> ModulesJson.of(invocation.workshop(), invocation.refused()),
        () -> ModulesText.of(modules, vocabulary, invocation.terminal()));
    if (!invocation.refused().isEmpty()) {
      invocation.fail();
    }
  }
}

package kelter.cli.command;

import java.nio.file.Path;
import java.util.Optional;
import kelter.cli.terminal.Terminal;
import kelter.cli.usage.CommandArgument;
import kelter.cli.usage.CommandOption;
import kelter.cli.usage.CommandUsage;
import kelter.cli.usage.Given;
import kelter.cli.usage.ValueKind;
import kelter.cli.wiring.Opening;
import kelter.cli.wiring.Workshop;
import kelter.core.file.JobFile;
import kelter.core.file.ShopFile;
import kelter.core.file.json.Json;
import kelter.core.problem.Problem;
import kelter.core.shop.Shop;

/**
 * One call of a command: what was given on the command line, and where the result goes.
 *
 * @param given the options and arguments of the command
 * @param opening opens the workshop
 * @param terminal where results and complaints go
 */
record Invocation(Given given, Opening opening, Terminal terminal) {

  /** The shop profile, for the commands that read a job. */
  static final CommandOption SHOP =
      CommandOption.one(
          "--shop",
          ValueKind.FILE,
          "FILE",
          "the shop profile: instruments, decision level, live work");

  /** The job that a command reads. */
  static CommandArgument jobFile(String text) {
    return CommandArgument.one("JOB", ValueKind.FILE, text);
  }

  boolean isTraced() {
    return given.has(CommandUsage.TRACE);
  }

  boolean isJson() {
    return given.isJson();
  }

  /** The first argument. */
  String argument() {
    return given.arguments().get(0);
  }

  /** The file that the first argument names. */
  Path file() {
    return Path.of(argument());
  }

  /** The job that the first argument names; its file is read while the workshop may be opening. */
  OpenJob job() {
    Json content = JobFile.content(file());
    Workshop workshop = workshop();
    return new OpenJob(workshop, workshop.read(content).job());
  }

  Workshop workshop() {
    Optional<Path> profile = given.path(SHOP);
    Shop shop = profile.isPresent() ? ShopFile.read(profile.get()).shop() : Shop.UNKNOWN;
    Workshop workshop = opening.workshop(given.path(CommandUsage.PLUGINS), shop);
    for (Problem refused : workshop.refused()) {
      terminal.complain("kelter: " + refused.display());
    }
    return workshop;
  }
}

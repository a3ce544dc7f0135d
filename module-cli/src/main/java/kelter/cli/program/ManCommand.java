package kelter.cli.program;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import kelter.cli.command.Command;
import kelter.cli.command.ExitCode;
import kelter.cli.command.Invocation;
import kelter.cli.json.output.MadeBy;
import kelter.cli.usage.CommandArgument;
import kelter.cli.usage.CommandOption;
import kelter.cli.usage.CommandUsage;
import kelter.cli.usage.ManualPage;
import kelter.cli.usage.ValueKind;
import kelter.core.file.disk.Folder;
import kelter.core.file.disk.TextFile;
import kelter.core.problem.InputException;
import kelter.core.quantity.Nearest;

/** {@code kelter man [COMMAND]}: manual pages. */
final class ManCommand implements Command {

  private static final CommandOption OUTPUT =
      CommandOption.one(
              "--output",
              ValueKind.FILE,
              "DIR",
              "write into this folder, made if there is none; without COMMAND all pages")
          .or("-o");
  private static final String ALL = "kelter";

  @Override
  public CommandUsage usage() {
    return new CommandUsage(
            "man",
            "Print the manual page of a command, or write all pages.",
            "Pages are in roff, for man(1). Without a command it prints the page that lists the"
                + " commands.",
            List.of(OUTPUT),
            List.of(
                new CommandArgument(
                    "COMMAND",
                    ValueKind.COMMAND,
                    true,
                    true,
                    "the name of a command, of one word or two")),
            List.of("kelter man diagnose", "kelter man -o ~/.local/share/man/man1"))
        .forPeople();
  }

  @Override
  public void run(Invocation invocation) {
    ManualPage pages = new ManualPage(MadeBy.version(), ExitCode.MEANING);
    Optional<Path> folder = invocation.given().path(OUTPUT);
    String name = String.join(" ", invocation.given().arguments());
    if (!name.isEmpty()) {
      CommandUsage usage = Commands.named(known(name)).usage();
      show(ManualPage.fileName(name), pages.of(usage), folder, invocation);
      return;
    }
    show(ALL, pages.ofAll(Kelter.SUMMARY, Commands.usages()), folder, invocation);
    if (folder.isPresent()) {
      for (CommandUsage usage : Commands.usages()) {
        show(ManualPage.fileName(usage.name()), pages.of(usage), folder, invocation);
      }
    }
  }

  private static String known(String name) {
    if (Commands.NAMES.contains(name)) {
      return name;
    }
    throw new InputException(
        name,
        "is not the name of a command",
        Nearest.of(name, Commands.NAMES)
            .map(near -> "did you mean '" + near + "'?")
            .orElse("'kelter --help' lists them"));
  }

  private static void show(String name, String page, Optional<Path> folder, Invocation invocation) {
    if (folder.isEmpty()) {
      invocation.terminal().print(page);
      return;
    }
    Folder.make(folder.get());
    Path file = folder.get().resolve(name + ".1");
    TextFile.write(file, page);
    invocation.terminal().complain("Written: " + file);
  }
}

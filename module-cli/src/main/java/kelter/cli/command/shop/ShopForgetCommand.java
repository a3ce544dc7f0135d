package kelter.cli.command.shop;

import java.util.List;
import java.util.Optional;
import kelter.cli.command.Command;
import kelter.cli.command.Invocation;
import kelter.cli.command.NamedShop;
import kelter.cli.text.Layout;
import kelter.cli.usage.CommandArgument;
import kelter.cli.usage.CommandUsage;
import kelter.cli.usage.ValueKind;

/** {@code kelter shop forget ID}: erases a person, and says what remains. */
public final class ShopForgetCommand implements Command {

  private static final String MAY_TELL =
      "They hold no name of their own, but read complaint, notes and serial number: what somebody"
          + " wrote there may still tell who it was.";
  private static final String UNKNOWN =
      "this person's jobs, which are unknown: the file could not be read. " + MAY_TELL;

  @Override
  public CommandUsage usage() {
    return new CommandUsage(
            "shop forget",
            "Erase name and address of an owner, and say what remains.",
            "The file is erased whatever it holds, even if it cannot be read.",
            List.of(NamedShop.OPTION),
            List.of(CommandArgument.one("PERSON", ValueKind.TEXT, "the word for the person")),
            List.of("kelter shop forget p-17 --shop my-shop"))
        .forPeople();
  }

  @Override
  public void run(Invocation invocation) {
    Optional<List<String>> jobs = ShopPersonCommand.of(invocation).forget(invocation.argument());
    Layout layout = new Layout(invocation.terminal());
    layout.line("Erased: name, address, telephone and e-mail of " + invocation.argument() + ".");
    layout.hanging("Remain: ", jobs.map(ShopForgetCommand::remaining).orElse(UNKNOWN));
    layout.line(
        "Reports, quotations, the words of closed jobs in the job book, and backups are not touched.");
    invocation.terminal().print(layout.toString());
  }

  private static String remaining(List<String> jobs) {
    return jobs.isEmpty()
        ? "no job was named for this person."
        : "the jobs " + String.join(", ", jobs) + ". " + MAY_TELL;
  }
}

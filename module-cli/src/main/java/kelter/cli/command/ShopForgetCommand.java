package kelter.cli.command;

import java.util.List;
import kelter.cli.text.Layout;
import kelter.cli.usage.CommandArgument;
import kelter.cli.usage.CommandUsage;
import kelter.cli.usage.ValueKind;

/** {@code kelter shop forget ID}: erases a person, and says what remains. */
final class ShopForgetCommand implements Command {

  @Override
  public CommandUsage usage() {
    return new CommandUsage(
            "shop forget",
            "Erase name and address of an owner, and say what remains.",
            "",
            List.of(NamedShop.OPTION),
            List.of(CommandArgument.one("PERSON", ValueKind.TEXT, "the word for the person")),
            List.of("kelter shop forget p-17 --shop my-shop"))
        .forPeople();
  }

  @Override
  public void run(Invocation invocation) {
    List<String> jobs = ShopPersonCommand.of(invocation).forget(invocation.argument());
    Layout layout = new Layout(invocation.terminal());
    layout.line("Erased: name, address, telephone and e-mail of " + invocation.argument() + ".");
    layout.hanging(
        "Remain: ",
        jobs.isEmpty()
            ? "no job was named for this person."
            : "the jobs "
                + String.join(", ", jobs)
                + ". They hold no name of their own, but read complaint, notes and serial number:"
                + " what somebody wrote there may still tell who it was.");
    layout.line("Reports, quotations and backups that were made before are not touched.");
    invocation.terminal().print(layout.toString());
  }
}

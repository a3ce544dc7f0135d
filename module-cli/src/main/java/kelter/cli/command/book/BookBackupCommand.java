package kelter.cli.command.book;

import java.nio.file.Path;
import java.util.List;
import kelter.cli.command.Command;
import kelter.cli.command.Invocation;
import kelter.cli.json.BookJson;
import kelter.cli.text.Layout;
import kelter.cli.usage.CommandArgument;
import kelter.cli.usage.CommandUsage;
import kelter.cli.usage.ValueKind;
import kelter.core.book.JobBook;

/** {@code kelter book backup FILE}: a copy of the whole book. */
public final class BookBackupCommand implements Command {

  @Override
  public CommandUsage usage() {
    return new CommandUsage(
        "book backup",
        "Copy the job book as it is now.",
        "Others may go on writing to it meanwhile. The copy is a job book itself: put it in the place of a damaged one.",
        List.of(NamedBook.OPTION, Invocation.SHOP),
        List.of(CommandArgument.one("FILE", ValueKind.FILE, "the copy; an existing file is kept")),
        List.of("kelter book backup --shop my-shop book-copy.db"));
  }

  @Override
  public void run(Invocation invocation) {
    Path to = invocation.file();
    try (JobBook book = NamedBook.of(invocation).open()) {
      book.backUp(to);
      long size = book.size();
      Command.show(
          invocation,
          () -> BookJson.backup(to.toString(), size),
          () ->
              new Layout(invocation.terminal())
                  .line("Copied: " + size + " jobs to " + to)
                  .toString());
    }
  }
}

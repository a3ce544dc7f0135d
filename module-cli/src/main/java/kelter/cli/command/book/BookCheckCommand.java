package kelter.cli.command.book;

import java.util.List;
import kelter.cli.command.Command;
import kelter.cli.command.Invocation;
import kelter.cli.json.BookJson;
import kelter.cli.text.Layout;
import kelter.cli.usage.CommandUsage;
import kelter.core.book.JobBook;

/** {@code kelter book check}: whether the book is sound. */
public final class BookCheckCommand implements Command {

  @Override
  public CommandUsage usage() {
    return new CommandUsage(
        "book check",
        "Look whether the job book is sound.",
        "The file, and whether every job is as it was added.",
        List.of(NamedBook.OPTION, Invocation.SHOP),
        List.of(),
        List.of("kelter book check --shop my-shop"));
  }

  @Override
  public void run(Invocation invocation) {
    try (JobBook book = NamedBook.of(invocation).open()) {
      List<String> wrong = book.check();
      long size = wrong.isEmpty() ? book.size() : 0;
      Command.show(
          invocation,
          () -> BookJson.check(size, wrong),
          () -> words(size, wrong, new Layout(invocation.terminal())));
      if (!wrong.isEmpty()) {
        invocation.fail();
      }
    }
  }

  private static String words(long size, List<String> wrong, Layout layout) {
    if (wrong.isEmpty()) {
      return layout.line("The book is sound: " + size + " jobs.").toString();
    }
    layout.line("The book is damaged. Keep it aside and take the last backup.");
    wrong.forEach(each -> layout.hanging("  ", each));
    return layout.toString();
  }
}

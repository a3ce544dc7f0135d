package kelter.cli.command.book;

import java.util.List;
import java.util.Map;
import kelter.cli.command.Command;
import kelter.cli.command.Invocation;
import kelter.cli.json.BookJson;
import kelter.cli.text.book.EntryText;
import kelter.cli.usage.CommandArgument;
import kelter.cli.usage.CommandUsage;
import kelter.cli.usage.ValueKind;
import kelter.core.book.BookEntry;
import kelter.core.book.JobBook;
import kelter.core.problem.InputException;

/** {@code kelter book show JOB}: all that the job book has of a job. */
public final class BookShowCommand implements Command {

  @Override
  public CommandUsage usage() {
    return new CommandUsage(
        "book show",
        "Show all that the job book has of a job.",
        "",
        List.of(NamedBook.OPTION, Invocation.SHOP),
        List.of(CommandArgument.one("JOB", ValueKind.TEXT, "the id of a closed job")),
        List.of("kelter book show --shop my-shop marrowby-0412"));
  }

  @Override
  public void run(Invocation invocation) {
    String job = invocation.argument();
    try (JobBook book = NamedBook.of(invocation).open()) {
      BookEntry entry = book.find(job).orElseThrow(() -> unknown(job));
      Map<String, List<String>> cameBack = book.cameBack(List.of(job));
      Command.show(
          invocation,
          () -> BookJson.entries(List.of(entry)),
          () -> EntryText.of(entry, cameBack.getOrDefault(job, List.of()), invocation.terminal()));
    }
  }

  static InputException unknown(String job) {
    return new InputException(
        job, "is no job in the book", "'kelter book list' shows the latest ones");
  }
}

package kelter.cli.command;

import java.util.List;
import kelter.cli.text.book.StatsText;
import kelter.cli.usage.CommandUsage;
import kelter.core.book.learned.Learned;
import kelter.core.file.book.LearnedFile;

/** {@code kelter book stats}: what the job book tells of work, cures, parts and predictions. */
final class BookStatsCommand implements Command {

  @Override
  public CommandUsage usage() {
    return new CommandUsage(
        "book stats",
        "Show what the job book tells of causes, cures, times and parts.",
        "Every figure says from how many jobs it is. Nothing is forgotten unless you say so, and"
            + " nothing is written.",
        List.of(BookLearnCommand.KEPT, NamedBook.OPTION, Invocation.SHOP),
        List.of(),
        List.of("kelter book stats --shop my-shop"));
  }

  @Override
  public void run(Invocation invocation) {
    Learned learned = BookLearnCommand.learned(invocation, 1);
    Command.showFile(
        invocation,
        () -> LearnedFile.text(learned),
        () -> StatsText.of(learned, BookLearnCommand.kinds(invocation), invocation.terminal()));
  }
}

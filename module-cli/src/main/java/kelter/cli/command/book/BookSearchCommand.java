package kelter.cli.command.book;

import java.util.List;
import kelter.cli.command.Command;
import kelter.cli.command.Invocation;
import kelter.cli.usage.CommandArgument;
import kelter.cli.usage.CommandUsage;
import kelter.cli.usage.ValueKind;
import kelter.core.book.JobBook;

/** {@code kelter book search WORDS}: entries that have some words. */
public final class BookSearchCommand implements Command {

  @Override
  public CommandUsage usage() {
    return new CommandUsage(
        "book search",
        "Search the words of closed jobs.",
        "In complaint, notes, maker, model and serial number. A job is found if it has all words, or words that begin so.",
        List.of(BookListCommand.MOST, NamedBook.OPTION, Invocation.SHOP),
        List.of(new CommandArgument("WORDS", ValueKind.TEXT, false, true, "words in any case")),
        List.of("kelter book search --shop my-shop seal leak"));
  }

  @Override
  public void run(Invocation invocation) {
    String words = String.join(" ", invocation.given().arguments());
    try (JobBook book = NamedBook.of(invocation).open()) {
      BookListCommand.show(invocation, book.search(words, BookListCommand.most(invocation)));
    }
  }
}

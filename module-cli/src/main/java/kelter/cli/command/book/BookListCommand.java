package kelter.cli.command.book;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import kelter.cli.command.Command;
import kelter.cli.command.Invocation;
import kelter.cli.command.KindWords;
import kelter.cli.json.BookJson;
import kelter.cli.text.book.EntriesText;
import kelter.cli.usage.CommandOption;
import kelter.cli.usage.CommandUsage;
import kelter.cli.usage.ValueKind;
import kelter.core.book.BookEntry;
import kelter.core.book.JobBook;
import kelter.core.book.Selection;
import kelter.core.catalogue.Kind;
import kelter.core.catalogue.Kinds;
import kelter.core.problem.InputException;
import kelter.core.vocabulary.CalendarDate;
import kelter.core.vocabulary.Ids;

/** {@code kelter book list}: entries of the job book, the latest first. */
public final class BookListCommand implements Command {

  static final CommandOption MOST =
      CommandOption.one("--most", ValueKind.COUNT, "N", "show so many at most (default 20)")
          .or("-n");

  static final int USUAL = 20;

  private static final int MOST_SHOWN = 100_000;

  private static final CommandOption KIND =
      CommandOption.one("--kind", ValueKind.KIND, "KIND", "only machines of this kind");
  private static final CommandOption FROM =
      CommandOption.one("--from", ValueKind.TEXT, "DAY", "only jobs closed then or later");
  private static final CommandOption TO =
      CommandOption.one("--to", ValueKind.TEXT, "DAY", "only jobs closed then or earlier");

  @Override
  public CommandUsage usage() {
    return new CommandUsage(
        "book list",
        "List closed jobs of the job book, the latest first.",
        "",
        List.of(KIND, FROM, TO, MOST, NamedBook.OPTION, Invocation.SHOP),
        List.of(),
        List.of(
            "kelter book list --shop my-shop",
            "kelter book list --shop my-shop --kind dishwasher --from 2026-01-01"));
  }

  @Override
  public void run(Invocation invocation) {
    Selection selection =
        new Selection(
            kind(invocation), day(invocation, FROM), day(invocation, TO), most(invocation));
    try (JobBook book = NamedBook.of(invocation).open()) {
      show(invocation, book.list(selection));
    }
  }

  static void show(Invocation invocation, List<BookEntry> entries) {
    Command.show(
        invocation,
        () -> BookJson.entries(entries),
        () -> EntriesText.of(entries, invocation.terminal()));
  }

  static int most(Invocation invocation) {
    int most = invocation.given().count(MOST, USUAL);
    if (most < 1 || most > MOST_SHOWN) {
      throw new InputException(
          MOST.name() + " " + most, "is not allowed", "1 to " + MOST_SHOWN + " are");
    }
    return most;
  }

  /** Entries may be of kinds that no file tells of, which are asked for by their id. */
  private static String kind(Invocation invocation) {
    Optional<String> words = invocation.given().text(KIND);
    if (words.isEmpty() || Ids.isId(words.get()) && !isNamed(words.get(), invocation)) {
      return words.orElse("");
    }
    Kinds kinds = BookLearnCommand.kinds(invocation);
    return KindWords.kind(words.get(), kinds).map(Kind::id).orElse(KindWords.OTHER);
  }

  private static boolean isNamed(String words, Invocation invocation) {
    return !BookLearnCommand.kinds(invocation).meant(words).isEmpty();
  }

  private static Optional<LocalDate> day(Invocation invocation, CommandOption option) {
    Optional<String> text = invocation.given().text(option);
    try {
      return text.map(CalendarDate::require);
    } catch (IllegalArgumentException noDate) {
      throw new InputException(option.name(), noDate.getMessage(), "");
    }
  }
}

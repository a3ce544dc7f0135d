package kelter.cli.command.book;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import kelter.cli.command.Command;
import kelter.cli.command.Invocation;
import kelter.cli.json.BookJson;
import kelter.cli.text.Layout;
import kelter.cli.usage.CommandArgument;
import kelter.cli.usage.CommandUsage;
import kelter.cli.usage.ValueKind;
import kelter.core.book.Added;
import kelter.core.book.BookEntry;
import kelter.core.book.JobBook;
import kelter.core.file.book.EntrySource;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.workshop.Case;
import kelter.core.workshop.book.ClosedCase;

/** {@code kelter book add FILE}: closed jobs into the book, all or none. */
public final class BookAddCommand implements Command {

  private static final String JOB = ".json";

  @Override
  public CommandUsage usage() {
    return new CommandUsage(
        "book add",
        "Add closed jobs to the job book.",
        "All of them or, where one has a mistake, none. A job that is in the book already is left"
            + " as it is, also where its serial number is left out now.",
        List.of(NamedBook.OPTION, Invocation.SHOP),
        List.of(
            CommandArgument.one(
                "FILE",
                ValueKind.FILE,
                "a closed job (.json), or closed jobs, one line of JSON each (schema book-entry)")),
        List.of("kelter book add --shop my-shop closed.jsonl"));
  }

  @Override
  public void run(Invocation invocation) {
    List<BookEntry> entries = entries(invocation);
    List<Problem> problems = new ArrayList<>();
    int fresh = 0;
    try (JobBook book = NamedBook.of(invocation).openOrMake()) {
      List<Added> added = book.add(entries);
      for (int i = 0; i < added.size(); i++) {
        fresh += added.get(i) == Added.NEW ? 1 : 0;
        if (added.get(i) == Added.OTHER) {
          problems.add(other(entries.get(i).job()));
        }
      }
    }
    int known = entries.size() - fresh - problems.size();
    BookJson.Counts counts = new BookJson.Counts(fresh, known, problems.size(), 0);
    Command.show(
        invocation,
        () -> BookJson.added(counts),
        () -> words(counts, new Layout(invocation.terminal())));
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
  }

  static Problem other(String job) {
    return new Problem(
        "job " + job,
        "is in the book with other content; the book keeps what it had",
        "if it is another job, give it another id, or all of its book with 'book import --prefix'");
  }

  static String words(BookJson.Counts counts, Layout layout) {
    layout.line("Added: %s. In the book already: %s.".formatted(counts.added(), counts.known()));
    if (counts.other() + counts.refused() > 0) {
      layout.line(
          "Not added: %s with another content than in the book, %s that cannot be used."
              .formatted(counts.other(), counts.refused()));
    }
    return layout.toString();
  }

  /** A closed job by its file or its id, or lines of entries. */
  private static List<BookEntry> entries(Invocation invocation) {
    Path file = invocation.jobFile();
    if (file.toString().toLowerCase(Locale.ROOT).endsWith(JOB)) {
      Case machine = invocation.workshop().open(invocation.job(file).job());
      return List.of(
          ClosedCase.entry(machine)
              .orElseThrow(
                  () ->
                      new InputException(
                          file.toString(), "the job is not closed", "kelter close " + file)));
    }
    return entriesOf(invocation);
  }

  private static List<BookEntry> entriesOf(Invocation invocation) {
    List<BookEntry> entries = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    EntrySource.read(
        invocation.file(),
        new EntrySource.Sink() {
          @Override
          public void entry(long line, BookEntry entry) {
            entries.add(entry);
          }

          @Override
          public void refused(long line, String text, List<Problem> mistakes) {
            problems.addAll(mistakes);
          }
        });
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    return entries;
  }
}

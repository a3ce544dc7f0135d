package kelter.cli.command.book;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import kelter.cli.command.Command;
import kelter.cli.command.Invocation;
import kelter.cli.json.BookJson;
import kelter.cli.terminal.Terminal;
import kelter.cli.text.Layout;
import kelter.cli.usage.CommandArgument;
import kelter.cli.usage.CommandOption;
import kelter.cli.usage.CommandUsage;
import kelter.cli.usage.ValueKind;
import kelter.core.book.Added;
import kelter.core.book.BookEntry;
import kelter.core.book.JobBook;
import kelter.core.file.book.EntryLine;
import kelter.core.file.book.EntrySource;
import kelter.core.file.disk.TextFile;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.vocabulary.Ids;

/** {@code kelter book import FILE}: many closed jobs, of which some may be unusable. */
public final class BookImportCommand implements Command {

  private static final CommandOption PREFIX =
      CommandOption.one(
          "--prefix",
          ValueKind.TEXT,
          "PREFIX",
          "what the ids of all jobs of the file begin with in this book, such as van-2-, where"
              + " another van counts its jobs alike");

  /** So many are added at once; what was added stays where the import is broken off. */
  private static final int BATCH = 1_000;

  /** So many mistakes are told; the rest are in the file of refused rows. */
  private static final int TOLD = 20;

  /** So many characters of refused rows are kept; own choice. */
  private static final int MOST_KEPT = 50_000_000;

  @Override
  public CommandUsage usage() {
    return new CommandUsage(
        "book import",
        "Import many closed jobs into the job book.",
        "Lines of JSON, or a table of the Open Repair Data Standard. A row that cannot be used is"
            + " told and kept in FILE.refused. Import the same file again to go on where an"
            + " import was broken off: what is in the book already is left as it is.",
        List.of(NamedBook.OPTION, PREFIX, Invocation.SHOP),
        List.of(CommandArgument.one("FILE", ValueKind.FILE, "the file")),
        List.of(
            "kelter book import --shop my-shop old-book.jsonl",
            "kelter book import --shop my-shop repairs.csv",
            "kelter book import --shop my-shop --prefix van-2- old-book.jsonl"));
  }

  @Override
  public void run(Invocation invocation) {
    Path file = invocation.file();
    String prefix = invocation.given().text(PREFIX).map(BookImportCommand::prefix).orElse("");
    try (JobBook book = NamedBook.of(invocation).openOrMake()) {
      Import taken = new Import(book, prefix, invocation.terminal());
      try {
        taken.all(file);
      } catch (InputException brokenOff) {
        taken.tellBrokenOff();
        throw brokenOff;
      }
      taken.keepRefused(file);
      BookJson.Counts counts = taken.counts();
      Command.show(
          invocation,
          () -> BookJson.added(counts),
          () -> BookAddCommand.words(counts, new Layout(invocation.terminal())));
      if (counts.other() + counts.refused() > 0) {
        invocation.fail();
      }
    }
  }

  private static String prefix(String told) {
    if (!Ids.isId(told)) {
      throw new InputException(
          "--prefix",
          "'" + told + "' cannot begin an id",
          "lower-case letters, digits and hyphens, such as van-2-");
    }
    return told;
  }

  /** Adds in batches, tells mistakes and keeps refused rows. */
  private static final class Import implements EntrySource.Sink {
    private final JobBook book;
    private final String prefix;
    private final Terminal terminal;
    private final List<BookEntry> batch = new ArrayList<>();
    private final StringBuilder kept = new StringBuilder();
    private int fresh;
    private int known;
    private int other;
    private int refused;
    private int told;
    private boolean keptAll = true;

    Import(JobBook book, String prefix, Terminal terminal) {
      this.book = book;
      this.prefix = prefix;
      this.terminal = terminal;
    }

    void all(Path file) {
      try {
        EntrySource.read(file, this);
      } finally {
        flush();
      }
    }

    /** Silent where it was no import yet. */
    void tellBrokenOff() {
      if (fresh + known + other == 0) {
        return;
      }
      terminal.complain(
          "kelter: the import was broken off after "
              + (fresh + known + other)
              + " jobs, of which it added "
              + fresh
              + ".");
    }

    @Override
    public void entry(long line, BookEntry entry) {
      if (!Ids.isId(prefix + entry.job())) {
        refused(line, EntryLine.write(entry), List.of(tooLong(line, entry.job())));
        return;
      }
      batch.add(prefix.isEmpty() ? entry : entry.prefixed(prefix));
      if (batch.size() == BATCH) {
        flush();
        terminal.progress(line + " rows");
      }
    }

    private Problem tooLong(long line, String job) {
      return new Problem(
          "line " + line, "'" + prefix + job + "' is too long for an id", "up to 60 characters");
    }

    @Override
    public void refused(long line, String text, List<Problem> problems) {
      refused++;
      problems.forEach(this::tell);
      if (kept.length() + text.length() > MOST_KEPT) {
        keptAll = false;
      } else {
        kept.append(text).append('\n');
      }
    }

    private void tell(Problem problem) {
      if (told++ < TOLD) {
        terminal.complain("kelter: " + problem.display());
      }
    }

    void flush() {
      List<BookEntry> entries = List.copyOf(batch);
      batch.clear();
      if (entries.isEmpty()) {
        return;
      }
      List<Added> added = book.add(entries);
      for (int i = 0; i < added.size(); i++) {
        switch (added.get(i)) {
          case NEW -> fresh++;
          case KNOWN -> known++;
          case OTHER -> {
            other++;
            tell(BookAddCommand.other(entries.get(i).job()));
          }
        }
      }
    }

    void keepRefused(Path file) {
      if (told > TOLD) {
        terminal.complain("kelter: " + (told - TOLD) + " more mistakes are not told one by one.");
      }
      if (kept.length() > 0) {
        Path beside = NamedBook.refused(file);
        TextFile.writeNew(beside, kept.toString());
        terminal.complain(
            "kelter: rows that cannot be used are kept in "
                + beside
                + (keptAll ? "" : ", not all of them: there are too many"));
      }
    }

    BookJson.Counts counts() {
      return new BookJson.Counts(fresh, known, other, refused);
    }
  }
}

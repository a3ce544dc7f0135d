package kelter.cli.command.book;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import kelter.cli.command.Command;
import kelter.cli.command.Invocation;
import kelter.cli.text.book.LearnedText;
import kelter.cli.usage.CommandOption;
import kelter.cli.usage.CommandUsage;
import kelter.cli.usage.ValueKind;
import kelter.core.book.BookEntry;
import kelter.core.book.JobBook;
import kelter.core.book.learned.Learned;
import kelter.core.book.learning.BookLearning;
import kelter.core.book.learning.LearningRule;
import kelter.core.catalogue.Kinds;
import kelter.core.file.book.LearnedFile;
import kelter.core.file.shop.ShopFolder;
import kelter.core.problem.InputException;

/** {@code kelter book learn}: what the job book teaches, for every diagnosis from then on. */
public final class BookLearnCommand implements Command {

  static final CommandOption KEPT =
      CommandOption.one(
          "--kept-per-year",
          ValueKind.NUMBER,
          "RATIO",
          "what a job still counts for after each year (default 0.9; 1 forgets nothing)");
  private static final CommandOption OUTPUT =
      CommandOption.one(
              "--output",
              ValueKind.FILE,
              "FILE",
              "where to write (default: learned.json in the shop's folder)")
          .or("-o");

  @Override
  public CommandUsage usage() {
    return new CommandUsage(
        "book learn",
        "Learn from the job book for every diagnosis from then on.",
        "Shares of causes, chances of symptoms, times, rates of cure and call-back, lives of parts."
            + " Few jobs hardly move a table. 'diagnose --without-book' leaves it out.",
        List.of(KEPT, OUTPUT, NamedBook.OPTION, Invocation.SHOP),
        List.of(),
        List.of("kelter book learn --shop my-shop"));
  }

  @Override
  public void run(Invocation invocation) {
    Path file = output(invocation);
    Learned learned = learned(invocation, LearningRule.USUALLY_KEPT);
    LearnedFile.write(learned, file);
    Command.showFile(
        invocation,
        () -> LearnedFile.text(learned),
        () -> LearnedText.of(learned, kinds(invocation), file, invocation.terminal()));
  }

  private static Path output(Invocation invocation) {
    Optional<Path> output = invocation.given().path(OUTPUT);
    Optional<ShopFolder> folder = invocation.shop().folder();
    if (output.isEmpty() && folder.isEmpty() && invocation.given().has(NamedBook.OPTION)) {
      throw new InputException(
          "book learn",
          "nobody says where to write what was learned",
          "name the shop's folder with --shop DIR, or a file with " + OUTPUT.name());
    }
    return output.orElseGet(() -> NamedBook.folder(invocation).learned());
  }

  /** What the book teaches today. */
  static Learned learned(Invocation invocation, double usuallyKept) {
    return going(invocation, usuallyKept, JobBook::lessons);
  }

  /** What the book teaches today, where somebody else reads along. */
  static Learned learned(Invocation invocation, double usuallyKept, Consumer<BookEntry> reader) {
    return going(invocation, usuallyKept, (book, learning) -> book.each(learning.andThen(reader)));
  }

  private static Learned going(
      Invocation invocation, double usuallyKept, BiConsumer<JobBook, Consumer<BookEntry>> through) {
    double kept = invocation.given().number(KEPT, usuallyKept);
    LearningRule rule;
    try {
      rule = new LearningRule(LocalDate.now(invocation.clock()), kept);
    } catch (IllegalArgumentException refused) {
      throw new InputException(KEPT.name(), refused.getMessage(), "");
    }
    Kinds kinds = kinds(invocation);
    BookLearning learning = BookLearning.begin(kinds::kind, rule);
    try (JobBook book = NamedBook.of(invocation).open()) {
      through.accept(book, learning::read);
    }
    return learning.learned();
  }

  /** The tables of the kinds, without what a book taught before. */
  static Kinds kinds(Invocation invocation) {
    invocation.leaveOutBook();
    return invocation.workshop().kinds();
  }
}

package kelter.cli.command.book;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import kelter.cli.book.BookPlace;
import kelter.cli.command.Invocation;
import kelter.cli.usage.CommandOption;
import kelter.cli.usage.ValueKind;
import kelter.core.book.Added;
import kelter.core.book.BookEntry;
import kelter.core.book.JobBook;
import kelter.core.file.shop.ShopFolder;
import kelter.core.problem.InputException;
import kelter.core.workshop.Case;
import kelter.core.workshop.book.ClosedCase;

/** The job book that a call goes by. */
public final class NamedBook {

  static final CommandOption OPTION =
      CommandOption.one(
          "--book",
          ValueKind.TEXT,
          "BOOK",
          "the job book: a file, or jdbc:postgresql://HOST/DATABASE (default: book.db in the"
              + " shop's folder)");

  private NamedBook() {}

  /**
   * The place of the book.
   *
   * @throws InputException if neither a book nor the folder of a shop is named
   */
  static BookPlace of(Invocation invocation) {
    if (invocation.given().has(OPTION)) {
      return new BookPlace(invocation.given().text(OPTION).orElseThrow());
    }
    ShopFolder folder = folder(invocation);
    folder.profile();
    return BookPlace.of(folder.book());
  }

  /**
   * Puts a closed case into the book of the shop that is named.
   *
   * @return what became of it; empty if no folder of a shop is named
   */
  public static Optional<Added> keep(Case machine, Invocation invocation) {
    Optional<BookEntry> entry = ClosedCase.entry(machine);
    if (entry.isEmpty() || invocation.shop().folder().isEmpty()) {
      return Optional.empty();
    }
    try (JobBook book = of(invocation).openOrMake()) {
      return Optional.of(book.add(List.of(entry.get())).get(0));
    }
  }

  /** The folder of the shop, which must be named. */
  static ShopFolder folder(Invocation invocation) {
    return invocation
        .shop()
        .folder()
        .orElseThrow(
            () ->
                new InputException(
                    "book",
                    "no job book is named",
                    "name the shop's folder with --shop DIR, or a book with --book"));
  }

  /** Where a file of refused rows goes: beside the file that they are of, never over another. */
  static Path refused(Path file) {
    Path beside = file.resolveSibling(file.getFileName() + ".refused");
    int number = 2;
    while (Files.exists(beside)) {
      beside = file.resolveSibling(file.getFileName() + ".refused-" + number++);
    }
    return beside;
  }
}

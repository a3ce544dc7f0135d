package kelter.cli.command.book;

import java.util.List;
import java.util.function.Function;
import kelter.cli.command.Command;
import kelter.cli.command.Invocation;
import kelter.cli.usage.CommandOption;
import kelter.cli.usage.CommandUsage;
import kelter.cli.usage.ValueKind;
import kelter.core.book.BookEntry;
import kelter.core.book.JobBook;
import kelter.core.file.book.EntryLine;
import kelter.core.file.book.EntryTable;
import kelter.core.file.book.RepairData;
import kelter.core.problem.InputException;

/** {@code kelter book export}: all entries for other programs. */
public final class BookExportCommand implements Command {

  /** So many characters are written at once. */
  private static final int AT_ONCE = 1 << 16;

  private static final CommandOption AS =
      CommandOption.one(
          "--as",
          ValueKind.TEXT,
          "FORM",
          "jsonl (default): lines of JSON; csv: a table; ords: Open Repair Data Standard");
  private static final CommandOption SERIALS =
      CommandOption.flag("--serials", "with serial numbers, in lines of JSON");
  private static final CommandOption PROVIDER =
      CommandOption.one("--provider", ValueKind.TEXT, "NAME", "who gives the data (ords)");
  private static final CommandOption COUNTRY =
      CommandOption.one("--country", ValueKind.TEXT, "CODE", "three letters, such as GBR (ords)");

  @Override
  public CommandUsage usage() {
    return new CommandUsage(
        "book export",
        "Write all closed jobs for other programs.",
        "They go to the terminal. No persons are in it, and no serial numbers unless you ask for them. Read complaints and"
            + " notes before you give them away: people write names into them. Cells that a"
            + " spreadsheet would take for a formula begin with an apostrophe.",
        List.of(AS, SERIALS, PROVIDER, COUNTRY, NamedBook.OPTION, Invocation.SHOP),
        List.of(),
        List.of(
            "kelter book export --shop my-shop",
            "kelter book export --shop my-shop --as ords --country NLD"));
  }

  @Override
  public void run(Invocation invocation) {
    String form = invocation.given().text(AS).orElse("jsonl");
    String provider = invocation.given().text(PROVIDER).orElse("");
    String country = country(invocation.given().text(COUNTRY).orElse(""));
    boolean serials = invocation.given().has(SERIALS);
    switch (form) {
      case "jsonl" ->
          write(
              invocation,
              "",
              entry -> EntryLine.write(serials ? entry : entry.withoutSerial()) + "\n");
      case "csv" -> write(invocation, EntryTable.head(), EntryTable::row);
      case "ords" ->
          write(invocation, RepairData.head(), entry -> RepairData.row(entry, provider, country));
      default ->
          throw new InputException(AS.name() + " " + form, "is no form", "jsonl, csv and ords are");
    }
  }

  private static String country(String code) {
    if (!code.isEmpty() && !code.matches("[A-Z]{3}")) {
      throw new InputException(
          COUNTRY.name() + " " + code, "is no code of a country", "write three letters: GBR");
    }
    return code;
  }

  private static void write(Invocation invocation, String head, Function<BookEntry, String> row) {
    StringBuilder text = new StringBuilder(head);
    try (JobBook book = NamedBook.of(invocation).open()) {
      book.each(
          entry -> {
            text.append(row.apply(entry));
            if (text.length() > AT_ONCE) {
              invocation.terminal().printJson(text.toString());
              text.setLength(0);
            }
          });
    }
    invocation.terminal().printJson(text.toString());
  }
}

package kelter.cli.text.book;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import kelter.cli.terminal.Terminal;
import kelter.cli.text.Layout;
import kelter.core.book.BookEntry;
import kelter.core.book.BookedMachine;
import kelter.core.book.ConfirmedCause;

/** Entries of a job book, a row each. */
public final class EntriesText {

  private EntriesText() {}

  /**
   * Writes entries.
   *
   * @param entries the entries
   * @param terminal where they will be shown
   * @return the text, with a line end after the last line
   */
  public static String of(List<BookEntry> entries, Terminal terminal) {
    Layout layout = new Layout(terminal);
    if (entries.isEmpty()) {
      return layout.line("No job of the book is so.").toString();
    }
    List<List<String>> rows = new ArrayList<>();
    for (BookEntry entry : entries) {
      rows.add(List.of(entry.closed().toString(), entry.job(), what(entry)));
    }
    return layout.table("", rows).toString();
  }

  /** The machine and what it was. */
  static String what(BookEntry entry) {
    String causes =
        entry.causes().stream().map(ConfirmedCause::key).collect(Collectors.joining(", "));
    return machine(entry.machine())
        + ": "
        + (causes.isEmpty() ? "no cause confirmed" : causes)
        + ", "
        + entry.outcome().id().replace('-', ' ');
  }

  static String machine(BookedMachine machine) {
    String name = (machine.maker() + " " + machine.model()).strip();
    String years =
        machine.age().isPresent() ? ", " + Math.round(machine.age().getAsDouble()) + " years" : "";
    return machine.kind().replace('-', ' ') + (name.isEmpty() ? "" : " " + name) + years;
  }
}

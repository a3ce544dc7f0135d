package kelter.core.file.book;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import kelter.core.book.BookEntry;
import kelter.core.book.ConfirmedCause;
import kelter.core.book.WorkDone;
import kelter.core.job.SymptomReport.Answer;
import kelter.core.quantity.Money;

/**
 * Entries as a table for a spreadsheet, a row each: what there are several of stands in one cell,
 * parted by semicolons. Serial numbers are left out.
 */
public final class EntryTable {

  private EntryTable() {}

  /**
   * The first row.
   *
   * @return the names of the columns, with a line end
   */
  public static String head() {
    return SafeCsv.row(
        List.of(
            "job",
            "called",
            "closed",
            "kind",
            "maker",
            "model",
            "age",
            "market",
            "complaint",
            "notes",
            "symptoms",
            "displayed",
            "outcome",
            "causes",
            "work",
            "minutes",
            "charged",
            "call-back-of"));
  }

  /**
   * The row of an entry.
   *
   * @param entry the entry
   * @return the row, with a line end
   */
  public static String row(BookEntry entry) {
    double minutes = entry.work().stream().mapToDouble(each -> each.minutes().orElse(0)).sum();
    return SafeCsv.row(
        List.of(
            entry.job(),
            entry.called().map(Object::toString).orElse(""),
            entry.closed().toString(),
            entry.machine().kind(),
            entry.machine().maker(),
            entry.machine().model(),
            number(entry.machine().age()),
            entry.market().map(Enum::name).orElse(""),
            entry.complaint(),
            entry.notes(),
            entry.symptoms().entrySet().stream()
                .map(EntryTable::answer)
                .collect(Collectors.joining("; ")),
            String.join("; ", entry.displayed()),
            entry.outcome().id(),
            entry.causes().stream().map(ConfirmedCause::key).collect(Collectors.joining("; ")),
            entry.work().stream().map(WorkDone::key).collect(Collectors.joining("; ")),
            minutes > 0 ? number(OptionalDouble.of(minutes)) : "",
            entry.charged().map(Money::format).orElse(""),
            entry.callBackOf().orElse("")));
  }

  private static String answer(Map.Entry<String, Answer> each) {
    return each.getKey() + "=" + each.getValue().id();
  }

  private static String number(OptionalDouble value) {
    if (value.isEmpty()) {
      return "";
    }
    double number = value.getAsDouble();
    return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
  }
}

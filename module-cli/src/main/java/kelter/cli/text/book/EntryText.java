package kelter.cli.text.book;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import kelter.cli.terminal.Terminal;
import kelter.cli.text.Figures;
import kelter.cli.text.Layout;
import kelter.core.book.BookEntry;
import kelter.core.book.ReadingTaken;
import kelter.core.book.WorkDone;

/** One entry of a job book in full. */
public final class EntryText {

  private EntryText() {}

  /**
   * Writes an entry.
   *
   * @param entry the entry
   * @param cameBack the ids of its call-backs
   * @param terminal where it will be shown
   * @return the text, with a line end after the last line
   */
  public static String of(BookEntry entry, List<String> cameBack, Terminal terminal) {
    Layout layout = new Layout(terminal);
    layout.heading(entry.job() + ": " + EntriesText.what(entry));
    List<List<String>> rows = new ArrayList<>();
    entry.called().ifPresent(day -> rows.add(List.of("Called", day.toString())));
    rows.add(List.of("Closed", entry.closed().toString()));
    add(rows, "Serial", entry.machine().serial());
    add(rows, "Said", entry.complaint());
    add(rows, "Notes", entry.notes());
    entry
        .symptoms()
        .forEach((symptom, answer) -> rows.add(List.of(symptom.replace('-', ' '), answer.id())));
    add(rows, "Displayed", String.join(", ", entry.displayed()));
    for (WorkDone work : entry.work()) {
      rows.add(List.of("Work", words(work)));
    }
    for (ReadingTaken reading : entry.readings()) {
      rows.add(List.of("Read", words(reading)));
    }
    entry
        .predictions()
        .forEach(
            (fault, chance) ->
                rows.add(List.of("Told before", fault + " " + Figures.percent(chance))));
    entry.charged().ifPresent(money -> rows.add(List.of("Charged", money.format())));
    entry.callBackOf().ifPresent(job -> rows.add(List.of("Call-back of", job)));
    add(rows, "Came back as", String.join(", ", cameBack));
    return layout.table("  ", rows).toString();
  }

  private static void add(List<List<String>> rows, String label, String text) {
    if (!text.isBlank()) {
      rows.add(List.of(label, text));
    }
  }

  private static String words(WorkDone work) {
    return work.key()
        + minutes(work.minutes())
        + work.parts().map(parts -> ", parts " + parts.format()).orElse("")
        + work.cured().map(cured -> cured ? ", cured" : ", did not cure").orElse("");
  }

  private static String words(ReadingTaken reading) {
    return reading.key()
        + minutes(reading.minutes())
        + (reading.instrument().isEmpty() ? "" : ", by " + reading.instrument())
        + (reading.misled() ? ", misled" : "");
  }

  private static String minutes(OptionalDouble minutes) {
    return minutes.isPresent() ? ", " + Math.round(minutes.getAsDouble()) + "\u00a0min" : "";
  }
}

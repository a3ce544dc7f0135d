package kelter.cli.command.book;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import kelter.core.book.BookEntry;
import kelter.core.book.BookedMachine;
import kelter.core.book.ConfirmedCause;
import kelter.core.book.Outcome;
import kelter.core.book.ReadingTaken;
import kelter.core.book.WorkDone;
import kelter.core.file.book.EntryLine;
import kelter.core.job.Market;
import kelter.core.job.SymptomReport.Answer;
import kelter.core.quantity.Money;

/** Entries of a job book of washing machines. */
public final class Booked {

  static final LocalDate DAY = LocalDate.of(2026, 3, 1);

  private Booked() {}

  /** An entry that tells all that one can tell. */
  public static BookEntry full(String job) {
    return washer(job, "heater.open", DAY, "T9-0412");
  }

  static BookEntry washer(String job, String cause, LocalDate closed, String serial) {
    String[] words = cause.split("\\.");
    return new BookEntry(
        job,
        Optional.of(closed.minusDays(2)),
        closed,
        new BookedMachine(
            "washing-machine",
            "Ostvik",
            "W-1",
            serial,
            OptionalDouble.of(7.5),
            OptionalDouble.of(2100),
            OptionalDouble.of(3000.25)),
        Optional.of(Market.EU),
        "=Stays cold",
        "Element open",
        Map.of("stays-cold", Answer.YES, "leaks", Answer.NO),
        List.of("heat"),
        Outcome.CURED,
        List.of(new ConfirmedCause(words[0], words[0], words[1])),
        List.of(
            new WorkDone(
                words[0],
                "renew",
                OptionalDouble.of(42),
                Optional.of(Money.parse("38.50 EUR")),
                Optional.of(true))),
        List.of(new ReadingTaken("heater", "resistance", "ohmmeter", OptionalDouble.of(5), false)),
        Map.of("heater.open", 0.85),
        Optional.of(Money.parse("129.00 EUR")),
        Optional.empty());
  }

  /** Lines of a book that answers all that a shop asks: each machine fails again once a month. */
  public static List<String> many() {
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < 80; i++) {
      lines.add(EntryLine.write(washer("many-" + i, "heater.open", DAY.plusDays(i), "S" + i % 30)));
    }
    for (int i = 0; i < 3; i++) {
      lines.add(
          EntryLine.write(washer("back-" + i, "heater.open", DAY.plusDays(99), "S" + i))
              .replace("\"job\":", "\"call-back-of\":\"many-" + i + "\",\"job\":"));
    }
    return lines;
  }
}

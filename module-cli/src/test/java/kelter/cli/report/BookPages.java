package kelter.cli.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import kelter.cli.safety.Call;
import kelter.core.book.BookEntry;
import kelter.core.book.BookedMachine;
import kelter.core.book.ConfirmedCause;
import kelter.core.book.Outcome;
import kelter.core.book.ReadingTaken;
import kelter.core.book.WorkDone;
import kelter.core.book.figures.BookFigures;
import kelter.core.book.figures.Question;
import kelter.core.quantity.Money;

/** Pages of books for tests. */
final class BookPages {

  private static final LocalDate FIRST = LocalDate.of(2024, 1, 1);
  private static final int JOBS = 120;
  private static final int MACHINES = 40;

  private BookPages() {}

  static String full() {
    return of(jobs("Ostvik", "W-1"));
  }

  static String hostile() {
    return of(jobs(Pages.HOSTILE, "W\u202e<b>" + Pages.HOSTILE));
  }

  static String empty() {
    return of(List.of());
  }

  private static String of(List<BookEntry> jobs) {
    Question question =
        new Question(
            FIRST.plusYears(2),
            Question.USUAL_RESTOCK_DAYS,
            Question.USUAL_SERVICE,
            Optional.of(Money.parse("38 EUR")),
            Optional.empty(),
            List.of());
    return BookPage.of(BookFigures.of(jobs, question), Call.WORKSHOP.kinds());
  }

  private static List<BookEntry> jobs(String maker, String model) {
    List<BookEntry> jobs = new ArrayList<>();
    for (int i = 0; i < JOBS; i++) {
      jobs.add(job(i, maker, model));
    }
    return jobs;
  }

  private static BookEntry job(int number, String maker, String model) {
    String kind = number % 3 == 0 ? "washing-machine" : "dishwasher";
    Optional<String> before =
        number % 17 == 16 ? Optional.of("job-" + (number - 1)) : Optional.empty();
    return new BookEntry(
        "job-" + number,
        Optional.empty(),
        FIRST.plusDays(4L * number),
        new BookedMachine(
            kind,
            maker,
            model,
            "S" + number % MACHINES,
            OptionalDouble.of(6),
            OptionalDouble.empty(),
            OptionalDouble.empty()),
        Optional.empty(),
        "",
        "",
        Map.of(),
        List.of(),
        number % 11 == 10 ? Outcome.NOT_CURED : Outcome.CURED,
        List.of(new ConfirmedCause("heater", "heater", "open")),
        List.of(
            new WorkDone(
                "heater",
                "renew",
                OptionalDouble.of(30 + number % 50),
                Optional.of(Money.parse("38.50 EUR")),
                Optional.of(true))),
        List.of(new ReadingTaken("heater", "resistance", "", OptionalDouble.of(5), false)),
        Map.of(),
        Optional.of(Money.parse("129.00 EUR")),
        before);
  }
}

package kelter.cli.book;

import java.time.LocalDate;
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
import kelter.core.job.Market;
import kelter.core.job.SymptomReport.Answer;
import kelter.core.quantity.Money;

/** Entries of an invented shop. */
final class Entries {

  static final LocalDate DAY = LocalDate.of(2026, 3, 1);

  private Entries() {}

  /** One that tells all that an entry can tell. */
  static BookEntry full(String job) {
    return new BookEntry(
        job,
        Optional.of(DAY.minusDays(2)),
        DAY,
        new BookedMachine(
            "washing-machine",
            "Tarnwell",
            "Drum 9",
            "T9-0412",
            OptionalDouble.of(7.5),
            OptionalDouble.of(2100),
            OptionalDouble.of(3000.25)),
        Optional.of(Market.UK),
        "Stays cold — \"since Müller's move\"; 'smells'",
        "Element open; =1+1 is no formula",
        Map.of("stays-cold", Answer.YES, "leaks", Answer.NO, "loud", Answer.SOMETIMES),
        List.of("heat", "F-12"),
        Outcome.CURED,
        List.of(new ConfirmedCause("heater", "heater", "element-open")),
        List.of(
            new WorkDone(
                "heater",
                "renew",
                OptionalDouble.of(42),
                Optional.of(Money.parse("38.50 EUR")),
                Optional.of(true)),
            new WorkDone(
                "drain-pump", "clean", OptionalDouble.empty(), Optional.empty(), Optional.empty())),
        List.of(
            new ReadingTaken("heater", "resistance", "ohmmeter", OptionalDouble.of(5), false),
            new ReadingTaken("heater", "look", "", OptionalDouble.empty(), true)),
        Map.of("heater.element-open", 0.85, "thermal-link.open", 0.1),
        Optional.of(Money.parse("129.00 EUR")),
        Optional.empty());
  }

  static BookEntry plain(
      String job, LocalDate closed, String kind, String model, OptionalDouble age) {
    return new BookEntry(
        job,
        Optional.empty(),
        closed,
        new BookedMachine(
            kind, "Ostvik", model, "", age, OptionalDouble.empty(), OptionalDouble.empty()),
        Optional.empty(),
        "",
        "",
        Map.of(),
        List.of(),
        Outcome.UNKNOWN,
        List.of(),
        List.of(),
        List.of(),
        Map.of(),
        Optional.empty(),
        Optional.empty());
  }

  /** One whose work and reading took so many minutes and whose cause was told so likely. */
  static BookEntry figures(String job, double minutes, double probability) {
    OptionalDouble took = OptionalDouble.of(minutes);
    return new BookEntry(
        job,
        Optional.empty(),
        DAY,
        plain(job, DAY, "kettle", "K2", OptionalDouble.of(200 * probability)).machine(),
        Optional.empty(),
        "",
        "",
        Map.of("leaks", Answer.YES, "loud", Answer.NO),
        List.of(),
        Outcome.NOT_CURED,
        List.of(
            new ConfirmedCause("heater", "heater", "element-open"),
            new ConfirmedCause("lid", "lid", "broken")),
        List.of(new WorkDone("heater", "renew", took, Optional.empty(), Optional.of(false))),
        List.of(new ReadingTaken("heater", "look", "", took, true)),
        Map.of("heater.element-open", probability),
        Optional.empty(),
        Optional.of("before"));
  }

  static BookEntry said(BookEntry entry, String complaint, Map<String, Answer> symptoms) {
    return new BookEntry(
        entry.job(),
        entry.called(),
        entry.closed(),
        entry.machine(),
        entry.market(),
        complaint,
        entry.notes(),
        symptoms,
        entry.displayed(),
        entry.outcome(),
        entry.causes(),
        entry.work(),
        entry.readings(),
        entry.predictions(),
        entry.charged(),
        entry.callBackOf());
  }
}

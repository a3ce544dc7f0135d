package kelter.fleet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.TreeSet;
import kelter.core.book.BookEntry;
import kelter.core.book.BookedMachine;
import kelter.core.book.ConfirmedCause;
import kelter.core.book.Outcome;
import kelter.core.book.ReadingTaken;
import kelter.core.book.WorkDone;
import kelter.core.catalogue.Kind;
import kelter.core.catalogue.KindCause;
import kelter.core.file.catalogue.KindFile;
import kelter.core.job.SymptomReport.Answer;
import kelter.core.quantity.Money;

/**
 * An invented network of shops: closed jobs in the order of their closing, one after the other and
 * always the same. Machines are met again, complaints come back, also on the day of the repair,
 * causes are not found at first, parts are renewed, and some machines are of no kind that is known.
 */
final class Network implements Iterator<BookEntry> {

  private static final LocalDate FIRST_DAY = LocalDate.of(2021, 1, 1);
  private static final int DAYS = 1_900;
  private static final int LATELY = 500;

  private final SplittableRandom random;
  private final List<Kind> kinds;
  private final List<BookEntry> lately = new ArrayList<>();
  private final int jobs;
  private int next;

  Network(int jobs, long seed) {
    this.jobs = jobs;
    this.random = new SplittableRandom(seed);
    var known = Tool.workshop().kinds();
    this.kinds = KindFile.shipped().stream().map(id -> known.kind(id).orElseThrow()).toList();
  }

  static LocalDate lastDay() {
    return FIRST_DAY.plusDays(DAYS);
  }

  @Override
  public boolean hasNext() {
    return next < jobs;
  }

  @Override
  public BookEntry next() {
    if (!hasNext()) {
      throw new NoSuchElementException();
    }
    LocalDate closed = FIRST_DAY.plusDays((long) DAYS * next / jobs);
    Optional<BookEntry> before =
        !lately.isEmpty() && random.nextInt(12) == 0
            ? Optional.of(lately.get(random.nextInt(lately.size())))
            : Optional.empty();
    BookEntry entry = entry("n-%08d".formatted(next), closed, before);
    remember(entry);
    next++;
    return entry;
  }

  private void remember(BookEntry entry) {
    if (lately.size() < LATELY) {
      lately.add(entry);
    } else {
      lately.set(random.nextInt(LATELY), entry);
    }
  }

  private BookEntry entry(String job, LocalDate closed, Optional<BookEntry> before) {
    int machine = random.nextInt(jobs / 2);
    Kind kind = kinds.get(machine % kinds.size());
    BookedMachine booked = before.map(BookEntry::machine).orElse(machine(machine, kind, closed));
    KindCause cause = kind.causes().get(random.nextInt(1 + random.nextInt(kind.causes().size())));
    Outcome outcome = Outcome.values()[random.nextInt(Outcome.values().length)];
    List<ConfirmedCause> causes = causes(kind, cause, outcome, before);
    String part = component(kind, cause);
    return new BookEntry(
        job,
        Optional.of(closed.minusDays(random.nextInt(5))),
        closed,
        booked,
        Optional.empty(),
        "it does not do what it did",
        "",
        symptoms(kind),
        List.of(),
        outcome,
        causes,
        List.of(
            new WorkDone(
                part,
                random.nextInt(3) == 0 ? "clean" : "renew",
                minutes(35),
                Optional.of(Money.parse("38.50 EUR")),
                Optional.of(random.nextInt(8) > 0))),
        List.of(
            new ReadingTaken(part, "look", "", minutes(2), false),
            new ReadingTaken(
                part,
                "resistance",
                "meter-" + random.nextInt(6),
                minutes(5),
                random.nextInt(60) == 0)),
        random.nextInt(4) == 0
            ? Map.of()
            : Map.of(cause.key(), random.nextDouble(), "nobody.knows", 0.1),
        Optional.empty(),
        before.map(BookEntry::job));
  }

  private BookedMachine machine(int number, Kind kind, LocalDate closed) {
    double made = 2010 + number % 97 / 9.0;
    return new BookedMachine(
        number % 61 == 0 ? "mangle-of-old" : kind.id(),
        List.of("Ostley", "Tarnwell", "Brackmoor").get(number % 3),
        number % 7 == 0 ? "" : "M" + number % 40,
        number % 5 == 0 ? "" : "S" + number,
        number % 11 == 0
            ? OptionalDouble.empty()
            : OptionalDouble.of(
                Math.max(0, closed.getYear() + closed.getDayOfYear() / 366.0 - made)),
        OptionalDouble.empty(),
        OptionalDouble.empty());
  }

  private List<ConfirmedCause> causes(
      Kind kind, KindCause cause, Outcome outcome, Optional<BookEntry> before) {
    if (outcome == Outcome.NOTHING_WRONG || random.nextInt(5) == 0) {
      return List.of();
    }
    if (before.isPresent() && random.nextBoolean()) {
      return before.get().causes();
    }
    ConfirmedCause one = new ConfirmedCause(cause.part(), component(kind, cause), cause.fault());
    return random.nextInt(20) == 0
        ? List.of(one, new ConfirmedCause("lid", "lid", "bent"))
        : List.of(one);
  }

  private static String component(Kind kind, KindCause cause) {
    return kind.part(cause.part()).map(part -> part.kind()).orElse(cause.part());
  }

  private Map<String, Answer> symptoms(Kind kind) {
    Map<String, Answer> symptoms = new TreeMap<>();
    for (String each : new TreeSet<>(kind.symptoms())) {
      if (symptoms.size() < 4 && random.nextInt(4) == 0) {
        symptoms.put(each, Answer.values()[random.nextInt(3)]);
      }
    }
    return symptoms;
  }

  private OptionalDouble minutes(double usual) {
    return OptionalDouble.of(Math.rint(10 * usual * (0.5 + random.nextDouble())) / 10);
  }
}

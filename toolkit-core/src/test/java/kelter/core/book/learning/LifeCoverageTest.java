package kelter.core.book.learning;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SplittableRandom;
import kelter.core.book.BookEntry;
import kelter.core.book.BookedMachine;
import kelter.core.book.ConfirmedCause;
import kelter.core.book.Outcome;
import kelter.core.book.WorkDone;
import kelter.core.book.learned.PartLife;
import kelter.core.catalogue.Kind;
import kelter.core.catalogue.KindCause;
import kelter.core.catalogue.KindPart;
import kelter.core.catalogue.MainsConnection;
import kelter.core.source.Source;
import org.junit.jupiter.api.Test;

/**
 * Lives of parts are drawn from known Weibull distributions, put into many books as a shop would
 * have them, and learned: the intervals of 95 % hold the truth in 95 of 100 books.
 *
 * <p>Belts fail, are renewed, and fail again; in between machines come for a pump, at ages that
 * have nothing to do with their belts, the last time before their belt fails once more. Of {@value
 * #BOOKS} intervals {@code 5 %} miss, with a standard deviation of 1.09 points; the bounds are 4 of
 * these away, so that a true rate of misses of 15 % fails with a chance of more than 0.9999.
 */
class LifeCoverageTest {

  private static final Source INVENTED = Source.fromMemory("an invented kind");
  private static final int BOOKS = 400;
  private static final double MISSES = 0.05;
  private static final double FOUR_SIGMA = 4 * Math.sqrt(MISSES * (1 - MISSES) / BOOKS);

  private static final LocalDate FIRST = LocalDate.of(2008, 1, 1);
  private static final double DAYS = 365.25;

  /** No machine is seen longer, years. */
  private static final double LONGEST = 14;

  private static final Kind KIND =
      new Kind(
          "spinner",
          "spinner",
          List.of(),
          List.of(),
          "",
          8,
          MainsConnection.PLUG,
          List.of(part("pump"), part("belt")),
          List.of(),
          new Kind.NothingWrong(0.1, Map.of()),
          0.1,
          List.of(cause("pump", "blocked"), cause("belt", "worn")),
          List.of(),
          List.of(),
          List.of(),
          List.of(),
          INVENTED,
          INVENTED);

  private static KindPart part(String id) {
    return new KindPart(id, id, id, Set.of(), Map.of(), Optional.empty(), Optional.empty());
  }

  private static KindCause cause(String part, String fault) {
    return new KindCause(
        part,
        fault,
        part,
        0.4,
        false,
        KindCause.Mend.RENEW,
        Optional.empty(),
        OptionalDouble.empty(),
        Map.of());
  }

  /**
   * What is in a book.
   *
   * @param shape the true shape of the life of a belt
   * @param scale the true scale, years
   * @param machines how many machines
   * @param visits how often each comes for its pump
   */
  private record World(double shape, double scale, int machines, int visits) {

    List<BookEntry> book(SplittableRandom random) {
      List<BookEntry> entries = new ArrayList<>();
      for (int machine = 0; machine < machines; machine++) {
        LocalDate made = FIRST.plusDays(random.nextInt(1_400));
        double[] ages = new double[visits];
        for (int i = 0; i < visits; i++) {
          ages[i] = 0.2 + (LONGEST - 0.2) * random.nextDouble();
          entries.add(entry(machine, made, ages[i], "pump", "blocked", List.of()));
        }
        double last = Arrays.stream(ages).max().orElseThrow();
        for (double age = life(random); age < last; age += life(random)) {
          entries.add(entry(machine, made, age, "belt", "worn", List.of(RENEWED)));
        }
      }
      entries.sort(Comparator.comparing(BookEntry::closed));
      return entries;
    }

    private double life(SplittableRandom random) {
      return scale * Math.pow(-Math.log(1 - random.nextDouble()), 1 / shape);
    }
  }

  private static final WorkDone RENEWED =
      new WorkDone("belt", "renew", OptionalDouble.empty(), Optional.empty(), Optional.of(true));

  private static BookEntry entry(
      int machine, LocalDate made, double age, String part, String fault, List<WorkDone> work) {
    return new BookEntry(
        "job-" + machine + "-" + Math.round(age * 1e6),
        Optional.empty(),
        made.plusDays(Math.round(age * DAYS)),
        new BookedMachine(
            "spinner",
            "Ostvik",
            "B",
            "S-" + machine,
            OptionalDouble.of(age),
            OptionalDouble.empty(),
            OptionalDouble.empty()),
        Optional.empty(),
        "",
        "",
        Map.of(),
        List.of(),
        Outcome.CURED,
        List.of(new ConfirmedCause(part, part, fault)),
        work,
        List.of(),
        Map.of(),
        Optional.empty(),
        Optional.empty());
  }

  /** Where a life cannot be fitted nothing is stated, and nothing can miss. */
  private static void covers(World world, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int stated = 0;
    int shapes = 0;
    int scales = 0;
    double failures = 0;
    for (int i = 0; i < BOOKS; i++) {
      LifeTally lives = new LifeTally();
      world.book(random).forEach(entry -> lives.add(entry, KIND));
      PartLife belt = lives.counts().lives().get("spinner.belt");
      if (belt != null && belt.weibull().isPresent()) {
        PartLife.Fitted fitted = belt.weibull().get();
        stated++;
        failures += belt.failures();
        shapes += misses(world.shape(), fitted.shapeLow(), fitted.shapeHigh());
        scales += misses(world.scale(), fitted.scaleLow(), fitted.scaleHigh());
      }
    }
    String seen =
        "%s: of %d intervals from %.1f failures on average missed %d shapes and %d scales"
            .formatted(world, stated, failures / stated, shapes, scales);

    assertTrue(stated > 0.95 * BOOKS, seen);
    assertTrue(Math.abs(shapes / (double) stated - MISSES) < FOUR_SIGMA, seen);
    assertTrue(Math.abs(scales / (double) stated - MISSES) < FOUR_SIGMA, seen);
  }

  private static int misses(double truth, double low, double high) {
    return truth < low || truth > high ? 1 : 0;
  }

  @Test
  void machinesThatComeOnceForSomethingElse() {
    covers(new World(2.2, 9, 40, 1), 1);
  }

  @Test
  void machinesThatComeAgainAndAgain() {
    covers(new World(2.2, 9, 40, 4), 2);
  }

  @Test
  void fewFailures() {
    covers(new World(3, 14, 16, 2), 3);
  }

  @Test
  void partsThatDieYoung() {
    covers(new World(0.8, 12, 30, 2), 4);
  }

  @Test
  void manyFailures() {
    covers(new World(1.5, 6, 150, 2), 5);
  }
}

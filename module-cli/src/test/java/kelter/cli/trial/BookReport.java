package kelter.cli.trial;

import java.io.PrintStream;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import kelter.core.book.BookEntry;
import kelter.core.book.BookedMachine;
import kelter.core.book.ConfirmedCause;
import kelter.core.book.Outcome;
import kelter.core.book.learned.Learned;
import kelter.core.book.learning.BookLearning;
import kelter.core.book.learning.LearningRule;
import kelter.core.catalogue.Kind;
import kelter.core.catalogue.KindPart;
import kelter.core.catalogue.Models;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.file.catalogue.KindFile;
import kelter.core.job.Appliance;
import kelter.core.job.SymptomReport;
import kelter.core.job.SymptomReport.Answer;
import kelter.core.shop.Shop;
import kelter.core.workshop.Workshop;

/**
 * What a job book is worth: machines of a world whose shares of causes are other than the files
 * tell, some of which the shop has in its book, and the next ones diagnosed with and without it.
 */
public final class BookReport {

  private static final int QUESTIONS = 3;
  private static final int FEW = 3;

  /** So many calls are diagnosed by each small book. */
  private static final int NEXT = 5;

  /** A kind is called worse with a book where its log loss is by more than this, nats. */
  private static final double WORSE = 0.02;

  private static final LocalDate DAY = LocalDate.of(2026, 6, 1);
  private static final LearningRule RULE = new LearningRule(DAY, 1);

  private final Calls calls;
  private final PrintStream out;

  private BookReport(Calls calls, PrintStream out) {
    this.calls = calls;
    this.out = out;
  }

  /**
   * Prints log loss and calibration with and without a book, by kind, in worlds whose shares are
   * moved and in that of the files; then by many books of three jobs. Differences are told with
   * their standard error, from pairs of the same calls or books.
   *
   * @param jobs how many jobs are in the book; half as many are diagnosed after it
   * @param books how many books of three jobs there are of each kind
   * @param seed the same seed gives the same machines
   * @param worlds how many worlds with other shares
   * @param out takes the tables
   */
  public static void print(int jobs, int books, long seed, int worlds, PrintStream out) {
    for (int world = 0; world < worlds; world++) {
      out.println("World " + (world + 1) + ", shares moved by up to four times, one rare common");
      new BookReport(Calls.in(seed + world, moved(seed + world)), out).report(jobs, books);
    }
    out.println("The world of the files");
    new BookReport(Calls.asTold(seed), out).report(jobs, books);
  }

  private void report(int jobs, int books) {
    if (jobs > 0) {
      compare(jobs);
    }
    if (books > 0) {
      afterFew(books);
    }
  }

  /** The kinds with their shares moved. */
  private static Workshop moved(long seed) {
    RandomGenerator random = new SplittableRandom(seed);
    List<Kind> kinds = new ArrayList<>();
    for (String id : KindFile.shipped()) {
      kinds.add(MovedShares.of(Calls.TOOL.kinds().kind(id).orElseThrow(), random));
    }
    return Calls.TOOL.in(Shop.UNKNOWN.with(Optional.empty(), List.of(), Models.NONE, kinds));
  }

  private void compare(int jobs) {
    List<BookEntry> book = IntStream.range(0, jobs).parallel().mapToObj(this::entry).toList();
    Learned learned = learned(book);
    List<Integer> next = IntStream.range(jobs, jobs + jobs / 2).boxed().toList();
    CallTable without = table(next, Calls.TOOL);
    CallTable with = table(next, with(learned));
    out.printf(
        Locale.ROOT,
        "%d jobs in the book, the next %d; a table counts as %.0f jobs, a chance as %.0f answers%n",
        jobs,
        next.size(),
        learned.strength(),
        learned.chanceStrength());
    line("all", without, with);
    for (String kind : KindFile.shipped()) {
      line(kind, without.only(kind), with.only(kind));
    }
  }

  /** Each kind by books of its own with three jobs. */
  private void afterFew(int books) {
    List<String> kinds = KindFile.shipped();
    double[] without = new double[kinds.size() * books];
    double[] with = new double[without.length];
    int worse = 0;
    for (int kind = 0; kind < kinds.size(); kind++) {
      int from = kind * books;
      for (int book = 0; book < books; book++) {
        afterFew(kind, book, from + book, without, with);
      }
      Difference own =
          Difference.of(
              Arrays.copyOfRange(without, from, from + books),
              Arrays.copyOfRange(with, from, from + books));
      worse += own.mean() > WORSE ? 1 : 0;
      out.printf(Locale.ROOT, "  %-28s %+.4f +- %.4f%n", kinds.get(kind), own.mean(), own.error());
    }
    Difference all = Difference.of(without, with);
    double plain = Arrays.stream(without).average().orElseThrow();
    out.printf(
        Locale.ROOT,
        "after %d jobs, %d books of each kind: log loss %.3f -> %.3f (%+.4f +- %.4f); worse by more"
            + " than .02 in %d of %d kinds%n",
        FEW,
        books,
        plain,
        plain + all.mean(),
        all.mean(),
        all.error(),
        worse,
        kinds.size());
  }

  private void afterFew(int kind, int book, int place, double[] without, double[] with) {
    int kinds = KindFile.shipped().size();
    int first = kind + book * (FEW + NEXT) * kinds;
    List<BookEntry> jobs =
        IntStream.range(0, FEW).parallel().mapToObj(job -> entry(first + job * kinds)).toList();
    List<Integer> next =
        IntStream.range(FEW, FEW + NEXT).mapToObj(job -> first + job * kinds).toList();
    without[place] = table(next, Calls.TOOL).logLoss(0);
    with[place] = table(next, with(learned(jobs))).logLoss(0);
  }

  private void line(String name, CallTable without, CallTable with) {
    Difference difference = Difference.of(without.logLosses(0), with.logLosses(0));
    out.printf(
        Locale.ROOT,
        "  %-28s %5d  log loss %.3f -> %.3f (%+.4f +- %.4f)  first %2.0f%% -> %2.0f%%  off by %4.1f"
            + " -> %4.1f%n",
        name,
        without.size(),
        without.logLoss(0),
        with.logLoss(0),
        difference.mean(),
        difference.error(),
        100 * without.first(0),
        100 * with.first(0),
        100 * without.calibration(0).expectedError(),
        100 * with.calibration(0).expectedError());
  }

  private static Learned learned(List<BookEntry> book) {
    return BookLearning.of(book, Calls.TOOL.kinds()::kind, RULE);
  }

  private static Workshop with(Learned learned) {
    return Calls.TOOL.in(Shop.UNKNOWN.with(Optional.of(learned)));
  }

  private CallTable table(List<Integer> numbers, Workshop tool) {
    return new CallTable(numbers.stream().parallel().map(each -> call(each, tool)).toList());
  }

  private Calls.Call call(int number, Workshop tool) {
    Calls.Drawn drawn = calls.draw(number);
    Diagnosis diagnosis = diagnose(drawn, heard(drawn, tool), tool);
    return new Calls.Call(
        drawn.kind(),
        drawn.machine().modelled(),
        drawn.machine().truth(),
        0,
        List.of(drawn.standing(diagnosis)),
        List.of(drawn.byClass(diagnosis)));
  }

  /** What the owner says unasked and to the questions of the tool. */
  private static List<SymptomReport> heard(Calls.Drawn drawn, Workshop tool) {
    List<SymptomReport> said = new ArrayList<>(drawn.owner().volunteers());
    for (int i = 0; i < QUESTIONS; i++) {
      Diagnosis diagnosis = diagnose(drawn, said, tool);
      if (!diagnosis.ask().isEmpty()) {
        said.add(drawn.owner().answer(diagnosis.ask().get(0).symptom()));
      }
    }
    return said;
  }

  private static Diagnosis diagnose(Calls.Drawn drawn, List<SymptomReport> said, Workshop tool) {
    Appliance appliance = Calls.appliance(drawn.kind(), drawn.years());
    return tool.open(Calls.job(appliance, said, List.of())).diagnosis();
  }

  /** The entry of a call that was led by the tool without a book, and whose cause was found. */
  private BookEntry entry(int number) {
    Calls.Drawn drawn = calls.draw(number);
    Map<String, Answer> symptoms = new TreeMap<>();
    heard(drawn, Calls.TOOL).forEach(each -> symptoms.put(each.symptom(), each.answer()));
    Kind kind = Calls.TOOL.kinds().kind(drawn.kind()).orElseThrow();
    Map<String, String> components = new HashMap<>();
    for (KindPart part : kind.parts()) {
      components.put(part.id(), part.kind());
    }
    List<ConfirmedCause> causes = new ArrayList<>();
    for (String key : new TreeMap<>(drawn.machine().severity()).keySet()) {
      String component = key.substring(0, key.indexOf('.'));
      causes.add(
          new ConfirmedCause(
              component,
              components.getOrDefault(component, component),
              key.substring(key.indexOf('.') + 1)));
    }
    boolean sound = drawn.machine().truth().equals(TrueKind.NOTHING_WRONG);
    return new BookEntry(
        "job-" + number,
        Optional.empty(),
        DAY,
        new BookedMachine(
            drawn.kind(),
            "",
            "",
            "",
            OptionalDouble.of(drawn.years()),
            OptionalDouble.empty(),
            OptionalDouble.empty()),
        Optional.empty(),
        "",
        "",
        symptoms,
        List.of(),
        sound ? Outcome.NOTHING_WRONG : Outcome.CURED,
        causes,
        List.of(),
        List.of(),
        Map.of(),
        Optional.empty(),
        Optional.empty());
  }
}

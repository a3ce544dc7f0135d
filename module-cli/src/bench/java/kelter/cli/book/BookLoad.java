package kelter.cli.book;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.ServiceLoader;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.random.RandomGenerator;
import kelter.core.book.BookEntry;
import kelter.core.book.BookedMachine;
import kelter.core.book.ConfirmedCause;
import kelter.core.book.JobBook;
import kelter.core.book.Likeness;
import kelter.core.book.Outcome;
import kelter.core.book.ReadingTaken;
import kelter.core.book.WorkDone;
import kelter.core.book.learning.BookLearning;
import kelter.core.book.learning.LearningRule;
import kelter.core.catalogue.Kind;
import kelter.core.catalogue.KindCause;
import kelter.core.file.book.EntryLine;
import kelter.core.file.book.EntrySource;
import kelter.core.file.catalogue.KindFile;
import kelter.core.job.Market;
import kelter.core.job.SymptomReport.Answer;
import kelter.core.module.CalculationModule;
import kelter.core.problem.Problem;
import kelter.core.quantity.Money;
import kelter.core.workshop.Workshop;

/**
 * A large book: how fast it is filled against plain inserts of the same rows, searched and learned
 * from, in both databases.
 */
public final class BookLoad {

  private static final int JOBS = 100_000;
  private static final int BATCH = 1_000;
  private static final int TRIES = 25;
  private static final int SEARCHES = 50;
  private static final LocalDate DAY = LocalDate.of(2020, 1, 1);

  private static final String[] WORDS =
      ("leaks seal door drum water cold hot loud grinds stops cycle display blank smell burnt hums"
              + " starts fills drains slowly hose filter lint belt slips trips breaker kitchen floor"
              + " since weeks again sometimes never always after before rinse spin heat timer lamp")
          .split(" ");

  private final List<Kind> kinds = new ArrayList<>();
  private final Path folder;

  private BookLoad(Path folder) {
    this.folder = folder;
    Workshop tool = Workshop.of(ServiceLoader.load(CalculationModule.class));
    KindFile.shipped().forEach(id -> kinds.add(tool.kinds().kind(id).orElseThrow()));
  }

  /**
   * Prints the figures.
   *
   * @param arguments the number of jobs, 100,000 where none is given
   * @throws Exception if a file or a database fails
   */
  public static void main(String[] arguments) throws Exception {
    int jobs = arguments.length > 0 ? Integer.parseInt(arguments[0]) : JOBS;
    Path folder = Files.createTempDirectory("book-load");
    BookLoad load = new BookLoad(folder);
    Path file = load.write(jobs);
    System.out.printf("%d jobs, %d MB of lines%n", jobs, Files.size(file) >> 20);
    load.of(
        "SQLite",
        file,
        BookPlace.of(folder.resolve("plain.db")),
        BookPlace.of(folder.resolve("book.db")));
    try (EmbeddedPostgres server = EmbeddedPostgres.start()) {
      for (String name : List.of("plain", "book")) {
        try (Connection connection = server.getPostgresDatabase().getConnection();
            Statement statement = connection.createStatement()) {
          statement.execute("create database " + name);
        }
      }
      load.of(
          "PostgreSQL",
          file,
          new BookPlace(server.getJdbcUrl("postgres", "plain")),
          new BookPlace(server.getJdbcUrl("postgres", "book")));
    }
    try (var files = Files.list(folder)) {
      for (Path each : files.toList()) {
        Files.delete(each);
      }
    }
    Files.delete(folder);
  }

  private Path write(int jobs) throws IOException {
    RandomGenerator random = new SplittableRandom(7);
    Path file = folder.resolve("book.jsonl");
    try (var lines = Files.newBufferedWriter(file)) {
      for (int i = 0; i < jobs; i++) {
        lines.write(EntryLine.write(entry(i, random)));
        lines.write('\n');
      }
    }
    return file;
  }

  private BookEntry entry(int number, RandomGenerator random) {
    Kind kind = kinds.get(random.nextInt(kinds.size()));
    KindCause cause = kind.causes().get(random.nextInt(kind.causes().size()));
    String component = kind.part(cause.part()).map(part -> part.kind()).orElse(cause.part());
    Map<String, Answer> symptoms = new TreeMap<>();
    for (String each : kind.symptoms()) {
      if (symptoms.size() < 4 && random.nextInt(4) == 0) {
        symptoms.put(each, Answer.values()[random.nextInt(3)]);
      }
    }
    LocalDate closed = DAY.plusDays(random.nextInt(2300));
    return new BookEntry(
        "job-" + number,
        Optional.of(closed.minusDays(random.nextInt(5))),
        closed,
        new BookedMachine(
            kind.id(),
            "Maker" + random.nextInt(30),
            "M" + random.nextInt(400),
            "S" + random.nextInt(),
            OptionalDouble.of(random.nextInt(18) + 1),
            OptionalDouble.empty(),
            OptionalDouble.empty()),
        Optional.of(Market.EU),
        words(20, random),
        words(15, random),
        symptoms,
        List.of(),
        Outcome.values()[random.nextInt(2)],
        List.of(new ConfirmedCause(cause.part(), component, cause.fault())),
        List.of(
            new WorkDone(
                component,
                "renew",
                OptionalDouble.of(20 + random.nextInt(60)),
                Optional.of(Money.parse("38.50 EUR")),
                Optional.of(random.nextInt(10) > 0))),
        List.of(
            new ReadingTaken(component, "look", "", OptionalDouble.of(2), false),
            new ReadingTaken(
                component,
                "resistance",
                "ohmmeter",
                OptionalDouble.of(5),
                random.nextInt(50) == 0)),
        Map.of(cause.key(), random.nextDouble(), "nobody.knows", 0.01),
        Optional.of(Money.parse("129.00 EUR")),
        number > 0 && random.nextInt(20) == 0
            ? Optional.of("job-" + random.nextInt(number))
            : Optional.empty());
  }

  private static String words(int number, RandomGenerator random) {
    StringBuilder words = new StringBuilder();
    for (int i = 0; i < number; i++) {
      words.append(WORDS[random.nextInt(WORDS.length)]).append(' ');
    }
    return words.append(random.nextInt(100_000)).toString();
  }

  private void of(String name, Path file, BookPlace plain, BookPlace place) throws SQLException {
    List<BookEntry> entries = new ArrayList<>();
    read(file, entry -> entries.add(entry));
    double inserted = seconds(() -> insert(plain, entries));
    entries.clear();
    double imported = seconds(() -> fill(place, file));
    System.out.printf(
        Locale.ROOT,
        "%s: plain inserts %.1f s, import %.1f s, ratio of their speeds %.2f%n",
        name,
        inserted,
        imported,
        inserted / imported);
    double again = seconds(() -> fill(place, file));
    try (JobBook book = place.open()) {
      double[] searched = new double[TRIES];
      double[] alike = new double[TRIES];
      RandomGenerator random = new SplittableRandom(3);
      for (int i = 0; i < TRIES; i++) {
        String words = WORDS[random.nextInt(WORDS.length)] + " " + WORDS[random.nextInt(30)];
        searched[i] = seconds(() -> book.search(words, SEARCHES));
        BookEntry entry = book.find("job-" + random.nextInt((int) book.size())).orElseThrow();
        alike[i] = seconds(() -> book.similar(Likeness.of(entry), SEARCHES));
      }
      BookLearning learning =
          BookLearning.begin(
              id -> kinds.stream().filter(kind -> kind.id().equals(id)).findFirst(),
              new LearningRule(DAY.plusDays(2400), LearningRule.USUALLY_KEPT));
      double learned =
          seconds(
              () -> {
                book.lessons(learning::read);
                learning.learned();
              });
      System.out.printf(
          Locale.ROOT,
          "%s: imported again %.1f s; search %.0f ms (worst %.0f), similar %.0f ms (worst %.0f),"
              + " learn %.1f s; memory in use %d MB%n",
          name,
          again,
          1000 * median(searched),
          1000 * searched[TRIES - 1],
          1000 * median(alike),
          1000 * alike[TRIES - 1],
          learned,
          Runtime.getRuntime().totalMemory() >> 20);
    }
  }

  private static double median(double[] values) {
    Arrays.sort(values);
    return values[values.length / 2];
  }

  @FunctionalInterface
  private interface Work {
    void done() throws SQLException;
  }

  private static double seconds(Work work) throws SQLException {
    long begun = System.nanoTime();
    work.done();
    return (System.nanoTime() - begun) / 1e9;
  }

  private static void read(Path file, Consumer<BookEntry> taken) {
    EntrySource.read(
        file,
        new EntrySource.Sink() {
          @Override
          public void entry(long line, BookEntry entry) {
            taken.accept(entry);
          }

          @Override
          public void refused(long line, String text, List<Problem> problems) {
            throw new IllegalStateException(problems.toString());
          }
        });
  }

  private static void fill(BookPlace place, Path file) {
    try (JobBook book = place.openOrMake()) {
      List<BookEntry> batch = new ArrayList<>();
      read(
          file,
          entry -> {
            batch.add(entry);
            if (batch.size() == BATCH) {
              book.add(batch);
              batch.clear();
            }
          });
      book.add(batch);
    }
  }

  /** The same rows from memory, with nothing looked up. */
  private static void insert(BookPlace place, List<BookEntry> entries) throws SQLException {
    place.openOrMake().close();
    boolean isFile = !place.name().startsWith("jdbc:");
    String address = isFile ? "jdbc:sqlite:" + place.name() : place.name();
    try (Connection connection = DriverManager.getConnection(address)) {
      if (isFile) {
        try (Statement statement = connection.createStatement()) {
          statement.execute("pragma foreign_keys = on");
          statement.execute("pragma synchronous = full");
        }
      }
      connection.setAutoCommit(false);
      try (EntryWriter writer = new EntryWriter(connection)) {
        for (int i = 0; i < entries.size(); i++) {
          writer.add(i + 1, entries.get(i), "0".repeat(64));
          if ((i + 1) % BATCH == 0) {
            writer.write();
            connection.commit();
          }
        }
        writer.write();
        connection.commit();
      }
    }
  }
}

package kelter.cli.book;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import kelter.core.book.Added;
import kelter.core.book.BookEntry;
import kelter.core.book.JobBook;
import kelter.core.book.Likeness;
import kelter.core.book.Selection;
import kelter.core.book.Similar;
import kelter.core.file.book.EntryLine;
import kelter.core.file.disk.TextFile;
import kelter.core.problem.InputException;

/** A job book in a database. */
final class JdbcBook implements JobBook {

  private final String name;
  private final Dialect dialect;
  private final Connection connection;
  private final EntryLoader loader;
  private final LessonLoader lessons;

  JdbcBook(String name, Dialect dialect, Connection connection) {
    this.name = name;
    this.dialect = dialect;
    this.connection = connection;
    PageQueries queries = new PageQueries(connection);
    this.loader = new EntryLoader(queries);
    this.lessons = new LessonLoader(queries);
  }

  @FunctionalInterface
  private interface Work<T> {
    T done() throws SQLException;
  }

  /** Reads, and leaves no transaction open. */
  private <T> T reading(Work<T> work) {
    try {
      T result = work.done();
      connection.commit();
      return result;
    } catch (SQLException fault) {
      throw rolledBack(BookFault.of(name, dialect, fault));
    } catch (IllegalArgumentException noEntry) {
      throw rolledBack(
          new InputException(
              name,
              "holds what is no entry: " + noEntry.getMessage(),
              "keep it aside and take the last backup"));
    }
  }

  private InputException rolledBack(InputException fault) {
    try {
      connection.rollback();
    } catch (SQLException gone) {
      return fault;
    }
    return fault;
  }

  @Override
  public List<Added> add(List<BookEntry> entries) {
    return reading(
        () -> {
          try (Statement lock = connection.createStatement()) {
            // A write that changes nothing: whoever does it first is alone until the end.
            lock.executeUpdate("update writer set one = one");
          }
          return written(entries);
        });
  }

  private List<Added> written(List<BookEntry> entries) throws SQLException {
    Map<String, Set<String>> there = digests(entries);
    List<Added> added = new ArrayList<>();
    int next = next();
    try (EntryWriter writer = new EntryWriter(connection)) {
      for (BookEntry entry : entries) {
        String digest = digest(entry);
        Set<String> before = there.putIfAbsent(entry.job(), Set.of(digest));
        if (before == null) {
          writer.add(next++, entry, digest);
          added.add(Added.NEW);
        } else {
          added.add(before.contains(digest) ? Added.KNOWN : Added.OTHER);
        }
      }
      writer.write();
    }
    return added;
  }

  /** By the id of a job that is there the digests by which it may be given again. */
  private Map<String, Set<String>> digests(List<BookEntry> entries) throws SQLException {
    Map<String, Set<String>> there = new HashMap<>();
    for (int from = 0; from < entries.size(); from += PageQueries.PAGE) {
      digests(entries.subList(from, Math.min(entries.size(), from + PageQueries.PAGE)), there);
    }
    return there;
  }

  private void digests(List<BookEntry> page, Map<String, Set<String>> there) throws SQLException {
    Set<String> withoutSerial = new HashSet<>();
    for (BookEntry entry : page) {
      if (entry.machine().serial().isEmpty()) {
        withoutSerial.add(entry.job());
      }
    }
    List<Object> jobs = page.stream().<Object>map(BookEntry::job).toList();
    List<Integer> leftOut = new ArrayList<>();
    String sql =
        "select job, digest, number, serial from entry where job in "
            + PageQueries.marks(page.size());
    try (PreparedStatement query = prepared(sql, jobs);
        ResultSet row = query.executeQuery()) {
      while (row.next()) {
        there.put(row.getString(1), Set.of(row.getString(2)));
        if (!row.getString(4).isEmpty() && withoutSerial.contains(row.getString(1))) {
          leftOut.add(row.getInt(3));
        }
      }
    }
    for (EntryLoader.Stored stored : loader.load(leftOut)) {
      there.put(
          stored.entry().job(), Set.of(stored.digest(), digest(stored.entry().withoutSerial())));
    }
  }

  private int next() throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet row = statement.executeQuery("select coalesce(max(number), 0) from entry")) {
      row.next();
      return row.getInt(1) + 1;
    }
  }

  /** By what an entry is known again, SHA-256 of its line. */
  static String digest(BookEntry entry) {
    try {
      byte[] line = EntryLine.write(entry).getBytes(StandardCharsets.UTF_8);
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(line));
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  @Override
  public Optional<BookEntry> find(String job) {
    List<BookEntry> found =
        reading(() -> loaded("select number from entry where job = ?", List.of(job), 1));
    return found.stream().findFirst();
  }

  @Override
  public List<BookEntry> list(Selection selection) {
    StringBuilder sql = new StringBuilder("select number from entry where 1 = 1");
    List<Object> values = new ArrayList<>();
    if (!selection.kind().isEmpty()) {
      sql.append(" and kind = ?");
      values.add(selection.kind());
    }
    selection
        .from()
        .ifPresent(
            day -> {
              sql.append(" and closed >= ?");
              values.add(day.toString());
            });
    selection
        .to()
        .ifPresent(
            day -> {
              sql.append(" and closed <= ?");
              values.add(day.toString());
            });
    sql.append(" order by closed desc, number desc limit ?");
    values.add(selection.most());
    return reading(() -> loaded(sql.toString(), values, selection.most()));
  }

  @Override
  public List<BookEntry> search(String words, int most) {
    String terms = dialect.terms(words);
    return terms.isEmpty()
        ? List.of()
        : reading(() -> loaded(dialect.search(), List.of(terms, most), most));
  }

  private List<BookEntry> loaded(String sql, List<Object> values, int most) throws SQLException {
    List<Integer> numbers = numbers(sql, values);
    List<BookEntry> entries = new ArrayList<>();
    for (int from = 0; from < Math.min(most, numbers.size()); from += PageQueries.PAGE) {
      loader
          .load(numbers.subList(from, Math.min(numbers.size(), from + PageQueries.PAGE)))
          .forEach(stored -> entries.add(stored.entry()));
    }
    return entries;
  }

  private List<Integer> numbers(String sql, List<Object> values) throws SQLException {
    List<Integer> numbers = new ArrayList<>();
    try (PreparedStatement query = prepared(sql, values);
        ResultSet row = query.executeQuery()) {
      while (row.next()) {
        numbers.add(row.getInt(1));
      }
    }
    return numbers;
  }

  private PreparedStatement prepared(String sql, List<Object> values) throws SQLException {
    PreparedStatement query = connection.prepareStatement(sql);
    for (int i = 0; i < values.size(); i++) {
      query.setObject(i + 1, values.get(i));
    }
    return query;
  }

  @Override
  public List<Similar> similar(Likeness wanted, int most) {
    return reading(
        () -> {
          List<LikestJobs.Scored> best = new LikestJobs(connection).of(wanted, most);
          List<Similar> similar = new ArrayList<>();
          List<Integer> numbers = best.stream().map(LikestJobs.Scored::number).toList();
          List<EntryLoader.Stored> stored = loader.load(numbers);
          for (int i = 0; i < stored.size(); i++) {
            similar.add(new Similar(stored.get(i).entry(), best.get(i).points()));
          }
          return similar;
        });
  }

  @Override
  public Map<String, List<String>> cameBack(Collection<String> jobs) {
    if (jobs.isEmpty()) {
      return Map.of();
    }
    return reading(
        () -> {
          Map<String, List<String>> cameBack = new TreeMap<>();
          String sql =
              "select call_back_of, job from entry where call_back_of in "
                  + PageQueries.marks(jobs.size())
                  + " order by call_back_of, closed, number";
          try (PreparedStatement query = prepared(sql, new ArrayList<>(jobs));
              ResultSet row = query.executeQuery()) {
            while (row.next()) {
              cameBack
                  .computeIfAbsent(row.getString(1), any -> new ArrayList<>())
                  .add(row.getString(2));
            }
          }
          return cameBack;
        });
  }

  @Override
  public void each(Consumer<BookEntry> reader) {
    each(loader::load, stored -> reader.accept(stored.entry()));
  }

  @Override
  public void lessons(Consumer<BookEntry> reader) {
    each(lessons::load, reader);
  }

  @FunctionalInterface
  private interface Loading<T> {
    List<T> of(List<Integer> numbers) throws SQLException;
  }

  private <T> void each(Loading<T> loading, Consumer<T> reader) {
    ReadAhead.<Page<T>>of(
        before -> pageAfter(before, loading), page -> page.loaded().forEach(reader));
  }

  /** What follows a page; the first where there is none before. */
  private <T> Optional<Page<T>> pageAfter(Optional<Page<T>> before, Loading<T> loading) {
    List<Map.Entry<Integer, String>> page =
        page(before.map(Page::day).orElse(""), before.map(Page::number).orElse(0));
    if (page.isEmpty()) {
      return Optional.empty();
    }
    List<Integer> numbers = page.stream().map(Map.Entry::getKey).toList();
    Map.Entry<Integer, String> last = page.get(page.size() - 1);
    return Optional.of(
        new Page<>(reading(() -> loading.of(numbers)), last.getValue(), last.getKey()));
  }

  /** What was loaded of some entries, with day and number of the last. */
  private record Page<T>(List<T> loaded, String day, int number) {}

  /** The numbers and days of the entries that follow one. */
  private List<Map.Entry<Integer, String>> page(String day, int number) {
    return reading(
        () -> {
          List<Map.Entry<Integer, String>> page = new ArrayList<>();
          String sql =
              "select number, closed from entry where (closed, number) > (?, ?)"
                  + " order by closed, number limit ?";
          try (PreparedStatement query = prepared(sql, List.of(day, number, PageQueries.PAGE));
              ResultSet row = query.executeQuery()) {
            while (row.next()) {
              page.add(Map.entry(row.getInt(1), row.getString(2)));
            }
          }
          return page;
        });
  }

  @Override
  public List<String> check() {
    List<String> wrong = new ArrayList<>();
    if (dialect == Dialect.SQLITE) {
      wrong.addAll(told("pragma integrity_check"));
      wrong.removeIf("ok"::equals);
      told("pragma foreign_key_check")
          .forEach(table -> wrong.add("a row of '" + table + "' belongs to no entry"));
    }
    if (wrong.isEmpty()) {
      each(
          loader::load,
          stored -> {
            if (!digest(stored.entry()).equals(stored.digest())) {
              wrong.add("the entry of '" + stored.entry().job() + "' is not as it was added");
            }
          });
    }
    return wrong;
  }

  private List<String> told(String sql) {
    return reading(
        () -> {
          List<String> told = new ArrayList<>();
          try (Statement statement = connection.createStatement();
              ResultSet row = statement.executeQuery(sql)) {
            while (row.next()) {
              told.add(row.getString(1));
            }
          }
          return told;
        });
  }

  @Override
  public void backUp(Path to) {
    if (dialect == Dialect.POSTGRESQL) {
      throw new InputException(
          name,
          "is on a server, which has backups of its own",
          "ask whoever keeps it, or write all entries with 'kelter book export'");
    }
    if (Files.exists(to, LinkOption.NOFOLLOW_LINKS)) {
      throw new InputException(to.toString(), "is there already", "name another file");
    }
    Path part = to.resolveSibling(to.getFileName() + "." + ProcessHandle.current().pid() + ".part");
    try {
      copy(part);
      TextFile.place(part, to);
    } catch (SQLException fault) {
      throw BookFault.ofCopy(name, to.toString(), fault);
    } finally {
      TextFile.erase(part);
    }
  }

  private void copy(Path to) throws SQLException {
    connection.setAutoCommit(true);
    try (PreparedStatement copy = connection.prepareStatement("vacuum into ?")) {
      copy.setString(1, to.toString());
      copy.execute();
    } finally {
      connection.setAutoCommit(false);
    }
  }

  @Override
  public long size() {
    return Long.parseLong(told("select count(*) from entry").get(0));
  }

  @Override
  public void close() {
    try {
      connection.close();
    } catch (SQLException fault) {
      throw BookFault.of(name, dialect, fault);
    }
  }
}

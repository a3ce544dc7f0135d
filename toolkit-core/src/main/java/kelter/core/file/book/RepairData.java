package kelter.core.file.book;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import kelter.core.book.BookEntry;
import kelter.core.book.BookedMachine;
import kelter.core.book.Outcome;
import kelter.core.file.book.EntrySource.Sink;
import kelter.core.problem.FilePlace;
import kelter.core.problem.InputException;
import kelter.core.problem.Mistake;
import kelter.core.problem.Problem;
import kelter.core.source.Source;
import kelter.core.vocabulary.CalendarDate;
import org.apache.commons.csv.CSVException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Tables of the Open Repair Data Standard, out and in. In older tables columns have other names,
 * and a status is a word where newer ones have a number; both are read.
 */
public final class RepairData {

  /** Where the fields come from. */
  public static final Source SOURCE =
      Source.published("Open Repair Data Standard 0.3, openrepair/datastandard, standard.rst");

  private static final List<String> FIELDS =
      List.of(
          "id",
          "data_provider",
          "country",
          "partner_product_category",
          "product_category",
          "product_category_id",
          "brand",
          "year_of_manufacture",
          "product_age_estimate",
          "repair_status",
          "repair_barrier_if_end_of_life",
          "group_identifier",
          "event_date",
          "record_date",
          "problem");

  /** Names that columns have in the public data, from version 0.1 to 0.3 (openrepair/data). */
  private static final Map<String, String> OLD =
      Map.of(
          "product_age",
          "product_age_estimate",
          "category",
          "product_category",
          "date",
          "event_date");

  /** In the tables of 0.1 and 0.2.1 a year that nobody knows (openrepair/data). */
  private static final String UNKNOWN_YEAR = "????";

  /** The kinds that have a category of their own (hand-over list of the standard). */
  private static final Map<String, Category> CATEGORIES =
      Map.of(
          "room-air-conditioner", new Category(1, "Aircon/dehumidifier"),
          "dehumidifier", new Category(1, "Aircon/dehumidifier"),
          "kettle", new Category(14, "Kettle"),
          "fan-heater", new Category(28, "Small home electrical"),
          "toaster", new Category(31, "Toaster"),
          "vacuum-cleaner", new Category(34, "Vacuum"),
          "espresso-machine", new Category(36, "Coffee maker"),
          "hair-dryer", new Category(39, "Hair dryer"),
          "iron", new Category(40, "Iron"));

  /** All other machines; our own choice. */
  private static final Category LARGE = new Category(17, "Large home electrical");

  private static final Map<String, String> KINDS =
      Map.of(
          "kettle", "kettle",
          "toaster", "toaster",
          "vacuum", "vacuum-cleaner",
          "coffee maker", "espresso-machine",
          "hair dryer", "hair-dryer",
          "iron", "iron");

  private static final int OLDEST_YEAR = 1900;

  private RepairData() {}

  private record Category(int id, String name) {}

  /**
   * The first row.
   *
   * @return the names of the fields, with a line end
   */
  public static String head() {
    return SafeCsv.row(FIELDS);
  }

  /**
   * The row of an entry. Only a cured machine is told as fixed; that the end of life has come is
   * for people to say and never told.
   *
   * @param entry the entry
   * @param provider who gives the data; may be empty
   * @param country where, three letters of ISO 3166; may be empty
   * @return the row, with a line end
   */
  public static String row(BookEntry entry, String provider, String country) {
    Category category = CATEGORIES.getOrDefault(entry.machine().kind(), LARGE);
    OptionalDouble age = entry.machine().age();
    Map<String, String> cells = new HashMap<>();
    cells.put("id", entry.job());
    cells.put("data_provider", provider);
    cells.put("country", country);
    cells.put("partner_product_category", entry.machine().kind());
    cells.put("product_category", category.name());
    cells.put("product_category_id", Integer.toString(category.id()));
    cells.put("brand", entry.machine().maker());
    if (age.isPresent()) {
      cells.put("product_age_estimate", Long.toString(Math.round(age.getAsDouble())));
      cells.put(
          "year_of_manufacture",
          Long.toString(entry.closed().getYear() - Math.round(age.getAsDouble())));
    }
    cells.put("repair_status", status(entry.outcome()));
    cells.put("event_date", entry.closed().toString());
    cells.put("record_date", entry.closed().toString());
    cells.put("problem", entry.complaint());
    return SafeCsv.row(FIELDS.stream().map(field -> cells.getOrDefault(field, "")).toList());
  }

  private static String status(Outcome outcome) {
    return switch (outcome) {
      case CURED -> "Fixed";
      case NOT_CURED -> "Repairable";
      default -> "Unknown";
    };
  }

  /** Reads a table; it must have the fields id, event_date, product_category, repair_status. */
  static void read(InputStream in, String name, Sink sink) throws IOException {
    Reader text =
        new InputStreamReader(
            in,
            StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPLACE)
                .onUnmappableCharacter(CodingErrorAction.REPLACE));
    try (CSVParser parser =
        CSVFormat.RFC4180.builder().setIgnoreEmptyLines(true).get().parse(text)) {
      Iterator<CSVRecord> rows = parser.iterator();
      Map<String, Integer> columns = new HashMap<>();
      int width = rows.hasNext() ? head(rows.next(), columns) : 0;
      require(columns, name);
      long line = parser.getCurrentLineNumber() + 1;
      while (rows.hasNext()) {
        CSVRecord cells = rows.next();
        new Row(cells, columns, width, new FilePlace(name, line, 0)).read(sink);
        line = parser.getCurrentLineNumber() + 1;
      }
    } catch (UncheckedIOException broken) {
      throw notATable(name, broken.getCause());
    } catch (CSVException broken) {
      throw notATable(name, broken);
    }
  }

  private static InputException notATable(String name, IOException broken) {
    return new InputException(
        name,
        "is neither lines of JSON nor a table of comma-separated values: " + broken.getMessage(),
        "what stands before that is in the book");
  }

  /** Tells which column has which field, and how many columns there are, some without a name. */
  private static int head(CSVRecord head, Map<String, Integer> columns) {
    for (int i = 0; i < head.size(); i++) {
      String field = head.get(i).replace("\ufeff", "").strip().toLowerCase(Locale.ROOT);
      field = field.replace(' ', '_');
      columns.putIfAbsent(OLD.getOrDefault(field, field), i);
    }
    return head.size();
  }

  private static void require(Map<String, Integer> columns, String name) {
    List<Problem> missing = new ArrayList<>();
    for (String field : List.of("id", "event_date", "product_category", "repair_status")) {
      if (!columns.containsKey(field)) {
        missing.add(
            new Problem(
                name + ", line 1",
                "there is no column '" + field + "'",
                "give lines of JSON, or a table of the Open Repair Data Standard"));
      }
    }
    if (!missing.isEmpty()) {
      throw new InputException(missing);
    }
  }

  /** One row. */
  private record Row(CSVRecord cells, Map<String, Integer> columns, int width, FilePlace place) {

    private String cell(String field) {
      Integer column = columns.get(field);
      boolean told = column != null && column < cells.size();
      return told ? SafeCsv.plain(cells.get(column).replace("\0", "").strip()) : "";
    }

    void read(Sink sink) {
      List<Problem> problems = new ArrayList<>();
      if (cells.size() != width) {
        problem("", "has %s cells; the first row has %s".formatted(cells.size(), width), problems);
      }
      String job = job(problems);
      Optional<LocalDate> closed = CalendarDate.of(day(cell("event_date")));
      if (closed.isEmpty() || closed.get().getYear() < OLDEST_YEAR) {
        problem("event_date", "'" + shown("event_date") + "' is not a date", problems);
      }
      Optional<Outcome> outcome = outcome();
      if (outcome.isEmpty()) {
        problem("repair_status", "'" + shown("repair_status") + "' is no status", problems);
      }
      OptionalDouble age = age(closed, problems);
      Optional<BookEntry> entry = Optional.empty();
      if (problems.isEmpty()) {
        entry = entry(job, closed.orElseThrow(), outcome.orElseThrow(), age, problems);
      }
      if (entry.isPresent()) {
        sink.entry(place.line(), entry.get());
      } else {
        sink.refused(place.line(), SafeCsv.row(cells.toList()).strip(), problems);
      }
    }

    private Optional<BookEntry> entry(
        String job, LocalDate closed, Outcome outcome, OptionalDouble age, List<Problem> problems) {
      try {
        return Optional.of(
            new BookEntry(
                job,
                Optional.empty(),
                closed,
                new BookedMachine(
                    kind(),
                    cell("brand"),
                    cell("model"),
                    "",
                    age,
                    OptionalDouble.empty(),
                    OptionalDouble.empty()),
                Optional.empty(),
                cell("problem"),
                "",
                Map.of(),
                List.of(),
                outcome,
                List.of(),
                List.of(),
                List.of(),
                Map.of(),
                Optional.empty(),
                Optional.empty()));
      } catch (IllegalArgumentException refused) {
        problem("", refused.getMessage(), problems);
        return Optional.empty();
      }
    }

    private void problem(String field, String what, List<Problem> problems) {
      problems.add(new Problem(Mistake.UNUSABLE, field, what, "", place));
    }

    private String shown(String field) {
      String cell = cell(field);
      return cell.length() > 60 ? cell.substring(0, 60) + "..." : cell;
    }

    private String job(List<Problem> problems) {
      String job = slug(cell("id"));
      if (job.isEmpty()) {
        problem("id", "is missing", problems);
      }
      return job;
    }

    /** Some tables tell the hour too. */
    private static String day(String text) {
      return text.length() > 10 && (text.charAt(10) == ' ' || text.charAt(10) == 'T')
          ? text.substring(0, 10)
          : text;
    }

    private Optional<Outcome> outcome() {
      return switch (cell("repair_status").toLowerCase(Locale.ROOT)) {
        case "fixed", "1" -> Optional.of(Outcome.CURED);
        case "repairable", "2" -> Optional.of(Outcome.NOT_CURED);
        case "end of life", "end-of-life", "3" -> Optional.of(Outcome.NOT_REPAIRED);
        case "unknown", "0", "" -> Optional.of(Outcome.UNKNOWN);
        default -> Optional.empty();
      };
    }

    private OptionalDouble age(Optional<LocalDate> closed, List<Problem> problems) {
      String told = cell("product_age_estimate");
      String year = cell("year_of_manufacture");
      if (!told.isEmpty()) {
        return number("product_age_estimate", told, problems);
      }
      if (year.isEmpty() || year.equals(UNKNOWN_YEAR) || closed.isEmpty()) {
        return OptionalDouble.empty();
      }
      OptionalDouble made = number("year_of_manufacture", year, problems);
      if (made.isPresent() && made.getAsDouble() == 0) {
        return OptionalDouble.empty();
      }
      double age = made.isPresent() ? closed.get().getYear() - made.getAsDouble() : 0;
      if (!(age >= 0 && age <= BookedMachine.OLDEST)) {
        problem(
            "year_of_manufacture",
            "'%s' is %.0f years before the repair; 0 to %.0f is allowed"
                .formatted(shown("year_of_manufacture"), age, BookedMachine.OLDEST),
            problems);
      }
      return made.isPresent() ? OptionalDouble.of(age) : made;
    }

    private OptionalDouble number(String field, String text, List<Problem> problems) {
      if (text.matches("[0-9]{1,6}([.][0-9]{1,6})?")) {
        return OptionalDouble.of(Double.parseDouble(text));
      }
      problem(field, "'" + shown(field) + "' is no number", problems);
      return OptionalDouble.empty();
    }

    /** A kind by its category; what has none keeps the name of its category. */
    private String kind() {
      String category = cell("product_category").toLowerCase(Locale.ROOT);
      String own = slug(cell("partner_product_category"));
      if (CATEGORIES.containsKey(own)) {
        return own;
      }
      String known = KINDS.get(category);
      String kind = known == null ? slug(category) : known;
      return kind.isEmpty() ? "unknown" : kind;
    }

    /** A name as an id. */
    private static String slug(String name) {
      String plain = name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
      return plain.replaceAll("^-+|-+$", "");
    }
  }
}

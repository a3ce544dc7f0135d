package kelter.core.file.log;

import java.util.List;
import java.util.Optional;

/**
 * What was recognised of a log.
 *
 * @param encoding the name of its character set
 * @param encodingAssumed whether that is a guess, since nothing in the file tells
 * @param delimiter what stands between columns
 * @param decimalComma whether decimals follow a comma
 * @param headerRow the row of the headings, from 1; 0 if there are none
 * @param firstRow the first row of readings, from 1
 * @param timing how it tells its times
 * @param columns its columns, in order
 * @param guesses what was made out and not told by the log itself, and how sure it is
 */
public record LogFormat(
    String encoding,
    boolean encodingAssumed,
    char delimiter,
    boolean decimalComma,
    long headerRow,
    long firstRow,
    Timing timing,
    List<Column> columns,
    List<Guess> guesses) {

  public LogFormat {
    columns = List.copyOf(columns);
    guesses = List.copyOf(guesses);
  }

  /** What a column holds. */
  public enum Role {
    /** Times. */
    TIME,
    /** Figures. */
    VALUE,
    /** Units of another column. */
    UNIT,
    /** Anything else, or the number of the row; it is not read. */
    OTHER
  }

  /** How sure a guess is. */
  public enum Sureness {
    /** Somebody said so. */
    SAID("as you said"),
    /** The log allows nothing else. */
    CERTAIN("certain"),
    /** Something else is possible, but odd. */
    LIKELY("likely"),
    /** Something else is as good, and no reading depends on it. */
    EVEN("a guess that changes no reading");

    private final String words;

    Sureness(String words) {
      this.words = words;
    }

    /**
     * For a person.
     *
     * @return words
     */
    public String words() {
      return words;
    }
  }

  /**
   * Something that was made out.
   *
   * @param about what it is about, for instance {@code dates}
   * @param taken what was taken
   * @param sureness how sure it is
   * @param why what speaks for it, and what would say otherwise; a sentence without a full stop
   */
  public record Guess(String about, String taken, Sureness sureness, String why) {}

  /**
   * A column.
   *
   * @param place its place, from 1
   * @param name its heading without the unit; {@code column 3} without a heading
   * @param heading its whole heading
   * @param unit its unit as it is written in the heading, in a row or column of units, or behind
   *     each figure; may be empty
   * @param role what it holds
   */
  public record Column(int place, String name, String heading, String unit, Role role) {

    Column as(Role other) {
      return new Column(place, name, heading, unit, other);
    }

    Column in(String other) {
      return new Column(place, name, heading, other, role);
    }

    boolean isCalled(String word) {
      return heading.equals(word)
          || name.equalsIgnoreCase(word.strip())
          || word.strip().equals("#" + place);
    }
  }

  /**
   * How a log tells its times.
   *
   * @param description for a person, for instance {@code day.month.year and time of day}
   * @param clock whether the time of day can be told
   * @param calendar whether the date can be told
   * @param assumed whether the order of day and month is a guess
   * @param counted whether there are no times, so that rows are counted
   */
  public record Timing(
      String description, boolean clock, boolean calendar, boolean assumed, boolean counted) {}

  /**
   * The columns that hold figures, in order.
   *
   * @return the columns
   */
  public List<Column> values() {
    return columns.stream().filter(column -> column.role() == Role.VALUE).toList();
  }

  /**
   * A column with figures, by its whole heading, its heading without the unit, or its place as
   * {@code #3}.
   *
   * @param name what a person calls it
   * @return its place among {@link #values}, from 0; empty if there is none
   * @throws IllegalArgumentException if there is more than one
   */
  public Optional<Integer> find(String name) {
    List<Column> values = values();
    for (int pass = 0; pass < 4; pass++) {
      Optional<Integer> found = find(values, name.strip(), pass);
      if (found.isPresent()) {
        return found;
      }
    }
    return Optional.empty();
  }

  private static Optional<Integer> find(List<Column> values, String name, int pass) {
    Optional<Integer> found = Optional.empty();
    for (int i = 0; i < values.size(); i++) {
      if (matches(values.get(i), name, pass)) {
        if (found.isPresent()) {
          throw new IllegalArgumentException(
              "more than one column is called '%s'; name it by its place, #%s or #%s"
                  .formatted(name, values.get(found.get()).place(), values.get(i).place()));
        }
        found = Optional.of(i);
      }
    }
    return found;
  }

  private static boolean matches(Column column, String name, int pass) {
    return switch (pass) {
      case 0 -> column.heading().equals(name);
      case 1 -> column.name().equals(name);
      case 2 -> column.name().equalsIgnoreCase(name);
      default -> name.equals("#" + column.place());
    };
  }
}

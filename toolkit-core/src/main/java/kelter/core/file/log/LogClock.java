package kelter.core.file.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import kelter.core.file.log.LogFormat.Column;
import kelter.core.file.log.LogFormat.Guess;
import kelter.core.file.log.LogFormat.Role;
import kelter.core.file.log.LogFormat.Sureness;
import kelter.core.file.log.LogFormat.Timing;
import kelter.core.file.log.cell.CellTime;
import kelter.core.file.log.cell.FigureForm;
import kelter.core.problem.Problem;

/**
 * Where the times of a log stand and how they are read.
 *
 * @param dateColumn the place of the dates, from 0; -1 if there are none
 * @param clockColumn the place of the times of day, the same if they stand together; -1 if there
 *     are none
 * @param figureColumn the place of times that are told as figures; -1 if there are none
 * @param dates how dates are written
 * @param form what the times are
 * @param timing how it is told
 * @param guesses what was made out
 * @param settled whether no further row can say otherwise
 * @param open what must be said first
 */
record LogClock(
    int dateColumn,
    int clockColumn,
    int figureColumn,
    DateOrder dates,
    TimeForm form,
    Timing timing,
    List<Guess> guesses,
    boolean settled,
    List<Problem> open) {

  private static final double MOST = 0.5;
  private static final String ABOUT = "times";
  static final String FLAG = "--time";

  /** Headings of times, in small letters. */
  private static final Set<String> NAMES =
      Set.of(
          "t",
          "time",
          "date",
          "datetime",
          "date time",
          "date/time",
          "date & time",
          "date and time",
          "elapsed",
          "elapsed time",
          "time elapsed",
          "rel. time",
          "relative time",
          "seconds",
          "minutes",
          "hours",
          "millis",
          "milliseconds",
          "zeit",
          "uhrzeit",
          "datum",
          "datum/zeit",
          "datum/uhrzeit",
          "zeitstempel",
          "temps",
          "heure",
          "tid",
          "tijd",
          "tijdstip",
          "tiempo",
          "hora",
          "fecha",
          "ora",
          "tempo",
          "timestamp",
          "time stamp",
          "runtime",
          "run time",
          "duration",
          "epoch",
          "unix",
          "unix time",
          "unixtime",
          "local time",
          "utc",
          "clock");

  private static final Set<String> DAY_WORDS =
      Set.of("date", "datum", "fecha", "timestamp", "stamp", "stempel");

  private static final Set<String> PASSED_WORDS =
      Set.of("elapsed", "duration", "runtime", "run time", "rel. time", "relative", "passed");

  /** Days from 1954 to 2119 in a spreadsheet; 1e9 to 4.1e9 s are 2001 to 2099. */
  private static final double[] SHEET = {20_000, 80_000};

  private static final double[] EPOCH = {1e9, 4.1e9};

  /** Whether times of day stand without a date, so that they start again at midnight. */
  boolean startsAgain() {
    return dateColumn < 0 && timing.clock() && !timing.calendar();
  }

  /** Whether a column holds times. */
  boolean isAt(Column column) {
    int place = column.place() - 1;
    return place == dateColumn || place == clockColumn || place == figureColumn;
  }

  /**
   * Finds the times among the columns of a log.
   *
   * @param file the name of the log
   * @param columns its columns
   * @param rows the cells of some of its rows
   * @param figures how its figures are written
   * @param options what is said of it
   */
  static LogClock find(
      String file,
      List<Column> columns,
      List<List<String>> rows,
      FigureForm figures,
      LogOptions options) {
    return new Search(file, columns, rows, figures, options).find();
  }

  /** The search for the times. */
  private static final class Search {
    private final String file;
    private final List<Column> columns;
    private final List<List<String>> rows;
    private final FigureForm figures;
    private final LogOptions options;
    private final Optional<TimeForm> said;
    private final List<Guess> guesses = new ArrayList<>();
    private final List<Problem> open = new ArrayList<>();
    private boolean settled = true;

    Search(
        String file,
        List<Column> columns,
        List<List<String>> rows,
        FigureForm figures,
        LogOptions options) {
      this.file = file;
      this.columns = columns;
      this.rows = rows;
      this.figures = figures;
      this.options = options;
      this.said = options.said().time();
    }

    LogClock find() {
      if (said.equals(Optional.of(TimeForm.NONE))) {
        return counted();
      }
      Optional<String> name = options.said().timeColumn();
      int named = name.isPresent() ? place(name.get()) : -1;
      if (name.isPresent() && named < 0) {
        open.add(
            new Problem(
                FLAG + " " + name.get(),
                "no column is called '" + name.get() + "'",
                "there are: " + String.join(", ", columns.stream().map(Column::name).toList())));
        return counted();
      }
      if (named >= 0 && said.get().isFigure()) {
        return ofFigures(-1, named, said.get(), Sureness.SAID, "");
      }
      boolean figure = said.isPresent() && said.get().isFigure();
      LogClock found =
          figure && said.get() != TimeForm.BASIC_CLOCK ? withoutTimes() : ofTimes(named);
      requireUse(found);
      return found;
    }

    /** What somebody says of the times is used, or it is told that it does not fit. */
    private void requireUse(LogClock found) {
      boolean used =
          guesses.stream()
              .anyMatch(each -> each.about().equals(ABOUT) && each.sureness() == Sureness.SAID);
      boolean fits = said.equals(Optional.of(TimeForm.HOURS_MINUTES)) && found.clockColumn >= 0;
      if (said.isPresent() && !used && !fits && open.isEmpty()) {
        open.add(
            new Problem(
                FLAG + " " + said.get().word(),
                "the log has no such times that can be told",
                "name their column, for instance %s 'Time=%s'".formatted(FLAG, said.get().word())));
      }
    }

    private int place(String name) {
      for (Column column : columns) {
        if (column.isCalled(name)) {
          return column.place() - 1;
        }
      }
      return -1;
    }

    /** The cells of a column that are times, if most are. */
    private List<CellTime> times(int place) {
      List<CellTime> times = new ArrayList<>();
      int cells = 0;
      for (List<String> row : rows) {
        cells += row.get(place).isEmpty() ? 0 : 1;
        CellTime time = CellTime.of(row.get(place));
        if (time.isTime()) {
          times.add(time);
        }
      }
      return times.size() > MOST * cells ? times : List.of();
    }

    private LogClock ofTimes(int named) {
      int date = -1;
      int clock = -1;
      int pointed = -1;
      for (int i = 0; i < columns.size(); i++) {
        List<CellTime> times = named < 0 || named == i ? times(i) : List.of();
        if (times.isEmpty()) {
          continue;
        }
        if (times.stream().allMatch(CellTime::isPointed)) {
          pointed = pointed < 0 ? i : pointed;
        } else if (times.get(0).hasDate()) {
          boolean first = date < 0 && clock < 0;
          date = first ? i : date;
          clock = first && times.get(0).hasClock() ? i : clock;
        } else if (clock < 0) {
          clock = i;
        }
      }
      boolean points = pointed >= 0 && clock < 0 && pointedAreClock(pointed, date >= 0);
      if (pointed >= 0 && points) {
        clock = pointed;
      } else if (pointed >= 0 && date < 0) {
        date = pointed;
      }
      if (date < 0 && clock < 0) {
        return withoutTimes();
      }
      return points ? ofPointed(date, clock) : ofSigned(date, clock);
    }

    /** Whether three numbers between points are hours, minutes and seconds, not a date. */
    private boolean pointedAreClock(int place, boolean dated) {
      if (said.equals(Optional.of(TimeForm.POINTED_CLOCK))) {
        guess("hours, minutes, seconds", Sureness.SAID, "");
        return true;
      }
      if (options.said().dates().isPresent() && !dated) {
        return false;
      }
      List<CellTime> times = times(place);
      boolean noDate =
          times.stream().anyMatch(t -> DateOrder.DAY_FIRST.days(t).isEmpty())
              && times.stream().anyMatch(t -> DateOrder.YEAR_FIRST.days(t).isEmpty());
      boolean noClock = times.stream().anyMatch(t -> Double.isNaN(t.pointed()));
      if (noClock) {
        return false;
      }
      if (dated || noDate) {
        guess(
            "hours, minutes, seconds between points",
            Sureness.CERTAIN,
            dated ? "the date stands beside" : "they are no dates");
        return true;
      }
      settled = false;
      String written = written(place);
      open.add(
          new Problem(
              at(place),
              "'%s' may be a date or hours, minutes and seconds".formatted(written),
              "say %s hh.mm.ss, or --dates dmy".formatted(FLAG)));
      return true;
    }

    private LogClock ofPointed(int date, int clock) {
      DateOrder order = order(date);
      return clock(
          date, clock, -1, order, TimeForm.POINTED_CLOCK, words(date, clock, order, "time of day"));
    }

    private LogClock ofSigned(int date, int clock) {
      boolean together = date == clock;
      DateOrder order = order(date);
      TimeForm form = TimeForm.HOURS_MINUTES;
      boolean passed = date < 0 && clock >= 0 && contains(columns.get(clock), PASSED_WORDS);
      if (clock >= 0 && date < 0 && !together) {
        form = shortForm(clock);
        passed |= form == TimeForm.MINUTES_SECONDS;
      }
      if (date >= 0 && clock < 0) {
        int figure = clockFigure(date);
        if (figure >= 0) {
          return clock(
              date,
              -1,
              figure,
              order,
              TimeForm.BASIC_CLOCK,
              words(date, figure, order, "time of day"));
        }
        refuseUnknown();
      }
      String words =
          passed
              ? form == TimeForm.MINUTES_SECONDS
                  ? form.description()
                  : "elapsed, in hours, minutes, seconds"
              : words(date, clock, order, "time of day");
      LogClock found = clock(date, clock, -1, order, form, words);
      return passed ? found.passed() : found;
    }

    private DateOrder order(int date) {
      if (date < 0) {
        return DateOrder.YEAR_FIRST;
      }
      List<CellTime> dated = times(date).stream().filter(CellTime::hasDate).toList();
      LogDates dates = LogDates.of(at(date), dated, written(date), options.said().dates());
      guesses.add(dates.guess());
      dates.open().ifPresent(open::add);
      settled &= dates.settled();
      return dates.order();
    }

    private static String words(int date, int clock, DateOrder order, String ofDay) {
      if (date < 0) {
        return ofDay;
      }
      return clock < 0 ? order.words() : order.words() + " and " + ofDay;
    }

    /** Two numbers are hours and minutes or minutes and seconds. */
    private TimeForm shortForm(int place) {
      List<CellTime> times = times(place);
      if (times.stream().noneMatch(CellTime::isShort)) {
        return TimeForm.HOURS_MINUTES;
      }
      if (said.equals(Optional.of(TimeForm.HOURS_MINUTES))
          || said.equals(Optional.of(TimeForm.MINUTES_SECONDS))) {
        guess(said.get().description(), Sureness.SAID, "");
        return said.get();
      }
      String heading = columns.get(place).heading().toLowerCase(Locale.ROOT);
      if (heading.contains("mm:ss") && !heading.contains("h:mm:ss")) {
        return certain(TimeForm.MINUTES_SECONDS, "the heading says so");
      }
      if (heading.contains("hh:mm") || heading.contains("h:mm")) {
        return certain(TimeForm.HOURS_MINUTES, "the heading says so");
      }
      if (times.stream().anyMatch(CellTime::tellsHalf)) {
        return certain(TimeForm.HOURS_MINUTES, "the half of the day is told");
      }
      if (times.stream().anyMatch(t -> t.isShort() && t.isFractional())) {
        return certain(TimeForm.MINUTES_SECONDS, "parts of a second follow");
      }
      boolean mixed = times.stream().anyMatch(t -> !t.isShort() && t.hasClock());
      if (mixed && times.get(0).isShort() && times.get(0).first() < 60) {
        return certain(TimeForm.MINUTES_SECONDS, "hours are put in front when there are some");
      }
      settled = false;
      open.add(
          new Problem(
              at(place),
              "'%s' may be hours and minutes or minutes and seconds".formatted(written(place)),
              "say %s hh:mm or %s mm:ss".formatted(FLAG, FLAG)));
      return TimeForm.HOURS_MINUTES;
    }

    private TimeForm certain(TimeForm form, String why) {
      guess(form.description(), Sureness.CERTAIN, why);
      return form;
    }

    /** The place of a column with hours, minutes and seconds in one figure beside a date. */
    private int clockFigure(int date) {
      for (Column column : columns) {
        int place = column.place() - 1;
        if (place != date && column.role() == Role.VALUE && isNamed(column)) {
          double[] told = told(place);
          if (told.length > 0 && isBasicClock(told)) {
            Sureness sure =
                said.equals(Optional.of(TimeForm.BASIC_CLOCK)) ? Sureness.SAID : Sureness.LIKELY;
            guess(TimeForm.BASIC_CLOCK.description(), sure, "the date stands beside");
            return place;
          }
        }
      }
      return -1;
    }

    private static boolean isBasicClock(double[] told) {
      for (double each : told) {
        boolean whole = each == Math.rint(each) && each >= 0 && each < 240_001;
        if (!whole || Math.floor(each / 100) % 100 >= 60 || each % 100 >= 61) {
          return false;
        }
      }
      return true;
    }

    private static boolean isNamed(Column column) {
      String name = column.name().toLowerCase(Locale.ROOT).strip();
      String unit = unitWord(column);
      return NAMES.contains(name)
          || (NAMES.contains(withoutUnit(name)) && formOfUnit(unit).isPresent());
    }

    private static String withoutUnit(String name) {
      int at = Math.max(name.lastIndexOf('_'), name.lastIndexOf(' '));
      return at < 0 ? name : name.substring(0, at).replace('_', ' ').strip();
    }

    /** The unit of a time; s, h and min are told by a last word too, if the rest names a time. */
    private static String unitWord(Column column) {
      String unit = column.unit().toLowerCase(Locale.ROOT).strip();
      String name = column.name().toLowerCase(Locale.ROOT).strip();
      int at = Math.max(name.lastIndexOf('_'), name.lastIndexOf(' '));
      if (unit.isEmpty() && at > 0 && NAMES.contains(withoutUnit(name))) {
        return name.substring(at + 1);
      }
      return switch (unit.isEmpty() ? name : unit) {
        case "seconds", "secs" -> "s";
        case "millis", "milliseconds" -> "ms";
        case "minutes" -> "min";
        case "hours" -> "h";
        default -> unit;
      };
    }

    private static Optional<TimeForm> formOfUnit(String unit) {
      return switch (unit) {
        case "s", "sec", "secs", "second", "seconds" -> Optional.of(TimeForm.SECONDS);
        case "ms", "msec", "millis", "milliseconds" -> Optional.of(TimeForm.MILLISECONDS);
        case "us", "µs", "μs", "usec", "microseconds" -> Optional.of(TimeForm.MICROSECONDS);
        case "min", "mins", "minute", "minutes" -> Optional.of(TimeForm.MINUTES);
        case "h", "hr", "hrs", "hour", "hours" -> Optional.of(TimeForm.HOURS);
        case "d", "day", "days" -> Optional.of(TimeForm.DAYS);
        case "hhmmss" -> Optional.of(TimeForm.BASIC_CLOCK);
        default -> Optional.empty();
      };
    }

    private static boolean contains(Column column, Set<String> words) {
      String heading = column.heading().toLowerCase(Locale.ROOT);
      return words.stream().anyMatch(heading::contains);
    }

    private LogClock withoutTimes() {
      for (Column column : columns) {
        int place = column.place() - 1;
        if (column.role() == Role.VALUE && isNamed(column)) {
          double[] told = told(place);
          if (told.length == 0 || !isTime(column, told)) {
            continue;
          }
          if (said.isPresent()) {
            return ofFigures(-1, place, said.get(), Sureness.SAID, "");
          }
          Optional<LogClock> found = ofFigures(column, told);
          if (found.isPresent()) {
            return found.get();
          }
        }
      }
      if (Double.isNaN(options.every())) {
        refuseUnknown();
      }
      return counted();
    }

    /** A column that is called a time and holds none that is understood is no reason to count. */
    private void refuseUnknown() {
      for (Column column : columns) {
        int place = column.place() - 1;
        if (column.role() == Role.OTHER
            && isNamed(column)
            && !written(place).isEmpty()
            && times(place).isEmpty()) {
          open.add(
              new Problem(
                  at(place),
                  "'%s' is not understood as a time".formatted(written(place)),
                  "times are written for instance 2026-10-23 14:03:05 or 14:03:05; to count rows"
                      + " instead, say %s none".formatted(FLAG)));
        }
      }
    }

    /** A column t without a unit may hold a temperature; times never fall. */
    private static boolean isTime(Column column, double[] told) {
      boolean shortName = column.name().equalsIgnoreCase("t");
      boolean unit = unitWord(column).isEmpty() || formOfUnit(unitWord(column)).isPresent();
      if (!unit || (shortName && column.name().equals("T"))) {
        return false;
      }
      for (int i = 1; shortName && i < told.length; i++) {
        if (told[i] <= told[i - 1]) {
          return false;
        }
      }
      return true;
    }

    private Optional<LogClock> ofFigures(Column column, double[] told) {
      int place = column.place() - 1;
      Optional<TimeForm> form = formOfUnit(unitWord(column));
      if (form.isPresent()) {
        TimeForm dated = dated(form.get(), told);
        Sureness sure = dated == form.get() ? Sureness.CERTAIN : Sureness.LIKELY;
        return Optional.of(ofFigures(-1, place, dated, sure, "the heading says the unit"));
      }
      TimeForm guessed = dated(TimeForm.SECONDS, told);
      guessed = guessed == TimeForm.SECONDS ? dated(TimeForm.MILLISECONDS, told) : guessed;
      guessed = guessed == TimeForm.MILLISECONDS ? dated(TimeForm.MICROSECONDS, told) : guessed;
      if (guessed == TimeForm.MICROSECONDS && contains(column, DAY_WORDS)) {
        guessed = dated(TimeForm.DAYS, told);
      }
      if (guessed.isCalendar()) {
        String why = "so they fall between 2001 and 2099";
        return Optional.of(ofFigures(-1, place, guessed, Sureness.LIKELY, why));
      }
      if (isBasicClock(told) && skipsSixty(told)) {
        String why = "59 is followed by the next minute";
        return Optional.of(ofFigures(-1, place, TimeForm.BASIC_CLOCK, Sureness.LIKELY, why));
      }
      open.add(
          new Problem(
              at(place),
              "'%s' is a time without a unit".formatted(written(place)),
              "say for instance %s s, %s ms or %s min; known are %s"
                  .formatted(FLAG, FLAG, FLAG, TimeForm.words())));
      return Optional.of(ofFigures(-1, place, TimeForm.SECONDS, Sureness.EVEN, ""));
    }

    /** The same unit counted from a day of the calendar, if only that makes sense. */
    private static TimeForm dated(TimeForm form, double[] told) {
      double first = told[0];
      return switch (form) {
        case SECONDS -> isWithin(first, EPOCH, 1) ? TimeForm.EPOCH_SECONDS : form;
        case MILLISECONDS -> isWithin(first, EPOCH, 1e3) ? TimeForm.EPOCH_MILLISECONDS : form;
        case MICROSECONDS -> isWithin(first, EPOCH, 1e6) ? TimeForm.EPOCH_MICROSECONDS : form;
        case DAYS -> isWithin(first, SHEET, 1) ? TimeForm.SPREADSHEET_DAYS : form;
        default -> form;
      };
    }

    private static boolean isWithin(double value, double[] span, double factor) {
      return value >= span[0] * factor && value <= span[1] * factor;
    }

    /** Whether the steps are even as hours, minutes and seconds, and not as a plain figure. */
    private static boolean skipsSixty(double[] told) {
      boolean even = told.length > 2;
      boolean plain = true;
      double step = told.length > 1 ? seconds(told[1]) - seconds(told[0]) : 0;
      for (int i = 2; i < told.length; i++) {
        even &= seconds(told[i]) - seconds(told[i - 1]) == step;
        plain &= told[i] - told[i - 1] == told[1] - told[0];
      }
      return even && !plain;
    }

    private static double seconds(double basic) {
      return TimeForm.BASIC_CLOCK.seconds(basic);
    }

    /** The figures of a column; none if a cell is something else. */
    private double[] told(int place) {
      double[] told = new double[rows.size()];
      for (int i = 0; i < told.length; i++) {
        String cell = rows.get(i).get(place);
        int end = figures.end(cell);
        if (end == 0) {
          return new double[0];
        }
        told[i] = figures.value(cell.substring(0, end));
      }
      return told;
    }

    private LogClock ofFigures(int date, int place, TimeForm form, Sureness sure, String why) {
      guess(form.description(), sure, why);
      return clock(date, -1, place, DateOrder.YEAR_FIRST, form, form.description());
    }

    private LogClock clock(
        int date, int clock, int figure, DateOrder order, TimeForm form, String words) {
      boolean calendar = date >= 0 || (figure >= 0 && form.isCalendar());
      boolean ofDay =
          clock >= 0 || (figure >= 0 && (form.isCalendar() || form == TimeForm.BASIC_CLOCK));
      boolean assumed =
          guesses.stream()
              .anyMatch(g -> g.about().equals("dates") && g.sureness() == Sureness.EVEN);
      return new LogClock(
          date,
          clock,
          figure,
          order,
          form,
          new Timing(words, ofDay, calendar, assumed, false),
          guesses,
          settled,
          open);
    }

    private LogClock counted() {
      boolean every = !Double.isNaN(options.every());
      Timing timing =
          new Timing(
              every ? "none; from row to row as was said" : TimeForm.NONE.description(),
              false,
              false,
              false,
              !every);
      return new LogClock(
          -1, -1, -1, DateOrder.YEAR_FIRST, TimeForm.NONE, timing, guesses, settled, open);
    }

    private void guess(String taken, Sureness sureness, String why) {
      guesses.add(new Guess(ABOUT, taken, sureness, why));
    }

    private String at(int place) {
      return "%s, column %s (%s)".formatted(file, place + 1, columns.get(place).name());
    }

    private String written(int place) {
      return rows.stream()
          .map(row -> row.get(place))
          .filter(cell -> !cell.isEmpty())
          .findFirst()
          .orElse("");
    }
  }

  private LogClock passed() {
    Timing told = new Timing(timing.description(), false, false, false, false);
    return new LogClock(
        dateColumn, clockColumn, figureColumn, dates, form, told, guesses, settled, open);
  }
}

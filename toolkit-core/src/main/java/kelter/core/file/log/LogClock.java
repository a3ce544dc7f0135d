package kelter.core.file.log;

import java.util.List;
import kelter.core.file.log.LogFormat.Column;
import kelter.core.file.log.LogFormat.Guess;
import kelter.core.file.log.LogFormat.Timing;
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

  /** Times that are told as figures. */
  static LogClock ofFigures(int place, TimeForm form, ClockNotes notes) {
    Timing timing =
        new Timing(
            form.description(),
            form.isCalendar() || form == TimeForm.BASIC_CLOCK,
            form.isCalendar(),
            false,
            false);
    return of(-1, -1, place, DateOrder.YEAR_FIRST, form, timing, notes);
  }

  /** Dates, times of day as figures or with signs between them, or both. */
  static LogClock ofDay(
      int date, int clock, int figure, DateOrder dates, TimeForm form, ClockNotes notes) {
    boolean ofDay = clock >= 0 || figure >= 0;
    String day = date < 0 ? "" : dates.words();
    String words = day + (date >= 0 && ofDay ? " and " : "") + (ofDay ? "time of day" : "");
    Timing timing = new Timing(words, ofDay, date >= 0, notes.guessesDates(), false);
    return of(date, clock, figure, dates, form, timing, notes);
  }

  /** Times since a start, with signs between their numbers. */
  static LogClock ofElapsed(int clock, TimeForm form, ClockNotes notes) {
    String words =
        form == TimeForm.MINUTES_SECONDS
            ? form.description()
            : "elapsed, in hours, minutes, seconds";
    Timing timing = new Timing(words, false, false, false, false);
    return of(-1, clock, -1, DateOrder.YEAR_FIRST, form, timing, notes);
  }

  /** No times: rows are counted, or follow each other in an interval that was said. */
  static LogClock counted(boolean interval, ClockNotes notes) {
    String words = interval ? "none; from row to row as was said" : TimeForm.NONE.description();
    Timing timing = new Timing(words, false, false, false, !interval);
    return of(-1, -1, -1, DateOrder.YEAR_FIRST, TimeForm.NONE, timing, notes);
  }

  private static LogClock of(
      int date,
      int clock,
      int figure,
      DateOrder dates,
      TimeForm form,
      Timing timing,
      ClockNotes notes) {
    return new LogClock(
        date, clock, figure, dates, form, timing, notes.guesses(), notes.settled(), notes.open());
  }

  /** The place of the column that tells most of the time, from 0; -1 if there are no times. */
  int place() {
    return Math.max(figureColumn, Math.max(dateColumn, clockColumn));
  }

  /** Whether times of day stand without a date, so that they start again at midnight. */
  boolean startsAgain() {
    return dateColumn < 0 && timing.clock() && !timing.calendar();
  }

  /** Whether a column holds times. */
  boolean isAt(Column column) {
    int place = column.place() - 1;
    return place == dateColumn || place == clockColumn || place == figureColumn;
  }
}

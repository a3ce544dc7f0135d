package kelter.core.file.log;

import java.util.List;
import java.util.Optional;
import kelter.core.file.log.LogFormat.Sureness;
import kelter.core.file.log.cell.CellTime;
import kelter.core.file.log.time.TimeColumns;
import kelter.core.file.log.time.TimeHeading;

/**
 * Dates and times of day that are written with signs between their numbers.
 *
 * @param columns what the columns of the log hold
 * @param named columns whose headings name a time
 * @param said what somebody says of the times
 * @param notes is told what comes up
 */
record SignedTimes(TimeColumns columns, NamedTimes named, LogOptions.Said said, ClockNotes notes) {

  /** The places of the first columns of each kind; -1 where there is none. */
  private record Places(int date, int clock, int pointed) {
    private static final Places NONE = new Places(-1, -1, -1);

    Places with(int place, List<CellTime> times) {
      if (times.stream().allMatch(CellTime::isPointed)) {
        return pointed < 0 ? new Places(date, clock, place) : this;
      }
      if (!times.get(0).hasDate()) {
        return clock < 0 ? new Places(date, place, pointed) : this;
      }
      boolean first = date < 0 && clock < 0;
      return first ? new Places(place, times.get(0).hasClock() ? place : -1, pointed) : this;
    }
  }

  /** The times of the log, in one column if it is named, from 0; -1 if none is. */
  Optional<LogClock> find(int only) {
    Places found = Places.NONE;
    for (int place = 0; place < columns.headings().size(); place++) {
      List<CellTime> times = only < 0 || only == place ? columns.times(place) : List.of();
      found = times.isEmpty() ? found : found.with(place, times);
    }
    int pointed = found.pointed();
    if (pointed >= 0 && found.clock() < 0 && pointedAreClock(pointed, found.date() >= 0)) {
      return Optional.of(
          LogClock.ofDay(
              found.date(), pointed, -1, order(found.date()), TimeForm.POINTED_CLOCK, notes));
    }
    int date = found.date() < 0 ? pointed : found.date();
    if (date >= 0) {
      return Optional.of(dated(date, found.clock()));
    }
    return found.clock() < 0 ? Optional.empty() : Optional.of(undated(found.clock()));
  }

  private boolean isSaid(TimeForm form) {
    return said.time().equals(Optional.of(form));
  }

  /** Whether three numbers between points are hours, minutes and seconds, not a date. */
  private boolean pointedAreClock(int place, boolean dated) {
    if (isSaid(TimeForm.POINTED_CLOCK)) {
      notes.guess("hours, minutes, seconds", Sureness.SAID, "");
      return true;
    }
    List<CellTime> times = columns.times(place);
    if ((said.dates().isPresent() && !dated)
        || times.stream().anyMatch(time -> Double.isNaN(time.pointed()))) {
      return false;
    }
    if (dated
        || (hasOtherThan(DateOrder.DAY_FIRST, times)
            && hasOtherThan(DateOrder.YEAR_FIRST, times))) {
      notes.guess(
          "hours, minutes, seconds between points",
          Sureness.CERTAIN,
          dated ? "the date stands beside" : "they are no dates");
      return true;
    }
    notes.openYet(
        columns.at(place),
        "'%s' may be a date or hours, minutes and seconds".formatted(columns.written(place)),
        "say %s hh.mm.ss, or --dates dmy".formatted(ClockNotes.FLAG));
    return true;
  }

  private static boolean hasOtherThan(DateOrder order, List<CellTime> times) {
    return times.stream().anyMatch(time -> order.days(time).isEmpty());
  }

  private LogClock dated(int date, int clock) {
    DateOrder order = order(date);
    int figure = clock < 0 ? named.clockBeside(date) : -1;
    if (figure >= 0) {
      return LogClock.ofDay(date, -1, figure, order, TimeForm.BASIC_CLOCK, notes);
    }
    if (clock < 0) {
      named.refuseUnknown();
    }
    return LogClock.ofDay(date, clock, -1, order, TimeForm.HOURS_MINUTES, notes);
  }

  private LogClock undated(int clock) {
    TimeForm form = form(clock);
    boolean passed =
        form == TimeForm.MINUTES_SECONDS || columns.headings().get(clock).tellsPassed();
    return passed
        ? LogClock.ofElapsed(clock, form, notes)
        : LogClock.ofDay(-1, clock, -1, DateOrder.YEAR_FIRST, form, notes);
  }

  private DateOrder order(int date) {
    if (date < 0) {
      return DateOrder.YEAR_FIRST;
    }
    List<CellTime> dated = columns.times(date).stream().filter(CellTime::hasDate).toList();
    LogDates dates = LogDates.of(columns.at(date), dated, columns.written(date), said.dates());
    notes.take(dates);
    return dates.order();
  }

  /** Two numbers are hours and minutes or minutes and seconds. */
  private TimeForm form(int place) {
    List<CellTime> times = columns.times(place);
    if (times.stream().noneMatch(CellTime::isShort)) {
      return TimeForm.HOURS_MINUTES;
    }
    if (isSaid(TimeForm.HOURS_MINUTES) || isSaid(TimeForm.MINUTES_SECONDS)) {
      return taken(said.time().get(), Sureness.SAID, "");
    }
    TimeHeading heading = columns.headings().get(place);
    if (heading.tellsMinutesFirst() || heading.tellsHoursFirst()) {
      return taken(
          heading.tellsMinutesFirst() ? TimeForm.MINUTES_SECONDS : TimeForm.HOURS_MINUTES,
          Sureness.CERTAIN,
          "the heading says so");
    }
    return formByCells(place, times);
  }

  private TimeForm formByCells(int place, List<CellTime> times) {
    if (times.stream().anyMatch(CellTime::tellsHalf)) {
      return taken(TimeForm.HOURS_MINUTES, Sureness.CERTAIN, "the half of the day is told");
    }
    if (times.stream().anyMatch(time -> time.isShort() && time.isFractional())) {
      return taken(TimeForm.MINUTES_SECONDS, Sureness.CERTAIN, "parts of a second follow");
    }
    boolean mixed = times.stream().anyMatch(time -> !time.isShort() && time.hasClock());
    if (mixed && times.get(0).isShort() && times.get(0).first() < 60) {
      return taken(
          TimeForm.MINUTES_SECONDS, Sureness.CERTAIN, "hours are put in front when there are some");
    }
    notes.openYet(
        columns.at(place),
        "'%s' may be hours and minutes or minutes and seconds".formatted(columns.written(place)),
        "say %s hh:mm or %s mm:ss".formatted(ClockNotes.FLAG, ClockNotes.FLAG));
    return TimeForm.HOURS_MINUTES;
  }

  private TimeForm taken(TimeForm form, Sureness sure, String why) {
    notes.guess(form.description(), sure, why);
    return form;
  }
}

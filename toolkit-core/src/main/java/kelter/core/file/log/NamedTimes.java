package kelter.core.file.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.file.log.LogFormat.Column;
import kelter.core.file.log.LogFormat.Role;
import kelter.core.file.log.LogFormat.Sureness;
import kelter.core.file.log.time.BasicClock;
import kelter.core.file.log.time.TimeColumns;
import kelter.core.file.log.time.TimeHeading;

/**
 * Columns whose headings name a time: those with figures, which may be times, and those with
 * something else, which nobody understands.
 *
 * @param columns what the columns of the log hold
 * @param values the places of those with figures whose headings name a time
 * @param others the places of the others whose headings name one
 * @param said what somebody says of the times
 * @param notes is told what comes up
 */
record NamedTimes(
    TimeColumns columns,
    List<Integer> values,
    List<Integer> others,
    Optional<TimeForm> said,
    ClockNotes notes) {

  static NamedTimes of(
      TimeColumns columns, List<Column> all, Optional<TimeForm> said, ClockNotes notes) {
    List<Integer> values = new ArrayList<>();
    List<Integer> others = new ArrayList<>();
    for (int place = 0; place < all.size(); place++) {
      if (columns.headings().get(place).namesTime()) {
        Role role = all.get(place).role();
        if (role == Role.VALUE) {
          values.add(place);
        } else if (role == Role.OTHER) {
          others.add(place);
        }
      }
    }
    return new NamedTimes(columns, values, others, said, notes);
  }

  /** The place of a column with hours, minutes and seconds in one figure beside a date; or -1. */
  int clockBeside(int date) {
    for (int place : values) {
      double[] told = columns.told(place);
      if (place != date && told.length > 0 && BasicClock.mayBe(told)) {
        Sureness sure =
            said.equals(Optional.of(TimeForm.BASIC_CLOCK)) ? Sureness.SAID : Sureness.LIKELY;
        notes.guess(TimeForm.BASIC_CLOCK.description(), sure, "the date stands beside");
        return place;
      }
    }
    return -1;
  }

  /** The first column with figures that are times. */
  Optional<LogClock> find() {
    for (int place : values) {
      double[] told = columns.told(place);
      if (told.length > 0 && mayBeTimes(columns.headings().get(place), told)) {
        return Optional.of(clock(place, told));
      }
    }
    return Optional.empty();
  }

  /** A column t without a unit may hold a temperature; times never fall. */
  private static boolean mayBeTimes(TimeHeading heading, double[] told) {
    return !heading.hasOtherUnit()
        && !heading.mayBeTemperature()
        && (!heading.isLetter() || rises(told));
  }

  private static boolean rises(double[] told) {
    for (int i = 1; i < told.length; i++) {
      if (told[i] <= told[i - 1]) {
        return false;
      }
    }
    return true;
  }

  private LogClock clock(int place, double[] told) {
    if (said.isPresent()) {
      return taken(place, said.get(), Sureness.SAID, "");
    }
    Optional<TimeForm> unit = columns.headings().get(place).unitCode().flatMap(TimeForm::of);
    return unit.isPresent() ? ofUnit(place, unit.get(), told) : withoutUnit(place, told);
  }

  private LogClock ofUnit(int place, TimeForm unit, double[] told) {
    TimeForm dated = unit.dated(told[0]);
    Sureness sure = dated == unit ? Sureness.CERTAIN : Sureness.LIKELY;
    return taken(place, dated, sure, "the heading says the unit");
  }

  private LogClock withoutUnit(int place, double[] told) {
    Optional<TimeForm> calendar = calendar(columns.headings().get(place), told[0]);
    if (calendar.isPresent()) {
      String why = "so they fall between 2001 and 2099";
      return taken(place, calendar.get(), Sureness.LIKELY, why);
    }
    if (BasicClock.mayBe(told) && BasicClock.skipsSixty(told)) {
      String why = "59 is followed by the next minute";
      return taken(place, TimeForm.BASIC_CLOCK, Sureness.LIKELY, why);
    }
    String flag = ClockNotes.FLAG;
    notes.open(
        columns.at(place),
        "'%s' is a time without a unit".formatted(columns.written(place)),
        "say for instance %s s, %s ms or %s min; known are %s"
            .formatted(flag, flag, flag, TimeForm.words()));
    return taken(place, TimeForm.SECONDS, Sureness.EVEN, "");
  }

  /** What counts from a day of the calendar, if a figure falls into our time so. */
  private static Optional<TimeForm> calendar(TimeHeading heading, double first) {
    List<TimeForm> units = new ArrayList<>();
    units.addAll(List.of(TimeForm.SECONDS, TimeForm.MILLISECONDS, TimeForm.MICROSECONDS));
    if (heading.tellsDay()) {
      units.add(TimeForm.DAYS);
    }
    return units.stream().map(unit -> unit.dated(first)).filter(TimeForm::isCalendar).findFirst();
  }

  /** The figures of a column, taken as times of a form. */
  LogClock taken(int place, TimeForm form, Sureness sure, String why) {
    notes.guess(form.description(), sure, why);
    return LogClock.ofFigures(place, form, notes);
  }

  /** A column that is called a time and holds none that is understood is no reason to count. */
  void refuseUnknown() {
    for (int place : others) {
      String written = columns.written(place);
      if (!written.isEmpty() && columns.times(place).isEmpty()) {
        notes.open(
            columns.at(place),
            "'%s' is not understood as a time".formatted(written),
            "times are written for instance 2026-10-23 14:03:05 or 14:03:05; to count rows"
                + " instead, say %s none".formatted(ClockNotes.FLAG));
      }
    }
  }
}

package kelter.core.file.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import kelter.core.file.log.LogFormat.Guess;
import kelter.core.file.log.LogFormat.Sureness;
import kelter.core.file.log.cell.CellTime;
import kelter.core.problem.Problem;

/**
 * In which order the dates of a log are written.
 *
 * @param order the order
 * @param guess how sure that is
 * @param open what must be said first, if anything
 */
record LogDates(DateOrder order, Guess guess, Optional<Problem> open) {

  private static final String ABOUT = "dates";

  /**
   * Makes out the order.
   *
   * @param where the column of the dates
   * @param dates dates in the order of the rows, one or more
   * @param written the first of them as it is written
   * @param said the order, if somebody said it
   */
  static LogDates of(String where, List<CellTime> dates, String written, Optional<DateOrder> said) {
    if (said.isPresent()) {
      return taken(said.get(), Sureness.SAID, "");
    }
    if (dates.stream().allMatch(CellTime::namesMonth)) {
      return taken(DateOrder.YEAR_FIRST, Sureness.CERTAIN, "months have names");
    }
    List<DateOrder> orders = possible(dates);
    if (orders.size() == 1) {
      return taken(orders.get(0), Sureness.CERTAIN, "no other order gives days of the calendar");
    }
    List<DateOrder> forwards =
        orders.stream().filter(order -> goesForwards(days(dates, order))).toList();
    if (forwards.size() == 1) {
      return taken(forwards.get(0), Sureness.LIKELY, "in any other order the days go backwards");
    }
    List<DateOrder> left = forwards.isEmpty() ? orders : forwards;
    boolean same =
        left.stream().map(order -> fromFirst(days(dates, order))).distinct().count() == 1;
    DateOrder usual = usual(left, dates);
    if (same) {
      String others =
          String.join(
              " or ",
              left.stream()
                  .filter(each -> each != usual)
                  .map(each -> "--dates " + each.code())
                  .toList());
      return taken(usual, Sureness.EVEN, "else say " + others);
    }
    boolean points = dates.stream().allMatch(CellTime::hasPoints);
    if (points && !left.contains(DateOrder.YEAR_FIRST)) {
      return taken(DateOrder.DAY_FIRST, Sureness.LIKELY, "points stand between the numbers");
    }
    String flags =
        String.join(" or ", left.stream().map(each -> "--dates " + each.code()).toList());
    return new LogDates(
        usual,
        new Guess(ABOUT, usual.words(), Sureness.EVEN, ""),
        Optional.of(
            new Problem(
                where,
                "'%s' may be %s"
                    .formatted(
                        written, String.join(" or ", left.stream().map(DateOrder::words).toList())),
                "say " + flags)));
  }

  private static LogDates taken(DateOrder order, Sureness sureness, String why) {
    return new LogDates(order, new Guess(ABOUT, order.words(), sureness, why), Optional.empty());
  }

  /** Whether no further row can say otherwise. */
  boolean settled() {
    return guess.sureness() == Sureness.CERTAIN || guess.sureness() == Sureness.SAID;
  }

  /** The orders in which the most of the dates are days. */
  private static List<DateOrder> possible(List<CellTime> dates) {
    List<DateOrder> best = new ArrayList<>();
    long most = 0;
    for (DateOrder order : DateOrder.values()) {
      long fit = days(dates, order).stream().filter(OptionalLong::isPresent).count();
      if (fit > most) {
        best.clear();
        most = fit;
      }
      if (fit == most) {
        best.add(order);
      }
    }
    return best;
  }

  private static List<OptionalLong> days(List<CellTime> dates, DateOrder order) {
    return dates.stream().map(order::days).toList();
  }

  private static boolean goesForwards(List<OptionalLong> days) {
    long last = Long.MIN_VALUE;
    for (OptionalLong day : days) {
      if (day.isPresent()) {
        if (day.getAsLong() < last) {
          return false;
        }
        last = day.getAsLong();
      }
    }
    return true;
  }

  private static List<Long> fromFirst(List<OptionalLong> days) {
    long first = days.get(0).orElse(0);
    return days.stream().map(day -> day.orElse(first) - first).toList();
  }

  /** Where the day has two halves, the month is written first; common practice, no source. */
  private static DateOrder usual(List<DateOrder> orders, List<CellTime> dates) {
    boolean halves = dates.stream().anyMatch(CellTime::tellsHalf);
    DateOrder usual = halves ? DateOrder.MONTH_FIRST : DateOrder.DAY_FIRST;
    return orders.contains(usual) ? usual : orders.get(0);
  }
}

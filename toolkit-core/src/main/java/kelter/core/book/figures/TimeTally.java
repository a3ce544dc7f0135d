package kelter.core.book.figures;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import kelter.core.book.BookEntry;
import kelter.core.book.ReadingTaken;
import kelter.core.book.WorkDone;
import kelter.core.book.figures.TimeShare.Sort;

/** Which minutes went into what. */
final class TimeTally {

  private static final String MEASURING = "measuring";
  private static final String RENEWING = "renewing";
  private static final String OTHER = "other work";

  private final Map<Into, Sums> into = new TreeMap<>();
  private int jobs;
  private double minutes;
  private double squares;

  private record Into(Sort sort, String what) implements Comparable<Into> {
    @Override
    public int compareTo(Into other) {
      int bySort = sort.compareTo(other.sort);
      return bySort == 0 ? what.compareTo(other.what) : bySort;
    }
  }

  /** Of jobs: how often, the minutes, their squares, and their products with all of the job. */
  private static final class Sums {
    private int times;
    private double minutes;
    private double squares;
    private double products;
  }

  void add(BookEntry entry) {
    Map<Into, Double> own = new HashMap<>();
    for (WorkDone work : entry.work()) {
      String doing = work.renews() ? RENEWING : OTHER;
      add(own, new Into(Sort.DOING, doing), new Into(Sort.WORK, work.key()), work.minutes());
    }
    for (ReadingTaken reading : entry.readings()) {
      Into each = new Into(Sort.READING, reading.key());
      add(own, new Into(Sort.DOING, MEASURING), each, reading.minutes());
    }
    double all = 0;
    for (Map.Entry<Into, Double> each : own.entrySet()) {
      all += each.getKey().sort() == Sort.DOING ? each.getValue() : 0;
    }
    if (all > 0) {
      jobs++;
      minutes += all;
      squares += all * all;
      for (Map.Entry<Into, Double> each : own.entrySet()) {
        Sums sums = into.get(each.getKey());
        sums.minutes += each.getValue();
        sums.squares += each.getValue() * each.getValue();
        sums.products += each.getValue() * all;
      }
    }
  }

  private void add(Map<Into, Double> own, Into doing, Into one, OptionalDouble took) {
    if (took.orElse(0) > 0) {
      for (Into each : List.of(doing, one)) {
        own.merge(each, took.getAsDouble(), Double::sum);
        into.computeIfAbsent(each, any -> new Sums()).times++;
      }
    }
  }

  List<TimeShare> shares() {
    List<TimeShare> shares = new ArrayList<>();
    into.forEach((each, sums) -> shares.add(share(each, sums)));
    shares.sort(
        Comparator.comparing(TimeShare::sort)
            .thenComparingDouble(each -> -each.minutes())
            .thenComparing(TimeShare::what));
    return shares;
  }

  private TimeShare share(Into each, Sums sums) {
    double share = sums.minutes / minutes;
    return new TimeShare(
        each.what(), each.sort(), sums.times, sums.minutes, share, interval(sums, share));
  }

  private Optional<Interval> interval(Sums sums, double share) {
    if (jobs < TimeShare.LEAST_JOBS) {
      return Optional.empty();
    }
    double residuals = sums.squares - 2 * share * sums.products + share * share * squares;
    double variance = jobs / (jobs - 1.0) * Math.max(0, residuals) / (minutes * minutes);
    double half = Interval.TWO_SIDED_95 * Math.sqrt(variance);
    return Optional.of(new Interval(Math.max(0, share - half), Math.min(1, share + half)));
  }
}

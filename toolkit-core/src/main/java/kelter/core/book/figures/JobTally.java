package kelter.core.book.figures;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import kelter.core.book.BookEntry;

/** How long jobs took and what they brought, of all and by kind. */
final class JobTally {

  private static final double MINUTES_PER_HOUR = 60;
  private static final double HALF = 0.5;
  private static final double MOST = 0.95;
  private static final double FEW = 0.05;

  private final Purse purse;
  private final Map<String, Figures> minutes = new TreeMap<>();
  private final Map<String, Figures> brought = new TreeMap<>();

  JobTally(Purse purse) {
    this.purse = purse;
  }

  void add(BookEntry entry) {
    OptionalDouble took = Minutes.of(entry);
    if (took.isEmpty()) {
      return;
    }
    add(minutes, entry, took.getAsDouble());
    OptionalDouble left = purse.brought(entry);
    if (left.isPresent()) {
      add(brought, entry, left.getAsDouble() / took.getAsDouble() * MINUTES_PER_HOUR);
    }
  }

  private static void add(Map<String, Figures> to, BookEntry entry, double figure) {
    to.computeIfAbsent("", any -> new Figures()).add(figure);
    to.computeIfAbsent(entry.machine().kind(), any -> new Figures()).add(figure);
  }

  List<JobTimes> times() {
    List<JobTimes> times = new ArrayList<>();
    minutes.forEach((kind, each) -> times.add(times(kind, each)));
    times.sort(
        Comparator.comparingInt((JobTimes each) -> -each.jobs()).thenComparing(JobTimes::kind));
    return times;
  }

  private JobTimes times(String kind, Figures took) {
    double[] all = enough(took);
    double[] paid = enough(brought.getOrDefault(kind, new Figures()));
    return new JobTimes(
        kind,
        took.number(),
        Quantile.of(all, HALF),
        Quantile.of(all, MOST),
        Quantile.of(paid, HALF),
        Quantile.of(paid, FEW));
  }

  private static double[] enough(Figures figures) {
    return figures.number() < JobTimes.LEAST_JOBS ? new double[0] : figures.all();
  }
}

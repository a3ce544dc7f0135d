package kelter.core.book.figures;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import kelter.core.book.BookEntry;
import kelter.core.book.ConfirmedCause;
import kelter.core.book.Outcome;

/** The jobs on machines of one model. A call-back counts as no failure of its own. */
final class ModelTally {

  private static final double DAYS_PER_YEAR = 365.25;

  private final String kind;
  private final String model;
  private final Map<String, LocalDate> mended = new HashMap<>();
  private final Map<Double, Double> failed = new TreeMap<>();
  private final Map<String, Integer> causes = new TreeMap<>();
  private int jobs;
  private int withCause;

  ModelTally(BookEntry first) {
    this.kind = first.machine().kind();
    this.model = (first.machine().maker() + " " + first.machine().model()).strip();
  }

  void add(BookEntry entry) {
    jobs++;
    withCause += entry.causes().isEmpty() ? 0 : 1;
    for (ConfirmedCause cause : entry.causes()) {
      causes.merge(cause.key(), 1, Integer::sum);
    }
    String serial = entry.machine().serial();
    if (serial.isEmpty() || entry.callBackOf().isPresent()) {
      return;
    }
    LocalDate before = mended.put(serial, entry.closed());
    if (before == null) {
      return;
    }
    LocalDate called = entry.called().filter(day -> day.isAfter(before)).orElse(entry.closed());
    double years = years(before, called);
    if (entry.outcome() == Outcome.NOTHING_WRONG) {
      mended.put(serial, before);
    } else if (years > 0) {
      failed.merge(years, 1.0, Double::sum);
    }
  }

  int jobs() {
    return jobs;
  }

  ModelRecord told(LocalDate asOf) {
    Map<Double, Double> lasted = new TreeMap<>();
    for (LocalDate since : mended.values()) {
      double years = years(since, asOf);
      if (years > 0) {
        lasted.merge(years, 1.0, Double::sum);
      }
    }
    Again again = new Again(failed, lasted);
    Optional<Map.Entry<String, Integer>> most =
        causes.entrySet().stream()
            .max(
                Map.Entry.<String, Integer>comparingByValue()
                    .thenComparing(Map.Entry.comparingByKey(Comparator.reverseOrder())));
    return new ModelRecord(
        kind,
        model,
        jobs,
        mended.size(),
        most.map(Map.Entry::getKey),
        new Share(most.map(Map.Entry::getValue).orElse(0), withCause),
        again.failures(),
        again.lasted(),
        again.running(),
        again.life());
  }

  private static double years(LocalDate from, LocalDate to) {
    return ChronoUnit.DAYS.between(from, to) / DAYS_PER_YEAR;
  }

  /** The models with enough jobs, the most jobs first. */
  static List<ModelRecord> told(Iterable<ModelTally> all, LocalDate asOf) {
    List<ModelRecord> records = new ArrayList<>();
    for (ModelTally each : all) {
      if (each.jobs() >= ModelRecord.LEAST_JOBS) {
        records.add(each.told(asOf));
      }
    }
    records.sort(
        Comparator.comparingInt((ModelRecord each) -> -each.jobs())
            .thenComparing(ModelRecord::kind)
            .thenComparing(ModelRecord::model));
    return records;
  }
}

package kelter.core.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import kelter.core.file.log.Log;
import kelter.core.file.log.LogFile;
import kelter.core.file.log.LogOptions;
import kelter.core.file.log.LogSpan;
import kelter.core.log.Series;
import kelter.core.log.SteadyRule;
import kelter.core.log.change.ChangeSearch;
import kelter.core.log.change.LevelChange;
import kelter.core.log.measurement.Change;
import kelter.core.log.measurement.LogReport;
import kelter.core.log.measurement.Stretch;

/**
 * How many changes are told in logs of machines of which it is known whether something happened:
 * comparisons of two stretches, and the list of changes.
 *
 * <p>A log with a column {@value #LABEL} (1 where a fault was made, else 0) is healthy up to the
 * first 1: the two halves of that part are compared for false changes, and the whole of it with the
 * last three quarters of the labelled part for true ones. A log without that column is taken as
 * healthy all through, and cut into stretches: the first half of each is compared with what
 * follows. In the list every change counts that ends before the first label, or any change in a
 * healthy stretch.
 *
 * <p>It was run on SKAB (github.com/waico/SKAB, GPL-3.0: pump rig, 34 labelled logs and one healthy
 * one), on always-on appliances of tracebase (github.com/areinhardt/tracebase, ODbL: power at 1
 * Hz), and on the run without a fault of the Tennessee Eastman process
 * (github.com/camaramm/tennessee-eastman-profBraatz, simulated plant).
 */
public final class LogChanges {

  private static final String LABEL = "anomaly";
  private static final Set<String> LABELS = Set.of(LABEL, "changepoint");
  private static final int STRETCH = 1150;

  /** Rows that are left out on either side of a label, which is not exact. */
  private static final int MARGIN = 15;

  private final Count comparisons = new Count("columns compared that are healthy");
  private final Count families = new Count("comparisons of all columns that are healthy");
  private final Count listed = new Count("healthy stretches with a change in the list");
  private final Count detected = new Count("faulty logs with a change by comparison");
  private final Count detectedInList = new Count("faulty logs with a change in the list");
  private int falseInList;

  private LogChanges() {}

  /** How many of how many. */
  private static final class Count {

    private final String what;
    private int hits;
    private int all;

    Count(String what) {
      this.what = what;
    }

    void add(boolean hit) {
      all++;
      hits += hit ? 1 : 0;
    }

    void print() {
      if (all > 0) {
        System.out.printf("%5d of %5d (%.1f %%)  %s%n", hits, all, 100.0 * hits / all, what);
      }
    }
  }

  /**
   * Runs and prints.
   *
   * @param arguments a folder with logs, which are looked for in folders within it too; then the
   *     rows of a stretch of a healthy log, {@value #STRETCH} where none is given
   * @throws IOException if the folder cannot be read
   */
  public static void main(String[] arguments) throws IOException {
    int rows = arguments.length > 1 ? Integer.parseInt(arguments[1]) : STRETCH;
    LogChanges trial = new LogChanges();
    try (Stream<Path> files = Files.walk(Path.of(arguments[0]))) {
      files
          .filter(file -> file.toString().endsWith(".csv"))
          .sorted()
          .forEach(file -> trial.look(file, rows));
    }
    for (Count count :
        List.of(
            trial.comparisons,
            trial.families,
            trial.listed,
            trial.detected,
            trial.detectedInList)) {
      count.print();
    }
    System.out.printf("%5d changes in the lists of healthy stretches%n", trial.falseInList);
  }

  private void look(Path file, int rows) {
    Log log = LogFile.read(file, LogOptions.NONE, LogFile.Progress.NONE);
    Optional<Integer> label = column(log, LABEL);
    if (label.isPresent()) {
      labelled(file, log, label.get());
    } else {
      healthy(file, log, rows);
    }
  }

  private static Optional<Integer> column(Log log, String name) {
    for (int i = 0; i < log.format().values().size(); i++) {
      if (log.format().values().get(i).name().equals(name)) {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }

  private void labelled(Path file, Log log, int label) {
    Series labels = log.recording().column(label);
    double[] marks = labels.means();
    int from = 0;
    while (from < marks.length && marks[from] == 0) {
      from++;
    }
    int to = marks.length;
    while (to > from && marks[to - 1] == 0) {
      to--;
    }
    LogSpan whole = span(labels, 0, from - MARGIN);
    LogSpan first = span(labels, 0, from / 2 - MARGIN);
    LogSpan second = span(labels, from / 2 + MARGIN, from - MARGIN);
    LogSpan faulty = span(labels, from + (to - from) / 4, to);
    LogReport report = report(file, List.of(whole, first, second, faulty));
    compared(report, first, second);
    List<String> changed = changed(report, whole, faulty);
    detected.add(!changed.isEmpty());
    List<String> early = new ArrayList<>();
    List<String> late = new ArrayList<>();
    for (LogReport.ColumnStep each : report.steps()) {
      String name = report.column(each.column()).name();
      if (!LABELS.contains(name)) {
        boolean before = each.step().endRow() < labels.firstRow(from - MARGIN);
        (before ? early : late).add(words(name, each.step()));
      }
    }
    detectedInList.add(!late.isEmpty());
    healthyList(early.size());
    System.out.printf("%s%n  changed: %s%n  listed: %s%n", file, changed, late);
    if (!early.isEmpty()) {
      System.out.println("  listed before the fault: " + early);
    }
  }

  private void healthy(Path file, Log log, int rows) {
    Series times = log.recording().column(0);
    double step = log.recording().spacing().usual();
    int stretches = (int) (log.recording().lastTime() / step / rows);
    List<LogSpan> spans = new ArrayList<>();
    for (int i = 0; i < stretches; i++) {
      double start = i * rows * step;
      double length = rows * step;
      spans.add(span(start, start + 0.48 * length));
      spans.add(span(start + 0.52 * length, start + 0.87 * length));
      spans.add(span(start, start + length - step / 2));
    }
    LogReport report = report(file, spans);
    for (int i = 0; i < spans.size(); i += 3) {
      compared(report, spans.get(i), spans.get(i + 1));
      Log.Stretch stretch = report.log().spans().get(i + 2);
      listed(report, stretch);
    }
    System.out.printf("%s: %d rows, %d stretches%n", file, times.count(), stretches);
  }

  private void listed(LogReport report, Log.Stretch stretch) {
    List<Double> resolutions = new ArrayList<>();
    for (int i = 0; i < stretch.columns().size(); i++) {
      resolutions.add(report.resolution(i));
    }
    List<List<LevelChange>> found = ChangeSearch.in(stretch.columns(), List.of(), resolutions);
    int count = 0;
    for (int i = 0; i < found.size(); i++) {
      for (LevelChange change : found.get(i)) {
        System.out.println("  listed: " + words(report.column(i).name(), change));
        count++;
      }
    }
    healthyList(count);
  }

  private void healthyList(int count) {
    listed.add(count > 0);
    falseInList += count;
  }

  private void compared(LogReport report, LogSpan before, LogSpan after) {
    List<String> changed = changed(report, before, after);
    families.add(!changed.isEmpty());
    int columns = 0;
    for (int i = 0; i < report.log().format().values().size(); i++) {
      columns += LABELS.contains(report.column(i).name()) ? 0 : 1;
    }
    for (int i = 0; i < columns; i++) {
      comparisons.add(i < changed.size());
    }
    if (!changed.isEmpty()) {
      System.out.println("  healthy, but changed: " + changed);
    }
  }

  private static List<String> changed(LogReport report, LogSpan before, LogSpan after) {
    Stretch first = Stretch.of(before.text(), report);
    List<String> changed = new ArrayList<>();
    for (Change each : Change.of(first, Stretch.of(after.text(), report), first, report)) {
      String name = report.column(each.column()).name();
      if (each.seen() && !LABELS.contains(name)) {
        changed.add(
            "%s %+.3g (u %.2g, chance %.1g)"
                .formatted(
                    name,
                    each.comparison().difference(),
                    each.comparison().uncertainty(),
                    each.comparison().chance()));
      }
    }
    return changed;
  }

  private static String words(String name, LevelChange change) {
    return "%s %s %+.3g in row %d, %.0f s"
        .formatted(
            name,
            change.gradual() ? "ramp" : "step",
            change.comparison().difference(),
            change.row(),
            change.seconds());
  }

  private static LogSpan span(Series series, int from, int to) {
    return span(series.from(from), series.to(to - 1));
  }

  private static LogSpan span(double from, double to) {
    return LogSpan.parse("%.3fs..%.3fs".formatted(from, to));
  }

  private static LogReport report(Path file, List<LogSpan> spans) {
    LogOptions options =
        new LogOptions(
            Optional.empty(), Optional.empty(), Double.NaN, spans, LogOptions.Said.NOTHING);
    Log log = LogFile.read(file, options, LogFile.Progress.NONE);
    return LogReport.of(file.getFileName().toString(), log, SteadyRule.USUAL);
  }
}

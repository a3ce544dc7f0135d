package kelter.cli.text;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import kelter.cli.terminal.Plot;
import kelter.cli.terminal.Terminal;
import kelter.core.file.log.Log;
import kelter.core.file.log.LogFormat;
import kelter.core.log.EffectiveObservations;
import kelter.core.log.ModifiedZScore;
import kelter.core.log.Quantisation;
import kelter.core.log.Recording;
import kelter.core.log.Spacing;
import kelter.core.log.SteadyRule;
import kelter.core.log.Window;
import kelter.core.log.change.ChangeSearch;
import kelter.core.log.change.FalseDiscovery;
import kelter.core.log.change.LevelChange;
import kelter.core.log.change.LocalLevel;
import kelter.core.log.measurement.Change;
import kelter.core.log.measurement.LogReading;
import kelter.core.log.measurement.LogReport;
import kelter.core.log.measurement.ReadAs;
import kelter.core.log.measurement.Stretch;
import kelter.core.quantity.QuantityFormat;
import kelter.core.source.Source;

/** What an instrument log shows, for a person. */
public final class ReadingsText {

  private static final int GAPS = 5;
  private static final int OUTLIERS = 5;
  private static final int STEPS = 12;
  private static final int PLOTS = 8;
  private static final int PLOT_WIDTH = 60;
  private static final int SECONDS_PER_DAY = 86_400;

  private final LogReport report;
  private final LogFormat format;
  private final Recording recording;
  private final Terminal terminal;
  private final Layout layout;

  private ReadingsText(LogReport report, Terminal terminal) {
    this.report = report;
    this.format = report.log().format();
    this.recording = report.log().recording();
    this.terminal = terminal;
    this.layout = new Layout(terminal);
  }

  /**
   * Writes what a log shows.
   *
   * @param report what it shows
   * @param maps how columns are read that were said to hold something
   * @param stretches stretches that were asked for by their ends or numbers
   * @param changes what changed between two stretches, may be empty
   * @param readings readings of a job, may be empty
   * @param outcome what was done with them, sentences
   * @param terminal where it will be shown
   * @return the text, with a line end after the last line
   */
  public static String of(
      LogReport report,
      List<ReadAs> maps,
      List<Stretch> stretches,
      List<Change> changes,
      List<LogReading> readings,
      List<String> outcome,
      Terminal terminal) {
    ReadingsText text = new ReadingsText(report, terminal);
    text.recognised();
    text.columns();
    text.windows();
    text.steps();
    text.stretches(stretches);
    text.changes(changes);
    text.maps(maps);
    text.readings(readings, outcome);
    text.notes();
    return text.layout.toString();
  }

  private void recognised() {
    layout.heading("Log " + report.name());
    layout.hanging(
        "  Read as:  ",
        "%s%s, columns between %s, decimal %s, %s"
            .formatted(
                format.encoding(),
                format.encodingAssumed() ? " (a guess: it is not UTF-8)" : "",
                delimiter(format.delimiter()),
                format.decimalComma() ? "comma" : "point",
                format.headerRow() == 0 ? "no headings" : "headings in row " + format.headerRow()));
    double usual = recording.spacing().usual();
    layout.hanging(
        "  Times:    ",
        format.timing().description()
            + "; "
            + start()
            + length(recording.lastTime())
            + ", a row every "
            + duration(usual));
    long repeated = recording.spacing().repeated();
    layout.hanging(
        "  Rows:     ",
        "%s from row %s%s"
            .formatted(
                recording.rows(),
                format.firstRow(),
                repeated > 0 ? "; %s have the time of the row above".formatted(repeated) : ""));
    guesses();
    leftOut();
    gaps();
    others();
  }

  /** What was made out, and how sure it is. */
  private void guesses() {
    for (LogFormat.Guess guess : format.guesses()) {
      String why = guess.why().isEmpty() ? "" : ": " + guess.why();
      String told = guess.taken() + " (" + guess.sureness().words() + why + ")";
      boolean sure =
          guess.sureness() == LogFormat.Sureness.CERTAIN
              || guess.sureness() == LogFormat.Sureness.SAID;
      String label = guess.about().equals("decimals") ? "  Decimals: " : "  Told by:  ";
      layout.hanging(
          guess.about().equals("dates") ? "  Dates:    " : label,
          sure ? told : terminal.attention(told));
    }
  }

  private void leftOut() {
    Log.LeftOut left = report.log().leftOut();
    if (left.headings() > 0) {
      layout.hanging(
          "  Left out: ",
          "the headings, which stand there %s times more".formatted(left.headings()));
    }
    if (left.footerRows() > 0) {
      layout.hanging(
          "  Left out: ",
          terminal.attention(
              "%s %s of other text at the end: '%s'"
                  .formatted(
                      left.footerRows(), left.footerRows() == 1 ? "row" : "rows", left.footer())));
    }
  }

  private static String delimiter(char delimiter) {
    return delimiter == '\t' ? "tabs" : "'" + delimiter + "'";
  }

  private String start() {
    double start = report.log().start();
    if (format.timing().calendar()) {
      return "from " + LocalDateTime.ofInstant(instant(start), ZoneOffset.UTC) + ", ";
    }
    return format.timing().clock() ? "from " + clock(start) + ", " : "";
  }

  private static Instant instant(double seconds) {
    return Instant.ofEpochMilli(Math.round(seconds * 1000)).truncatedTo(ChronoUnit.SECONDS);
  }

  private static String clock(double seconds) {
    long ofDay = Math.floorMod(Math.round(seconds), SECONDS_PER_DAY);
    return "%s:%s:%s".formatted(two(ofDay / 3600), two(ofDay / 60 % 60), two(ofDay % 60));
  }

  private static String two(long value) {
    return value < 10 ? "0" + value : String.valueOf(value);
  }

  private String length(double seconds) {
    return (format.timing().counted() ? "" : "for ") + duration(seconds);
  }

  /** A length of time; of a log without times a number of rows. */
  private String duration(double seconds) {
    if (format.timing().counted()) {
      return QuantityFormat.plain(seconds) + "\u00a0rows";
    }
    if (seconds < 120) {
      return QuantityFormat.plain(seconds) + "\u00a0s";
    }
    return seconds < 7200
        ? QuantityFormat.plain(seconds / 60) + "\u00a0min"
        : QuantityFormat.plain(seconds / 3600) + "\u00a0h";
  }

  /** A time after the start of the log. */
  private String after(double seconds) {
    if (format.timing().counted()) {
      return QuantityFormat.plain(seconds);
    }
    if (format.timing().clock() && recording.lastTime() < SECONDS_PER_DAY) {
      return clock(report.log().start() + seconds);
    }
    if (format.timing().calendar()) {
      return DateTimeFormatter.ISO_LOCAL_DATE_TIME.format(
          LocalDateTime.ofInstant(instant(report.log().start() + seconds), ZoneOffset.UTC));
    }
    long whole = Math.round(seconds);
    return whole < 3600
        ? whole / 60 + ":" + two(whole % 60)
        : whole / 3600 + ":" + two(whole / 60 % 60) + ":" + two(whole % 60);
  }

  private void gaps() {
    if (report.gaps().isEmpty()) {
      return;
    }
    String longest =
        report.gaps().stream()
            .sorted((a, b) -> Double.compare(b.seconds(), a.seconds()))
            .limit(GAPS)
            .map(
                gap ->
                    "%s after row %s (%s)"
                        .formatted(duration(gap.seconds()), gap.row(), after(gap.time())))
            .collect(Collectors.joining(", "));
    String count = report.gaps().size() + (report.gaps().size() == Spacing.GAPS ? " or more" : "");
    layout.hanging("  Gaps:     ", terminal.attention(count + ", the longest: " + longest));
  }

  private void others() {
    String others =
        format.columns().stream()
            .filter(column -> column.role() == LogFormat.Role.OTHER)
            .map(LogFormat.Column::name)
            .collect(Collectors.joining(", "));
    if (!others.isEmpty()) {
      layout.hanging("  Not read: ", others);
    }
  }

  private void columns() {
    int places = format.values().size();
    for (int column = 0; column < places; column++) {
      layout.heading(title(column));
      long missing = recording.missing(column);
      if (missing > 0) {
        layout.hanging(
            "  ", "No value in %s %s.".formatted(missing, missing == 1 ? "row" : "rows"));
      }
      if (report.resolution(column) > report.log().resolutions().get(column)) {
        layout.hanging(
            "  ",
            "Told in steps of %s%s."
                .formatted(QuantityFormat.plain(report.resolution(column)), unit(column)));
      }
      long over = recording.overRange(column).count();
      overRange("  ", over, recording.rows(), "");
      if (column < PLOTS && recording.column(column).count() > 0) {
        Plot.lines(recording.column(column).outline(PLOT_WIDTH), rail(column))
            .forEach(layout::asIs);
      }
    }
  }

  private void overRange(String before, long over, long rows, String tail) {
    if (over > 0) {
      layout.hanging(
          before, terminal.attention("Over range in %s of %s rows%s.".formatted(over, rows, tail)));
    }
  }

  /** Rows over range beside a window, whose figures are those of the other rows. */
  private void overRange(double from, double to, int column, long samples) {
    long over = report.overRange(from, to, column);
    overRange("     ", over, over + samples, ": the figures are those of the others");
  }

  /** Under each part of the time the last digit of the number of the window that it lies in. */
  private String rail(int column) {
    char[] rail = new char[PLOT_WIDTH];
    Arrays.fill(rail, '.');
    double length = recording.lastTime();
    for (LogReport.Numbered numbered : report.windows()) {
      if (numbered.column() == column) {
        int from = part(numbered.steady().window().from(), length);
        int to = part(numbered.steady().window().to(), length);
        Arrays.fill(rail, from, to + 1, (char) ('0' + numbered.number() % 10));
      }
    }
    return new String(rail);
  }

  private static int part(double time, double length) {
    return length == 0 ? 0 : (int) Math.min(PLOT_WIDTH - 1, PLOT_WIDTH * time / length);
  }

  private String title(int column) {
    LogFormat.Column known = report.column(column);
    return known.name() + (known.unit().isEmpty() ? "" : " in " + known.unit());
  }

  private String unit(int column) {
    String unit = report.column(column).unit();
    return unit.isEmpty() ? "" : "\u00a0" + unit;
  }

  private void windows() {
    layout.heading("Steady windows");
    if (report.windows().isEmpty()) {
      layout.hanging("  ", "No column stands still anywhere.");
    }
    for (LogReport.Numbered numbered : report.windows()) {
      Window window = numbered.steady().window();
      String unit = unit(numbered.column());
      layout.hanging(
          "  %s. ".formatted(numbered.number()),
          "%s, %s to %s (%s), rows %s to %s: %s"
              .formatted(
                  report.column(numbered.column()).name(),
                  after(window.from()),
                  after(window.to()),
                  duration(window.seconds()),
                  window.firstRow(),
                  window.lastRow(),
                  value(window, unit)));
      layout.hanging("     ", figures(window, unit) + band(numbered.steady(), unit));
      outliers(numbered.steady(), unit);
      overRange(window.from(), window.to(), numbered.column(), window.samples());
    }
    long perBlock = recording.column(0).perBlock();
    if (perBlock > 1) {
      layout.hanging(
          "  ",
          "The log is long: windows are found to %s rows. Name a stretch with --window to look closer."
              .formatted(perBlock));
    }
  }

  private static String value(Window window, String unit) {
    return nonBreaking(QuantityFormat.withUncertainty(window.mean(), window.uncertainty())) + unit;
  }

  private static String nonBreaking(String text) {
    return text.replace(' ', '\u00a0');
  }

  private String figures(Window window, String unit) {
    String per = format.timing().counted() ? "" : "/min";
    double factor = format.timing().counted() ? 1 : 60;
    return "sd %s%s, %s samples worth %s (r1 %s), trend %s%s%s"
        .formatted(
            QuantityFormat.plain(window.standardDeviation()),
            unit,
            window.samples(),
            (long) window.effective(),
            QuantityFormat.fixed(window.autocorrelation(), 2),
            nonBreaking(
                QuantityFormat.withUncertainty(
                    window.slope() * factor, window.slopeUncertainty() * factor)),
            unit,
            per);
  }

  private static String band(SteadyRule.Steady steady, String unit) {
    return ", within ± " + QuantityFormat.plain(steady.band()) + unit;
  }

  private void outliers(SteadyRule.Steady steady, String unit) {
    if (steady.outliers().isEmpty()) {
      return;
    }
    String told =
        steady.outliers().stream()
            .limit(OUTLIERS)
            .map(
                each ->
                    "%s%s in row %s"
                        .formatted(QuantityFormat.plain(each.value()), unit, each.row()))
            .collect(Collectors.joining(", "));
    int count = steady.outliers().size();
    String more = count > OUTLIERS ? ", and %s more".formatted(count - OUTLIERS) : "";
    layout.hanging("     ", terminal.attention("Outliers, left in: " + told + more));
  }

  private void steps() {
    if (report.steps().isEmpty()) {
      return;
    }
    layout.heading("Changes");
    List<LogReport.ColumnStep> steps = report.steps();
    for (LogReport.ColumnStep each : steps.subList(0, Math.min(STEPS, steps.size()))) {
      layout.hanging("  ", step(each));
    }
    if (steps.size() > STEPS) {
      layout.hanging("  ", "and %s more".formatted(steps.size() - STEPS));
    }
  }

  private String step(LogReport.ColumnStep each) {
    LevelChange step = each.step();
    String levels =
        "%s from %s to %s%s"
            .formatted(
                report.column(each.column()).name(),
                QuantityFormat.plain(step.comparison().before()),
                QuantityFormat.plain(step.comparison().after()),
                unit(each.column()));
    return step.gradual()
        ? "%s, gradually from %s to %s (%s, rows %s to %s)"
            .formatted(
                levels,
                after(step.time()),
                after(step.time() + step.seconds()),
                duration(step.seconds()),
                step.row(),
                step.endRow())
        : "%s at %s, within %s (row %s)"
            .formatted(levels, after(step.time()), duration(step.seconds()), step.row());
  }

  private void stretches(List<Stretch> stretches) {
    for (Stretch stretch : stretches) {
      layout.heading(
          "Over " + stretch.words() + ", " + after(stretch.from()) + " to " + after(stretch.to()));
      for (int column = 0; column < format.values().size(); column++) {
        String name = report.column(column).name() + ": ";
        String unit = unit(column);
        Optional<Window> window = report.over(stretch, column);
        if (window.isPresent()) {
          layout.hanging("  ", name + value(window.get(), unit));
          layout.hanging("     ", figures(window.get(), unit));
        } else {
          layout.hanging("  ", name + "fewer than two samples");
        }
        long samples = recording.column(column).count(stretch.from(), stretch.to());
        overRange(stretch.from(), stretch.to(), column, samples);
      }
    }
  }

  private void changes(List<Change> changes) {
    if (changes.isEmpty()) {
      return;
    }
    layout.heading(
        "From " + changes.get(0).before().words() + " to " + changes.get(0).after().words());
    for (Change change : changes) {
      double d = change.comparison().difference();
      double u = change.comparison().uncertainty();
      layout.hanging(
          "  ",
          "%s: from %s to %s%s, a change of %s%s: %s"
              .formatted(
                  report.column(change.column()).name(),
                  QuantityFormat.plain(change.first().mean()),
                  QuantityFormat.plain(change.second().mean()),
                  unit(change.column()),
                  nonBreaking(QuantityFormat.withUncertainty(d, u)),
                  unit(change.column()),
                  change.seen()
                      ? "more than scatter and drift explain"
                      : "within scatter and drift"));
      for (Stretch each : List.of(change.before(), change.after())) {
        long over = report.overRange(each.from(), each.to(), change.column());
        long samples = recording.column(change.column()).count(each.from(), each.to());
        overRange("     ", over, over + samples, " of " + each.words());
      }
    }
    layout.hanging(
        "  ",
        "The uncertainty is that of scatter, of drift as %s shows it, and of the steps of the figures. An error of the instrument that stays the same drops out. Of all columns that are told as changed, 5 %% at most are so by chance."
            .formatted(changes.get(0).healthy().words()));
  }

  private void maps(List<ReadAs> maps) {
    if (!maps.isEmpty()) {
      layout.heading("Columns read as");
    }
    for (ReadAs map : maps) {
      layout.hanging(
          "  ",
          "%s in %s: %s, %s%s"
              .formatted(
                  report.column(map.mapped().column()).name(),
                  map.unit().symbol(),
                  map.mapped().what().target(),
                  map.trend() ? "the trend of " : "",
                  QuantityFormat.withArticle(map.kind().name())));
    }
  }

  private void readings(List<LogReading> readings, List<String> outcome) {
    if (!readings.isEmpty()) {
      layout.heading("Readings");
    }
    for (LogReading reading : readings) {
      layout.hanging(
          "  ",
          "%s %s: %s%s, %s of %s"
              .formatted(
                  reading.component(),
                  reading.observable(),
                  nonBreaking(reading.quantity().display()),
                  conditions(reading),
                  reading.trend() ? "trend" : "mean",
                  reading.stretch().words()));
      layout.hanging(
          "     ",
          "standard uncertainties: "
              + reading.parts().words("an ordinary instrument, since none is named,"));
    }
    outcome.forEach(sentence -> layout.hanging("  ", sentence));
  }

  private static String conditions(LogReading reading) {
    String stated =
        reading.conditions().entrySet().stream()
            .map(each -> each.getKey() + " " + nonBreaking(each.getValue().display()))
            .collect(Collectors.joining(", "));
    return stated.isEmpty() ? "" : " (at " + stated + ")";
  }

  private void notes() {
    layout.heading("To bear in mind");
    layout.hanging(
        "  - ",
        "± is the standard uncertainty times 2. In a window it is that of the scatter alone (type A).");
    layout.hanging("  - ", "Samples worth: " + EffectiveObservations.SOURCE.display() + ".");
    layout.hanging("  - ", "Outliers: " + ModifiedZScore.SOURCE.display() + ".");
    layout.hanging("  - ", "Steady: " + SteadyRule.SOURCE.display() + ".");
    layout.hanging("  - ", "Steps of the figures: " + Quantisation.SOURCE.display() + ".");
    layout.hanging("  - ", "Drift: " + LocalLevel.SOURCE.display() + ".");
    for (Source source : ChangeSearch.SOURCES) {
      layout.hanging("  - ", "Changes: " + source.display() + ".");
    }
    layout.hanging("  - ", "Which of them count: " + FalseDiscovery.SOURCE.display() + ".");
  }
}

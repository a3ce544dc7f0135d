package kelter.cli.json;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToLongFunction;
import kelter.cli.json.output.JsonOutput;
import kelter.cli.json.output.JsonResult;
import kelter.core.file.log.LogFormat;
import kelter.core.log.EffectiveObservations;
import kelter.core.log.ModifiedZScore;
import kelter.core.log.Quantisation;
import kelter.core.log.Recording;
import kelter.core.log.SteadyRule;
import kelter.core.log.Window;
import kelter.core.log.change.ChangeSearch;
import kelter.core.log.change.FalseDiscovery;
import kelter.core.log.change.LocalLevel;
import kelter.core.log.measurement.Change;
import kelter.core.log.measurement.LogReading;
import kelter.core.log.measurement.LogReport;
import kelter.core.log.measurement.ReadAs;
import kelter.core.log.measurement.Stretch;
import kelter.core.source.Source;

/** What an instrument log shows, as JSON. */
public final class ReadingsJson {

  private ReadingsJson() {}

  /**
   * Writes what a log shows.
   *
   * @param report what it shows
   * @param maps how columns are read that were said to hold something
   * @param stretches stretches that were asked for
   * @param changes what changed between two stretches, may be empty
   * @param readings readings of a job, may be empty
   * @param outcome what was done with them, sentences
   * @return the result
   */
  public static JsonResult of(
      LogReport report,
      List<ReadAs> maps,
      List<Stretch> stretches,
      List<Change> changes,
      List<LogReading> readings,
      List<String> outcome) {
    return new JsonResult(
        ResultFormat.READINGS.id(),
        out -> {
          out.text("log", report.name());
          out.object("recognised", () -> recognised(out, report));
          out.objects(
              "columns", report.log().format().columns(), column -> column(out, report, column));
          out.objects(
              "gaps",
              report.gaps(),
              gap -> {
                out.number("row", gap.row());
                out.number("time", gap.time());
                out.number("seconds", gap.seconds());
              });
          out.objects("windows", report.windows(), window -> numbered(out, report, window));
          out.objects("steps", report.steps(), step -> step(out, report, step));
          out.objects("stretches", stretches, stretch -> stretch(out, report, stretch));
          out.objects("changes", changes, change -> change(out, report, change));
          out.objects("maps", maps, map -> map(out, report, map));
          out.objects("readings", readings, reading -> reading(out, reading));
          out.texts("outcome", outcome);
          out.sources(sources());
        });
  }

  private static List<Source> sources() {
    List<Source> sources =
        new ArrayList<>(
            List.of(
                EffectiveObservations.SOURCE,
                ModifiedZScore.SOURCE,
                SteadyRule.SOURCE,
                Quantisation.SOURCE,
                LocalLevel.SOURCE));
    sources.addAll(ChangeSearch.SOURCES);
    sources.add(FalseDiscovery.SOURCE);
    return sources;
  }

  private static void recognised(JsonOutput out, LogReport report) throws IOException {
    LogFormat format = report.log().format();
    Recording recording = report.log().recording();
    out.text("encoding", format.encoding());
    out.bool("encoding-assumed", format.encodingAssumed());
    out.text("delimiter", String.valueOf(format.delimiter()));
    out.text("decimal", format.decimalComma() ? "," : ".");
    out.number("header-row", format.headerRow());
    out.number("first-row", format.firstRow());
    out.text("times", format.timing().description());
    out.bool("day-assumed-first", format.timing().assumed());
    out.bool("counted", format.timing().counted());
    out.number("start", report.log().start());
    out.number("seconds", recording.lastTime());
    out.number("usual-step", recording.spacing().usual());
    out.number("rows", recording.rows());
    out.number("repeated-times", recording.spacing().repeated());
    out.number("repeated-headings", report.log().leftOut().headings());
    out.number("footer-rows", report.log().leftOut().footerRows());
    out.objects(
        "guesses",
        format.guesses(),
        guess -> {
          out.text("about", guess.about());
          out.text("taken", guess.taken());
          out.text(
              "sureness",
              switch (guess.sureness()) {
                case SAID -> "said";
                case CERTAIN -> "certain";
                case LIKELY -> "likely";
                case EVEN -> "even";
              });
          out.text("why", guess.why());
        });
  }

  private static void column(JsonOutput out, LogReport report, LogFormat.Column column)
      throws IOException {
    out.number("place", column.place());
    out.text("name", column.name());
    out.text("heading", column.heading());
    out.text("unit", column.unit());
    out.text(
        "holds",
        switch (column.role()) {
          case TIME -> "time";
          case VALUE -> "figures";
          case UNIT -> "units";
          case OTHER -> "other";
        });
    int value = report.log().format().values().indexOf(column);
    if (value >= 0) {
      out.number("resolution", report.resolution(value));
      out.number("missing", report.log().recording().missing(value));
      out.number("over-range", report.log().recording().overRange(value).count());
    }
  }

  private static void numbered(JsonOutput out, LogReport report, LogReport.Numbered numbered)
      throws IOException {
    out.number("number", numbered.number());
    out.text("column", report.column(numbered.column()).name());
    out.number("band", numbered.steady().band());
    window(out, numbered.steady().window());
    overRange(out, report, numbered.steady().window(), numbered.column());
    out.objects(
        "outliers",
        numbered.steady().outliers(),
        outlier -> {
          out.number("row", outlier.row());
          out.number("time", outlier.time());
          out.number("value", outlier.value());
          out.number("score", outlier.score());
        });
  }

  private static void overRange(JsonOutput out, LogReport report, Window window, int column)
      throws IOException {
    out.number("over-range", report.overRange(window.from(), window.to(), column));
  }

  private static void window(JsonOutput out, Window window) throws IOException {
    out.number("first-row", window.firstRow());
    out.number("last-row", window.lastRow());
    out.number("from", window.from());
    out.number("to", window.to());
    out.number("samples", window.samples());
    out.number("mean", window.mean());
    out.number("sd", window.standardDeviation());
    out.number("least", window.least());
    out.number("most", window.most());
    out.number("autocorrelation", window.autocorrelation());
    out.number("effective", window.effective());
    out.number("u", window.uncertainty());
    out.number("slope", window.slope());
    out.number("slope-u", window.slopeUncertainty());
  }

  private static void step(JsonOutput out, LogReport report, LogReport.ColumnStep each)
      throws IOException {
    out.text("column", report.column(each.column()).name());
    out.number("row", each.step().row());
    out.number("time", each.step().time());
    out.number("seconds", each.step().seconds());
    out.number("end-row", each.step().endRow());
    out.bool("gradual", each.step().gradual());
    out.number("before", each.step().comparison().before());
    out.number("after", each.step().comparison().after());
    out.number("u", each.step().comparison().uncertainty());
    out.number("chance", each.step().comparison().chance());
  }

  private static void stretch(JsonOutput out, LogReport report, Stretch stretch)
      throws IOException {
    out.text("words", stretch.words());
    out.number("from", stretch.from());
    out.number("to", stretch.to());
    List<LogFormat.Column> values = report.log().format().values();
    ToLongFunction<LogFormat.Column> over =
        column -> report.overRange(stretch.from(), stretch.to(), values.indexOf(column));
    Function<LogFormat.Column, Optional<Window>> window =
        column -> report.over(stretch, values.indexOf(column));
    out.objects(
        "columns",
        values.stream().filter(column -> window.apply(column).isPresent()).toList(),
        column -> {
          out.text("column", column.name());
          window(out, window.apply(column).orElseThrow());
          out.number("over-range", over.applyAsLong(column));
        });
    out.objects(
        "over-range",
        values.stream().filter(column -> over.applyAsLong(column) > 0).toList(),
        column -> {
          out.text("column", column.name());
          out.number("rows", over.applyAsLong(column));
        });
  }

  private static void change(JsonOutput out, LogReport report, Change change) throws IOException {
    out.text("column", report.column(change.column()).name());
    out.text("before", change.before().words());
    out.text("after", change.after().words());
    out.number("difference", change.comparison().difference());
    out.number("u", change.comparison().uncertainty());
    out.number("degrees-of-freedom", change.comparison().degreesOfFreedom());
    out.text("lead-in", change.healthy().words());
    out.number("chance", change.comparison().chance());
    out.bool("changed", change.seen());
  }

  private static void map(JsonOutput out, LogReport report, ReadAs map) throws IOException {
    out.text("column", report.column(map.mapped().column()).name());
    out.text("unit", map.unit().code());
    out.text("target", map.mapped().what().target());
    out.text("kind", map.kind().name());
    out.bool("trend", map.trend());
  }

  private static void reading(JsonOutput out, LogReading reading) throws IOException {
    out.text("component", reading.component());
    out.text("observable", reading.observable());
    out.number("value", reading.quantity().value());
    out.text("unit", reading.quantity().unit().code());
    out.number("u", reading.quantity().standardUncertainty());
    out.object(
        "uncertainty",
        () -> {
          out.number("scatter", reading.parts().scatter());
          out.number("instrument", reading.parts().instrument());
          out.bool("instrument-assumed", reading.parts().assumed());
          out.number("rounding", reading.parts().rounding());
        });
    out.bool("trend", reading.trend());
    out.conditions(reading.conditions());
    out.text("stretch", reading.stretch().words());
    out.number("first-row", reading.window().firstRow());
    out.number("last-row", reading.window().lastRow());
  }
}

package kelter.cli.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import kelter.cli.text.Figures;
import kelter.core.book.figures.CallBacks;
import kelter.core.book.figures.FirstCures;
import kelter.core.book.figures.Interval;
import kelter.core.book.figures.JobTimes;
import kelter.core.book.figures.ModelRecord;
import kelter.core.book.figures.Quantile;
import kelter.core.book.figures.Share;
import kelter.core.book.figures.ShopFigures;
import kelter.core.book.figures.Spare;
import kelter.core.book.figures.TimeShare;
import kelter.core.catalogue.Kind;
import kelter.core.catalogue.Kinds;
import kelter.core.quantity.QuantityFormat;

/** What a shop asks its book, as drawings: the most telling rows of each table. */
final class BookDrawings {

  private static final int MOST = 10;
  private static final int MOST_LINES = 4;
  private static final int LONGEST_NAME = 34;
  private static final double PERCENT = 100;

  private final ShopFigures figures;
  private final Kinds kinds;
  private final UnaryOperator<String> words;

  /**
   * A drawing with what is said of it.
   *
   * @param caption what it shows
   * @param svg the drawing
   */
  record Drawing(String caption, String svg) {}

  BookDrawings(ShopFigures figures, Kinds kinds, UnaryOperator<String> words) {
    this.figures = figures;
    this.kinds = kinds;
    this.words = words;
  }

  /** The drawing that belongs to a table; empty where it has nothing to draw. */
  Optional<Drawing> of(String table) {
    return switch (table) {
      case "spares" -> intervals(table, "Uses a year; bars: 95 % of the long run.", spares());
      case "hour" -> intervals(table, "Minutes of the median job; bars: 95 %.", times());
      case "reserve" -> intervals(table, "Cured jobs that came back, %; bars: 95 %.", callBacks());
      case "first" -> intervals(table, "Cured by the first job, %; bars: 95 %.", firstCures());
      case "time" -> intervals(table, "Share of all minutes, %; bars: 95 %.", time());
      case "models" -> running();
      default -> Optional.empty();
    };
  }

  private static Optional<Drawing> intervals(
      String id, String caption, List<IntervalsDrawing.Row> rows) {
    return rows.isEmpty()
        ? Optional.empty()
        : Optional.of(new Drawing(caption, IntervalsDrawing.of(id, caption, rows)));
  }

  private String kind(String id) {
    return id.isEmpty() ? "all machines" : kinds.kind(id).map(Kind::title).orElse(id);
  }

  private IntervalsDrawing.Row row(String name, String told, double value, Interval interval) {
    return new IntervalsDrawing.Row(shortened(name), told, value, interval.low(), interval.high());
  }

  private IntervalsDrawing.Row share(String name, Share share) {
    return row(
        name,
        Figures.percent(share.rate()) + " of " + share.of(),
        PERCENT * share.rate(),
        share.interval().times(PERCENT));
  }

  private String shortened(String name) {
    String harmless = words.apply(name);
    return harmless.codePointCount(0, harmless.length()) <= LONGEST_NAME
        ? harmless
        : harmless.substring(0, harmless.offsetByCodePoints(0, LONGEST_NAME - 1)) + "\u2026";
  }

  private List<IntervalsDrawing.Row> spares() {
    List<IntervalsDrawing.Row> rows = new ArrayList<>();
    for (Spare each : figures.spares()) {
      if (each.carry().isPresent() && rows.size() < MOST) {
        String told =
            QuantityFormat.fixed(each.demand().rate(), 1)
                + " a year, carry "
                + each.carry().getAsInt();
        rows.add(row(each.key(), told, each.demand().rate(), each.demand().interval()));
      }
    }
    return rows;
  }

  private List<IntervalsDrawing.Row> times() {
    List<IntervalsDrawing.Row> rows = new ArrayList<>();
    for (JobTimes each : figures.times()) {
      Optional<Quantile> median = each.median().filter(told -> told.high().isPresent());
      if (median.isPresent() && rows.size() < MOST) {
        Quantile told = median.get();
        rows.add(
            row(
                kind(each.kind()),
                QuantityFormat.fixed(told.value(), 0) + " min, " + each.jobs() + " jobs",
                told.value(),
                new Interval(told.low().orElse(0), told.high().getAsDouble())));
      }
    }
    return rows;
  }

  private List<IntervalsDrawing.Row> callBacks() {
    return figures.callBacks().stream()
        .filter(CallBacks::isTold)
        .limit(MOST)
        .map(each -> share(kind(each.kind()), each.share()))
        .toList();
  }

  private List<IntervalsDrawing.Row> firstCures() {
    return figures.firstCures().stream()
        .filter(FirstCures::isTold)
        .limit(MOST)
        .map(each -> share(kind(each.kind()), each.share()))
        .toList();
  }

  private List<IntervalsDrawing.Row> time() {
    List<IntervalsDrawing.Row> rows = new ArrayList<>();
    for (TimeShare each : figures.time()) {
      if (each.interval().isPresent() && rows.size() < MOST) {
        String name = each.sort() == TimeShare.Sort.DOING ? "all " + each.what() : each.what();
        rows.add(
            row(
                name,
                Figures.percent(each.share()),
                PERCENT * each.share(),
                each.interval().get().times(PERCENT)));
      }
    }
    return rows;
  }

  /** The models that failed most. */
  private Optional<Drawing> running() {
    List<ModelRecord> shown =
        figures.models().stream()
            .filter(each -> each.life().isPresent() && !each.running().isEmpty())
            .sorted(Comparator.comparingInt((ModelRecord each) -> -each.failures()))
            .limit(MOST_LINES)
            .toList();
    if (shown.isEmpty()) {
      return Optional.empty();
    }
    List<LinesDrawing.Line> lines = new ArrayList<>();
    StringBuilder names = new StringBuilder();
    for (ModelRecord each : shown) {
      String letter = String.valueOf((char) ('A' + lines.size()));
      lines.add(line(letter, each));
      names.append("; ").append(letter).append(": ").append(shortened(each.model()));
      names.append(", ").append(kind(each.kind()));
    }
    String caption =
        "Share of machines that still run after a job (Kaplan-Meier), of the models that failed most"
            + names
            + ".";
    return Optional.of(
        new Drawing(
            caption,
            LinesDrawing.of(
                new LinesDrawing.About(
                    "models",
                    "Machines that still run",
                    caption,
                    "years since the job",
                    "share, %"),
                lines,
                List.of())));
  }

  private static LinesDrawing.Line line(String name, ModelRecord model) {
    int points = model.running().size() + 1;
    double[] x = new double[points];
    double[] y = new double[points];
    y[0] = PERCENT;
    for (int i = 1; i < points; i++) {
      x[i] = model.running().get(i - 1).years();
      y[i] = PERCENT * model.running().get(i - 1).share();
    }
    return new LinesDrawing.Line(name, x, y);
  }
}

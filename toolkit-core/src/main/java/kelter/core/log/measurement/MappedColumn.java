package kelter.core.log.measurement;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.job.Instrument;
import kelter.core.log.Window;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.QuantityParser;
import kelter.core.quantity.Unit;
import kelter.core.shop.LogColumn;
import kelter.core.uncertainty.ErrorModel;
import kelter.core.vocabulary.Observable;

/**
 * A column of a log that holds an observable, or whose trend is one, and what it is worth.
 *
 * @param report what the log shows
 * @param mapped the column and what it holds
 * @param observable the observable
 * @param unit the unit of the column
 * @param kind what the column holds; of a trend its sum
 * @param trend whether the observable is the trend of the column
 */
record MappedColumn(
    LogReport report,
    ColumnMaps.Mapped mapped,
    Observable observable,
    Unit unit,
    QuantityKind kind,
    boolean trend) {

  /** What the trend of a kind of quantity is a reading of. */
  private static final Map<QuantityKind, QuantityKind> TRENDS =
      Map.of(
          QuantityKind.HEATING_RATE, QuantityKind.TEMPERATURE,
          QuantityKind.FLOW, QuantityKind.VOLUME,
          QuantityKind.POWER, QuantityKind.ENERGY);

  /** Below this scatter a condition is told to four decimal places. */
  private static final double LEAST_SCATTER = 0.01;

  /**
   * Makes out in which unit a column holds an observable; its trend is what is read if only that is
   * of the kind.
   *
   * @throws IllegalArgumentException if its unit is not known or does not fit
   */
  static MappedColumn of(ColumnMaps.Mapped mapped, Observable observable, LogReport report) {
    QuantityKind kind = observable.kind();
    Optional<QuantityKind> sum =
        TRENDS.entrySet().stream()
            .filter(trend -> trend.getKey().accepts(kind.unit()))
            .map(Map.Entry::getValue)
            .findFirst();
    if (sum.isPresent()) {
      try {
        Unit unit = QuantityParser.unit(unitText(mapped, report), sum.get());
        return new MappedColumn(report, mapped, observable, unit, sum.get(), true);
      } catch (IllegalArgumentException notATrend) {
        // Then the column holds the rate itself.
      }
    }
    Unit unit = unit(mapped, kind, report);
    return new MappedColumn(report, mapped, observable, unit, kind, false);
  }

  /**
   * The unit as the log writes it, else as the map says it.
   *
   * @throws IllegalArgumentException if both tell one and they differ
   */
  private static String unitText(ColumnMaps.Mapped mapped, LogReport report) {
    String told = report.column(mapped.column()).unit();
    String said = mapped.what().unit().orElse(told);
    List<Unit> known = QuantityParser.units(told);
    boolean same =
        QuantityParser.units(said).stream()
            .anyMatch(unit -> known.stream().anyMatch(other -> isSame(unit, other)));
    if (!said.equals(told) && !known.isEmpty() && !same) {
      String name = report.column(mapped.column()).name();
      throw new IllegalArgumentException(
          ("the log has '%s' in %s, the map in %s; take [%s] out of the map, or say --units"
                  + " '%s=%s' if the log is wrong")
              .formatted(name, told, said, said, name, said));
    }
    return said;
  }

  private static boolean isSame(Unit one, Unit other) {
    return one.isCompatibleWith(other)
        && one.factor() == other.factor()
        && one.shift() == other.shift();
  }

  /**
   * The unit of a column that holds a kind of quantity.
   *
   * @throws IllegalArgumentException if it is not told, not known or does not fit
   */
  static Unit unit(ColumnMaps.Mapped mapped, QuantityKind kind, LogReport report) {
    String text = unitText(mapped, report);
    if (text.isEmpty()) {
      String name = report.column(mapped.column()).name();
      throw new IllegalArgumentException(
          "the log tells no unit of '%s'; say it, for instance --units '%s=%s'"
              .formatted(name, name, kind.unit().code()));
    }
    return QuantityParser.unit(text, kind);
  }

  LogColumn what() {
    return mapped.what();
  }

  private String name() {
    return report.column(mapped.column()).name();
  }

  /**
   * The stretches to read: those that were named, else the one in which the column stands still.
   *
   * @throws IllegalArgumentException if none was named and there is not one
   */
  List<Stretch> stretches(List<Stretch> named) {
    if (!named.isEmpty()) {
      return named;
    }
    if (trend) {
      throw new IllegalArgumentException(
          "is the trend of a column; name a stretch of time, for instance --window 5min..10min");
    }
    List<LogReport.Numbered> own =
        report.windows().stream().filter(each -> each.column() == mapped.column()).toList();
    if (own.isEmpty() && report.log().recording().column(mapped.column()).count() == 0) {
      throw new IllegalArgumentException(
          "'%s' has no figure in the whole log; if the instrument showed OL, write a reading of OL into the job"
              .formatted(name()));
    }
    if (own.isEmpty()) {
      throw new IllegalArgumentException(
          "'%s' stands still nowhere; name a stretch of time, for instance --window 5min..10min"
              .formatted(name()));
    }
    int first = own.get(0).number();
    if (own.size() > 1) {
      throw new IllegalArgumentException(
          "'%s' has %s steady windows, %s to %s; name one, for instance --window %s"
              .formatted(name(), own.size(), first, own.get(own.size() - 1).number(), first));
    }
    return List.of(Stretch.of(own.get(0)));
  }

  /**
   * The column over a stretch.
   *
   * @throws IllegalArgumentException if it is over range there
   */
  Optional<Window> over(Stretch stretch) {
    return over(stretch, mapped.column(), report);
  }

  /**
   * A break that comes and goes shows as rows over range, which a mean of the others would hide.
   */
  private static Optional<Window> over(Stretch stretch, int column, LogReport report) {
    long over = report.overRange(stretch.from(), stretch.to(), column);
    if (over > 0) {
      throw new IllegalArgumentException(
          ("'%s' is over range in %s %s of %s, which the mean of the others would hide; name a"
                  + " stretch without them, for instance --window 5min..10min, or write a reading"
                  + " of OL into the job")
              .formatted(
                  report.column(column).name(), over, over == 1 ? "row" : "rows", stretch.words()));
    }
    return report.over(stretch, column);
  }

  /** A value of the column in the coherent SI unit. */
  double si(double value) {
    return kind.toSi(value, unit);
  }

  /** What the column shows over a stretch, with the range of the instrument if it is known. */
  LogReading reading(
      Stretch stretch,
      Window window,
      Optional<Instrument.Function> range,
      Map<String, Quantity> conditions) {
    Unit told = trend ? observable.kind().unit() : unit;
    double factor = unit.factor() / told.factor();
    double value = trend ? window.slope() * factor : window.mean();
    LogReading.Parts parts =
        new LogReading.Parts(
            trend ? window.slopeUncertainty() * factor : window.uncertainty(),
            ofInstrument(range, window, observable.kind().toSi(value, told)) / told.factor(),
            range.isEmpty(),
            trend ? 0 : rounding(range));
    return new LogReading(
        what().component(),
        observable.id(),
        new Quantity(value, parts.combined(), told, observable.kind()),
        trend,
        conditions,
        what().instrument(),
        parts,
        stretch,
        window);
  }

  private double ofInstrument(Optional<Instrument.Function> range, Window window, double si) {
    if (range.isEmpty()) {
      return observable.procedure().typical().standardUncertainty(si);
    }
    ErrorModel error = range.get().error();
    return trend ? ofTrend(error, window) : error.standardUncertainty(si);
  }

  /**
   * Of a trend only the part of the error is left that changes with the reading: from the least to
   * the greatest value of the window, by the unit of the reading.
   */
  private double ofTrend(ErrorModel error, Window window) {
    double least = si(window.least());
    double most = si(window.most());
    if (most == least) {
      return 0;
    }
    double change = Math.abs(error.standardUncertainty(most) - error.standardUncertainty(least));
    return change / (most - least) * Math.abs(window.slope()) * unit.factor();
  }

  /**
   * JCGM 100:2008, F.2.2.1: a digit of size d stands for d / sqrt(12). The digit is that of the
   * instrument if it is told, else the step that the samples show.
   */
  private double rounding(Optional<Instrument.Function> range) {
    double told = range.map(Instrument.Function::resolution).orElse(0.0) / unit.factor();
    double written = report.log().resolutions().get(mapped.column());
    double shown = told > 0 ? Math.max(written, told) : report.resolution(mapped.column());
    return shown / Math.sqrt(12);
  }

  /**
   * The mean of a column that holds a condition, to a hundredth of its scatter, so that it can be
   * read.
   *
   * @throws IllegalArgumentException if its unit is not known or does not fit, or it is over range
   */
  static Optional<Quantity> condition(
      ColumnMaps.Mapped mapped, QuantityKind kind, LogReport report, Stretch stretch) {
    Unit unit = unit(mapped, kind, report);
    return over(stretch, mapped.column(), report)
        .map(window -> new Quantity(rounded(window), 0, unit, kind));
  }

  private static double rounded(Window window) {
    double scatter = Math.max(window.standardDeviation(), LEAST_SCATTER);
    int places = Math.max(0, 2 - (int) Math.floor(Math.log10(scatter)));
    return new BigDecimal(window.mean()).setScale(places, RoundingMode.HALF_EVEN).doubleValue();
  }
}

package kelter.cli.readings;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kelter.core.instrument.InstrumentLibrary;
import kelter.core.job.Component;
import kelter.core.job.Instrument;
import kelter.core.job.Job;
import kelter.core.log.Window;
import kelter.core.problem.InputException;
import kelter.core.problem.Problem;
import kelter.core.quantity.Nearest;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityFormat;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.QuantityParser;
import kelter.core.quantity.Unit;
import kelter.core.uncertainty.ErrorModel;
import kelter.core.vocabulary.Characteristic;
import kelter.core.vocabulary.Observable;
import kelter.core.vocabulary.Vocabulary;

/** Makes readings of a job out of the columns of a log. */
public final class LogReader {

  /** What the trend of a kind of quantity is a reading of. */
  private static final Map<QuantityKind, QuantityKind> TRENDS =
      Map.of(
          QuantityKind.HEATING_RATE, QuantityKind.TEMPERATURE,
          QuantityKind.FLOW, QuantityKind.VOLUME,
          QuantityKind.POWER, QuantityKind.ENERGY);

  /** Below this scatter a condition is told to four decimal places. */
  private static final double LEAST_SCATTER = 0.01;

  private final Job job;
  private final Vocabulary vocabulary;
  private final List<Instrument> shop;
  private final LogReport report;
  private final Map<String, String> stated;
  private final Set<String> used = new HashSet<>();
  private final List<Problem> problems = new ArrayList<>();

  private LogReader(
      Job job,
      Vocabulary vocabulary,
      List<Instrument> shop,
      LogReport report,
      Map<String, String> stated) {
    this.stated = stated;
    this.job = job;
    this.vocabulary = vocabulary;
    this.shop = shop;
    this.report = report;
  }

  /**
   * Makes the readings.
   *
   * @param job the job, for its components and instruments
   * @param vocabulary the words that a job may use
   * @param shop the instruments of the shop
   * @param report what the log shows
   * @param maps what its columns hold
   * @param stretches the stretches that were named; if none was, the one steady window of a column
   * @param stated conditions that were stated, {@code name=value}
   * @return the readings, in the order of the maps and of the stretches
   * @throws InputException with everything that cannot be used
   */
  public static List<LogReading> readings(
      Job job,
      Vocabulary vocabulary,
      List<Instrument> shop,
      LogReport report,
      ColumnMaps maps,
      List<Stretch> stretches,
      List<String> stated) {
    LogReader reader = new LogReader(job, vocabulary, shop, report, stated(stated));
    List<LogReading> readings = new ArrayList<>();
    for (ColumnMaps.Mapped mapped : maps.all()) {
      if (mapped.what().condition().isEmpty()) {
        reader.take(mapped, maps, stretches, maps.given().contains(mapped), readings);
      }
    }
    for (String word : reader.stated.keySet()) {
      if (!reader.used.contains(word) && reader.problems.isEmpty()) {
        reader.problems.add(new Problem(word, "is a condition of none of the readings", ""));
      }
    }
    if (!reader.problems.isEmpty()) {
      throw new InputException(reader.problems);
    }
    return readings;
  }

  private void take(
      ColumnMaps.Mapped mapped,
      ColumnMaps maps,
      List<Stretch> stretches,
      boolean said,
      List<LogReading> readings) {
    String target = mapped.what().target();
    Optional<Component> component = job.appliance().component(mapped.what().component());
    if (component.isEmpty() && !said) {
      return;
    }
    try {
      Observable observable = observable(mapped, component);
      Column column = column(mapped, observable);
      for (Stretch stretch : stretches(mapped, column, stretches)) {
        refuseOverRange(stretch, mapped.column());
        Window window =
            report
                .over(stretch, mapped.column())
                .orElseThrow(
                    () ->
                        new IllegalArgumentException(
                            "there are fewer than two samples in " + stretch.words()));
        readings.add(reading(mapped, observable, column, stretch, window, maps));
      }
    } catch (IllegalArgumentException unusable) {
      problems.add(new Problem(target, unusable.getMessage(), ""));
    }
  }

  /**
   * A break that comes and goes shows as rows over range, which a mean of the others would hide.
   */
  private void refuseOverRange(Stretch stretch, int column) {
    long over = report.overRange(stretch.from(), stretch.to(), column);
    if (over > 0) {
      throw new IllegalArgumentException(
          ("'%s' is over range in %d %s of %s, which the mean of the others would hide; name a"
                  + " stretch without them, for instance --window 5min..10min, or write a reading"
                  + " of OL into the job")
              .formatted(
                  report.column(column).name(), over, over == 1 ? "row" : "rows", stretch.words()));
    }
  }

  private Observable observable(ColumnMaps.Mapped mapped, Optional<Component> component) {
    String id = mapped.what().component();
    List<String> ids = job.appliance().components().stream().map(Component::id).toList();
    Component known =
        component.orElseThrow(
            () ->
                new IllegalArgumentException(
                    "the job has no component '%s'%s".formatted(id, near(id, ids))));
    List<Observable> observables =
        vocabulary.kind(known.kind()).map(kind -> kind.observables()).orElse(List.of());
    String word = mapped.what().observable();
    Observable observable =
        observables.stream()
            .filter(each -> each.id().equals(word))
            .findFirst()
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "%s has no observable '%s'%s"
                            .formatted(
                                QuantityFormat.withArticle(known.kind()),
                                word,
                                near(word, observables.stream().map(Observable::id).toList()))));
    if (observable.type() != Observable.Type.QUANTITY) {
      throw new IllegalArgumentException("'" + word + "' is not a figure");
    }
    return observable;
  }

  private static String near(String word, List<String> known) {
    return Nearest.of(word, known)
        .map(found -> "; did you mean '" + found + "'?")
        .orElse("; known: " + String.join(", ", known));
  }

  /** The unit and the kind of a column; its trend is what is read if only that is of the kind. */
  private record Column(Unit unit, QuantityKind kind, boolean trend) {}

  private Column column(ColumnMaps.Mapped mapped, Observable observable) {
    String text = unitText(mapped);
    QuantityKind kind = observable.kind();
    QuantityKind of =
        TRENDS.entrySet().stream()
            .filter(trend -> trend.getKey().accepts(kind.unit()))
            .map(Map.Entry::getValue)
            .findFirst()
            .orElse(null);
    if (of != null) {
      try {
        return new Column(QuantityParser.unit(text, of), of, true);
      } catch (IllegalArgumentException notATrend) {
        // Then the column holds the rate itself.
      }
    }
    return new Column(unit(text, kind, mapped), kind, false);
  }

  private String unitText(ColumnMaps.Mapped mapped) {
    return mapped.what().unit().orElse(report.column(mapped.column()).unit());
  }

  private Unit unit(String text, QuantityKind kind, ColumnMaps.Mapped mapped) {
    if (text.isEmpty()) {
      throw new IllegalArgumentException(
          "the heading of '%s' tells no unit; write it in brackets, --map '%s[%s]=...'"
              .formatted(
                  report.column(mapped.column()).name(),
                  report.column(mapped.column()).name(),
                  kind.unit().code()));
    }
    return QuantityParser.unit(text, kind);
  }

  private List<Stretch> stretches(ColumnMaps.Mapped mapped, Column column, List<Stretch> named) {
    if (!named.isEmpty()) {
      return named;
    }
    if (column.trend()) {
      throw new IllegalArgumentException(
          "is the trend of a column; name a stretch of time, for instance --window 5min..10min");
    }
    List<LogReport.Numbered> own =
        report.windows().stream().filter(each -> each.column() == mapped.column()).toList();
    String name = report.column(mapped.column()).name();
    if (own.isEmpty()) {
      throw new IllegalArgumentException(
          "'%s' stands still nowhere; name a stretch of time, for instance --window 5min..10min"
              .formatted(name));
    }
    if (own.size() > 1) {
      throw new IllegalArgumentException(
          "'%s' has %d steady windows, %d to %d; name one, for instance --window %d"
              .formatted(
                  name,
                  own.size(),
                  own.get(0).number(),
                  own.get(own.size() - 1).number(),
                  own.get(0).number()));
    }
    return List.of(Stretch.of(own.get(0)));
  }

  private LogReading reading(
      ColumnMaps.Mapped mapped,
      Observable observable,
      Column column,
      Stretch stretch,
      Window window,
      ColumnMaps maps) {
    Unit told = column.trend() ? observable.kind().unit() : column.unit();
    double factor = column.unit().factor() / told.factor();
    double value = column.trend() ? window.slope() * factor : window.mean();
    double scatter = column.trend() ? window.slopeUncertainty() * factor : window.uncertainty();
    double si = observable.kind().toSi(value, told);
    double atSi = column.kind().toSi(window.mean(), column.unit());
    Optional<Instrument.Function> own = range(mapped, column.kind(), atSi);
    double instrument =
        own.map(
                function ->
                    column.trend()
                        ? ofTrend(function.error(), window, column)
                        : function.error().standardUncertainty(si))
            .orElseGet(() -> observable.procedure().typical().standardUncertainty(si));
    // JCGM 100:2008, F.2.2.1: a digit of size d stands for d / sqrt(12).
    double digit =
        Math.max(
            report.log().resolutions().get(mapped.column()),
            own.map(Instrument.Function::resolution).orElse(0.0) / column.unit().factor());
    double rounding = column.trend() ? 0 : digit / Math.sqrt(12);
    LogReading.Parts parts =
        new LogReading.Parts(scatter, instrument / told.factor(), own.isEmpty(), rounding);
    return new LogReading(
        mapped.what().component(),
        observable,
        new Quantity(value, parts.combined(), told, observable.kind()),
        column.trend(),
        conditions(mapped, observable, stretch, maps),
        mapped.what().instrument(),
        parts,
        stretch,
        window);
  }

  /**
   * Of a trend only the part of the error is left that changes with the reading: from the least to
   * the greatest value of the window, by the unit of the reading.
   */
  private static double ofTrend(ErrorModel error, Window window, Column column) {
    double least = column.kind().toSi(window.least(), column.unit());
    double most = column.kind().toSi(window.most(), column.unit());
    if (most == least) {
      return 0;
    }
    double change = Math.abs(error.standardUncertainty(most) - error.standardUncertainty(least));
    return change / (most - least) * Math.abs(window.slope()) * column.unit().factor();
  }

  private Optional<Instrument.Function> range(
      ColumnMaps.Mapped mapped, QuantityKind kind, double si) {
    if (mapped.what().instrument().isEmpty()) {
      return Optional.empty();
    }
    String id = mapped.what().instrument().get();
    Instrument instrument =
        job.instrument(id)
            .or(() -> shop.stream().filter(each -> each.id().equals(id)).findFirst())
            .or(() -> InstrumentLibrary.find(id))
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "neither the job, the shop nor the library has an instrument '"
                            + id
                            + "'"));
    return instrument.range(kind, si);
  }

  private Map<String, Quantity> conditions(
      ColumnMaps.Mapped mapped, Observable observable, Stretch stretch, ColumnMaps maps) {
    Map<String, Quantity> conditions = new LinkedHashMap<>();
    for (ColumnMaps.Mapped other : maps.all()) {
      boolean same =
          other.what().component().equals(mapped.what().component())
              && other.what().observable().equals(mapped.what().observable());
      if (same && other.what().condition().isPresent()) {
        String word = other.what().condition().get();
        QuantityKind kind = condition(observable, word).kind();
        Unit unit = unit(unitText(other), kind, other);
        refuseOverRange(stretch, other.column());
        report
            .over(stretch, other.column())
            .ifPresent(
                window -> conditions.put(word, new Quantity(rounded(window), 0, unit, kind)));
      }
    }
    for (Map.Entry<String, String> pair : stated.entrySet()) {
      find(observable, pair.getKey())
          .ifPresent(
              known -> {
                used.add(known.id());
                conditions.put(known.id(), QuantityParser.parse(pair.getValue(), known.kind()));
              });
    }
    return conditions;
  }

  /** The mean of a condition to a hundredth of its scatter, so that it can be read. */
  private static double rounded(Window window) {
    double scatter = Math.max(window.standardDeviation(), LEAST_SCATTER);
    int places = Math.max(0, 2 - (int) Math.floor(Math.log10(scatter)));
    return new BigDecimal(window.mean()).setScale(places, RoundingMode.HALF_EVEN).doubleValue();
  }

  private static Characteristic condition(Observable observable, String word) {
    List<String> known = observable.conditions().stream().map(Characteristic::id).toList();
    return find(observable, word)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "'%s' knows no condition '%s'%s"
                        .formatted(observable.id(), word, near(word, known))));
  }

  private static Optional<Characteristic> find(Observable observable, String word) {
    return observable.conditions().stream().filter(each -> each.id().equals(word)).findFirst();
  }

  /** Conditions that were stated, by their words. */
  private static Map<String, String> stated(List<String> pairs) {
    Map<String, String> stated = new LinkedHashMap<>();
    for (String pair : pairs) {
      int sign = pair.indexOf('=');
      if (sign <= 0) {
        throw new InputException(pair, "is not of the form condition=value", "");
      }
      stated.put(pair.substring(0, sign).strip(), pair.substring(sign + 1));
    }
    return stated;
  }
}

package kelter.cli.readings;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.file.json.Json;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityFormat;

/** Readings of a log as they stand in a job file. */
public final class JobEntries {

  private static final String MEASUREMENTS = "measurements";
  private static final String INSTRUMENTS = "instruments";

  private JobEntries() {}

  /**
   * The content of a job file with more readings behind the ones it has; nothing else changes. An
   * instrument of the shop that they name is described in the job, so that the job stands by
   * itself.
   *
   * @param job the content of the job file
   * @param shop the content of the shop profile, if there is one
   * @param readings the readings
   * @param log the name of the log, for the notes
   * @return the content with the readings; the same content if it has them already
   */
  public static Json.Obj with(
      Json.Obj job, Optional<Json.Obj> shop, List<LogReading> readings, String log) {
    Json.Obj content = job;
    for (LogReading reading : readings) {
      Json.Arr entries = array(content, MEASUREMENTS);
      Json entry = entry(reading, log);
      if (!entries.items().contains(entry)) {
        content = content.with(MEASUREMENTS, entries.plus(entry));
      }
      content = withInstrument(content, shop, reading.instrument());
    }
    return content;
  }

  private static Json.Arr array(Json.Obj content, String name) {
    return content.members().get(name) instanceof Json.Arr array ? array : new Json.Arr(List.of());
  }

  private static Json.Obj withInstrument(
      Json.Obj job, Optional<Json.Obj> shop, Optional<String> instrument) {
    if (instrument.isEmpty() || named(job, instrument.get()).isPresent() || shop.isEmpty()) {
      return job;
    }
    return named(shop.get(), instrument.get())
        .map(
            known -> {
              Map<String, Json> members = new LinkedHashMap<>(known.members());
              members.remove("calibrated");
              members.remove("interval");
              return job.with(INSTRUMENTS, array(job, INSTRUMENTS).plus(new Json.Obj(members)));
            })
        .orElse(job);
  }

  private static Optional<Json.Obj> named(Json.Obj content, String id) {
    return array(content, INSTRUMENTS).items().stream()
        .filter(Json.Obj.class::isInstance)
        .map(Json.Obj.class::cast)
        .filter(each -> new Json.Str(id).equals(each.members().get("id")))
        .findFirst();
  }

  private static Json entry(LogReading reading, String log) {
    Map<String, Json> members = new LinkedHashMap<>();
    members.put("of", new Json.Str(reading.component()));
    members.put("observable", new Json.Str(reading.observable().id()));
    members.put("reading", new Json.Str(text(reading.quantity())));
    if (!reading.conditions().isEmpty()) {
      Map<String, Json> at = new LinkedHashMap<>();
      reading.conditions().forEach((word, value) -> at.put(word, new Json.Str(value.format())));
      members.put("at", new Json.Obj(at));
    }
    reading.instrument().ifPresent(id -> members.put("instrument", new Json.Str(id)));
    members.put("note", new Json.Str(note(reading, log)));
    return new Json.Obj(members);
  }

  /** The figure to a hundredth of its uncertainty, with the uncertainty that it has. */
  private static String text(Quantity quantity) {
    String code = quantity.unit().code();
    String unit = code.equals("1") ? "" : " " + code;
    double u = quantity.standardUncertainty();
    if (u == 0) {
      return quantity.format();
    }
    BigDecimal uncertainty =
        new BigDecimal(u).round(new MathContext(3, RoundingMode.HALF_UP)).stripTrailingZeros();
    int places = Math.max(0, new BigDecimal(u).round(new MathContext(3)).scale());
    BigDecimal value = new BigDecimal(quantity.value()).setScale(places, RoundingMode.HALF_EVEN);
    return value.toPlainString() + unit + " ± " + uncertainty.toPlainString() + " (k=1)";
  }

  private static String note(LogReading reading, String log) {
    List<String> parts = new ArrayList<>();
    parts.add("scatter " + QuantityFormat.plain(reading.parts().scatter()));
    parts.add(
        (reading.parts().assumed() ? "an ordinary instrument " : "instrument ")
            + QuantityFormat.plain(reading.parts().instrument()));
    if (reading.parts().rounding() > 0) {
      parts.add("last digit " + QuantityFormat.plain(reading.parts().rounding()));
    }
    String worth =
        reading.trend() ? "" : " worth " + QuantityFormat.plain(reading.window().effective());
    return "%s of rows %d to %d of %s, %d samples%s; standard uncertainty from %s, in %s"
        .formatted(
            reading.trend() ? "trend" : "mean",
            reading.window().firstRow(),
            reading.window().lastRow(),
            log,
            reading.window().samples(),
            worth,
            String.join(", ", parts),
            reading.quantity().unit().code());
  }
}

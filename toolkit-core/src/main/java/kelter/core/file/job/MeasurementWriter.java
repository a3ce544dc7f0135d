package kelter.core.file.job;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kelter.core.file.json.Json;
import kelter.core.job.Measurement;
import kelter.core.log.measurement.LogReading;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityFormat;

/** Writes readings of a log as they stand in a job file. */
final class MeasurementWriter {

  private static final String MEASUREMENTS = "measurements";
  private static final String INSTRUMENTS = "instruments";

  private MeasurementWriter() {}

  /**
   * The content of a job file with more readings; see {@link JobDocument#with}.
   *
   * @param shop the content of the shop profile, if there is one
   */
  static Json.Obj with(
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
    Measurement measurement = reading.measurement(log);
    Map<String, Json> members = new LinkedHashMap<>();
    members.put("of", new Json.Str(measurement.component()));
    members.put("observable", new Json.Str(measurement.observable()));
    members.put("reading", new Json.Str(text(reading.quantity())));
    if (!reading.conditions().isEmpty()) {
      Map<String, Json> at = new LinkedHashMap<>();
      reading.conditions().forEach((word, value) -> at.put(word, new Json.Str(value.format())));
      members.put("at", new Json.Obj(at));
    }
    measurement.instrument().ifPresent(id -> members.put("instrument", new Json.Str(id)));
    members.put("note", new Json.Str(measurement.note()));
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
    return QuantityFormat.written(value)
        + unit
        + " ± "
        + QuantityFormat.written(uncertainty)
        + " (k=1)";
  }
}

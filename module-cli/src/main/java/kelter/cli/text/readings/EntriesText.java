package kelter.cli.text.readings;

import java.util.List;
import java.util.stream.Collectors;
import kelter.core.log.measurement.LogReading;
import kelter.core.log.measurement.ReadAs;
import kelter.core.quantity.QuantityFormat;

/** What columns were said to hold, and the readings of a job that came of it. */
record EntriesText(LogPage log) {

  void maps(List<ReadAs> maps) {
    if (!maps.isEmpty()) {
      log.heading("Columns read as");
    }
    for (ReadAs map : maps) {
      log.line(
          "  ",
          "%s in %s: %s, %s%s"
              .formatted(
                  log.name(map.mapped().column()),
                  map.unit().symbol(),
                  map.mapped().what().target(),
                  map.trend() ? "the trend of " : "",
                  QuantityFormat.withArticle(map.kind().name())));
    }
  }

  void readings(List<LogReading> readings, List<String> outcome) {
    if (!readings.isEmpty()) {
      log.heading("Readings");
    }
    for (LogReading reading : readings) {
      log.line(
          "  ",
          "%s %s: %s%s, %s of %s"
              .formatted(
                  reading.component(),
                  reading.observable(),
                  WindowFigures.nonBreaking(reading.quantity().display()),
                  conditions(reading),
                  reading.trend() ? "trend" : "mean",
                  reading.stretch().words()));
      log.line(
          "     ",
          "standard uncertainties: "
              + reading.parts().words("an ordinary instrument, since none is named,"));
    }
    outcome.forEach(sentence -> log.line("  ", sentence));
  }

  private static String conditions(LogReading reading) {
    String stated =
        reading.conditions().entrySet().stream()
            .map(each -> each.getKey() + " " + WindowFigures.nonBreaking(each.getValue().display()))
            .collect(Collectors.joining(", "));
    return stated.isEmpty() ? "" : " (at " + stated + ")";
  }
}

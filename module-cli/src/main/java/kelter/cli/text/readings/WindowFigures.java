package kelter.cli.text.readings;

import kelter.core.log.Window;
import kelter.core.quantity.QuantityFormat;

/** The figures of a window of a column, in its unit. */
record WindowFigures(Window window, String unit, boolean counted) {

  static WindowFigures of(LogPage log, Window window, int column) {
    return new WindowFigures(window, log.unit(column), log.format().timing().counted());
  }

  String value() {
    return nonBreaking(QuantityFormat.withUncertainty(window.mean(), window.uncertainty())) + unit;
  }

  String spread() {
    String per = counted ? "" : "/min";
    double factor = counted ? 1 : 60;
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

  static String nonBreaking(String text) {
    return text.replace(' ', '\u00a0');
  }
}

package kelter.cli.text;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import kelter.cli.terminal.Terminal;
import kelter.core.instrument.InstrumentLibrary;
import kelter.core.job.Instrument;
import kelter.core.quantity.QuantityFormat;
import kelter.core.quantity.QuantityKind;

/** Instruments for a person. */
public final class InstrumentsText {

  /** The end of a range that a shop does not state, and what would follow from it. */
  private static final String NOT_STATED = "-";

  private InstrumentsText() {}

  /**
   * Writes instruments.
   *
   * @param instruments the instruments
   * @param terminal where they will be shown
   * @return the text, with a line end after the last line
   */
  public static String of(List<Instrument> instruments, Terminal terminal) {
    Layout layout = new Layout(terminal);
    for (Instrument instrument : instruments) {
      layout.heading(instrument.id() + ": " + instrument.title());
      if (!instrument.notes().isEmpty()) {
        layout.hanging("  ", instrument.notes());
      }
      List<List<String>> rows =
          new ArrayList<>(List.of(List.of("measures", "to", "± at half of it", "± at its end")));
      instrument.functions().forEach(function -> rows.add(row(function)));
      layout.figures("    ", rows);
    }
    layout.blank();
    layout.hanging(
        "",
        "± is the expanded uncertainty, k = 2. Figures of the library: "
            + InstrumentLibrary.SOURCE.display());
    return layout.toString();
  }

  private static List<String> row(Instrument.Function function) {
    QuantityKind kind = function.kind();
    if (Double.isInfinite(function.end())) {
      return List.of(kind.name(), NOT_STATED, NOT_STATED, NOT_STATED);
    }
    double end = kind.fromSi(function.end(), kind.unit());
    return List.of(kind.name(), told(end, kind), expanded(function, 0.5), expanded(function, 1));
  }

  private static String told(double value, QuantityKind kind) {
    return (QuantityFormat.plain(value) + " " + kind.unit().symbol()).strip();
  }

  private static String expanded(Instrument.Function function, double part) {
    QuantityKind kind = function.kind();
    double half = kind.toSi(part * kind.fromSi(function.end(), kind.unit()), kind.unit());
    double u = QuantityFormat.COVERAGE_FACTOR * function.standardUncertainty(half);
    BigDecimal twoDigits =
        new BigDecimal(u / kind.unit().factor()).round(new MathContext(2, RoundingMode.HALF_UP));
    return (twoDigits.toPlainString() + " " + kind.unit().symbol()).strip();
  }
}

package kelter.cli.text.book;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import kelter.cli.terminal.Terminal;
import kelter.cli.text.Figures;
import kelter.cli.text.Layout;
import kelter.core.book.learned.Calibration;
import kelter.core.book.learned.Learned;
import kelter.core.book.learned.LearnedRate;
import kelter.core.book.learned.LearnedTime;
import kelter.core.book.learned.PartLife;
import kelter.core.catalogue.Kinds;

/** What a job book tells of work, cures, parts and predictions, as tables. */
public final class StatsText {

  private static final int MOST = 15;

  private final Learned learned;
  private final Layout layout;

  private StatsText(Learned learned, Layout layout) {
    this.learned = learned;
    this.layout = layout;
  }

  /**
   * Writes the tables.
   *
   * @param learned what the book tells
   * @param kinds the kinds of machines
   * @param terminal where they will be shown
   * @return the text, with a line end after the last line
   */
  public static String of(Learned learned, Kinds kinds, Terminal terminal) {
    StatsText text = new StatsText(learned, new Layout(terminal));
    text.layout.line(learned.jobs() == 1 ? "1 job." : learned.jobs() + " jobs.");
    LearnedText.kinds(learned, kinds, text.layout);
    text.rates("Cures", "remedy", learned.cures());
    text.rates("Call-backs of cured complaints", "kind", learned.callBacks());
    text.rates("Readings that misled", "instrument", learned.blunders());
    text.times("Time of work, min", "remedy", learned.work());
    text.times("Time of readings, min", "reading", learned.readings());
    text.lives();
    text.calibration();
    return text.layout.toString();
  }

  private <T> void table(
      String title,
      List<String> head,
      Map<String, T> rows,
      Function<T, Double> number,
      Function<T, List<String>> cells) {
    if (rows.isEmpty()) {
      return;
    }
    layout.heading(title);
    List<List<String>> all = new ArrayList<>(List.of(head));
    rows.entrySet().stream()
        .sorted(
            Comparator.comparingDouble(
                    (Map.Entry<String, T> each) -> -number.apply(each.getValue()))
                .thenComparing(Map.Entry::getKey))
        .limit(MOST)
        .forEach(
            each -> {
              List<String> row = new ArrayList<>(List.of(each.getKey()));
              row.addAll(cells.apply(each.getValue()));
              all.add(row);
            });
    layout.figures("  ", all);
    if (rows.size() > MOST) {
      layout.line("  and " + (rows.size() - MOST) + " with fewer (--format json has all)");
    }
  }

  private void rates(String title, String what, Map<String, LearnedRate> rates) {
    table(
        title,
        List.of(what, "cases", "rate", "95\u00a0% between"),
        rates,
        LearnedRate::cases,
        rate ->
            List.of(
                whole(rate.cases()),
                Figures.percent(rate.rate()),
                Figures.percent(rate.low()) + " and " + Figures.percent(rate.high())));
  }

  private void times(String title, String what, Map<String, LearnedTime> times) {
    table(
        title,
        List.of(what, "times", "median", "mean", "one in 20 above"),
        times,
        LearnedTime::times,
        time ->
            List.of(
                whole(time.times()), whole(time.median()), whole(time.mean()), whole(time.high())));
  }

  private void lives() {
    table(
        "Lives of parts, years",
        List.of("part", "failed", "lasted", "scale", "95\u00a0% between", "half failed at"),
        learned.lives(),
        PartLife::failures,
        life ->
            List.of(
                whole(life.failures()),
                whole(life.lasted()),
                life.weibull().map(fit -> told(fit.scale())).orElse("-"),
                life.weibull()
                    .map(fit -> whole(fit.scaleLow()) + " and " + whole(fit.scaleHigh()))
                    .orElse("-"),
                told(life.median())));
    if (!learned.lives().isEmpty()) {
      layout.hanging(
          "  ",
          "Of machines that somebody called for: those that never fail are not in the book, so that"
              + " lives are rather told too short. With fewer than 5 failures only an interval is"
              + " told.");
    }
  }

  private void calibration() {
    if (learned.calibration().isEmpty()) {
      return;
    }
    Calibration calibration = learned.calibration().get();
    layout.heading("What was told before the work");
    layout.hanging(
        "  ",
        "%s jobs; the cause named first was told %.0f\u00a0points off on average."
            .formatted(calibration.jobs(), 100 * calibration.expectedError()));
    for (Calibration.Bin bin : calibration.bins()) {
      layout.hanging(
          "  ",
          "told %s, confirmed %s, %s jobs"
              .formatted(Figures.percent(bin.said()), Figures.percent(bin.came()), bin.jobs()));
    }
  }

  private static String whole(double value) {
    return value < 10 && value != Math.rint(value)
        ? "%.1f".formatted(value)
        : Double.isFinite(value) && value < 1e6 ? Long.toString(Math.round(value)) : "no end";
  }

  private static String told(OptionalDouble value) {
    return value.isPresent() ? whole(value.getAsDouble()) : "-";
  }
}

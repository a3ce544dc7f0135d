package kelter.cli.text;

import java.util.ArrayList;
import java.util.List;
import kelter.cli.terminal.Terminal;
import kelter.core.job.Job;
import kelter.core.option.Option;
import kelter.core.option.Weighing;
import kelter.core.source.Source;

/** Repair or replace, for the owner. */
public final class WeighingText {

  private WeighingText() {}

  /**
   * Writes the options of a job.
   *
   * @param job the job
   * @param weighing its options
   * @param terminal where they will be shown
   * @return the text, with a line end after the last line
   */
  public static String of(Job job, Weighing weighing, Terminal terminal) {
    Layout layout = new Layout(terminal);
    JobText.write(job, layout);
    String currency = weighing.currency().getCurrencyCode();
    layout.heading("Repair or replace (" + currency + ", the cheapest by the year first)");
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("option", "now", "lasts", "a year (5 to 95 %)", "cures", "cheapest"));
    int place = 0;
    for (Option option : weighing.options()) {
      rows.add(
          List.of(
              ++place + ".",
              amount(option.outlay()),
              Figures.fixed(option.years(), 1) + " years",
              "%s (%s to %s)"
                  .formatted(
                      amount(option.annualCost().mean()),
                      amount(option.annualCost().low()),
                      amount(option.annualCost().high())),
              Figures.percent(option.probabilityOfCure()),
              Figures.percent(option.probabilityCheapest())));
    }
    layout.table("  ", rows);
    layout.blank();
    place = 0;
    for (Option option : weighing.options()) {
      layout.hanging("  " + ++place + ". ", option.id() + ": " + option.title());
    }
    if (!Double.isNaN(weighing.breakEvenRepair())) {
      layout.blank();
      layout.hanging(
          "  ",
          "A repair pays up to about %s %s; above that a new machine costs less by the year."
              .formatted(amount(weighing.breakEvenRepair()), currency));
    }
    list("Taken for granted", weighing.assumptions(), layout);
    list("Sources", weighing.sources().stream().map(Source::display).toList(), layout);
    return layout.toString();
  }

  private static void list(String heading, List<String> items, Layout layout) {
    if (!items.isEmpty()) {
      layout.heading(heading);
      items.forEach(item -> layout.hanging("  - ", item));
    }
  }

  private static String amount(double value) {
    return Figures.fixed(value, 0);
  }
}

package kelter.cli.weighing;

import java.util.ArrayList;
import java.util.List;
import kelter.cli.text.Layout;
import kelter.core.job.Job;
import kelter.core.option.Option;
import kelter.core.option.Reasons;
import kelter.core.option.Reasons.Influence;
import kelter.core.option.Weighing;
import kelter.core.quantity.QuantityFormat;

/** Why the options of a job come out as they do: what would turn the answer, and pictures of it. */
final class ReasonsText {

  private static final String INDENT = "  ";
  private static final double TOLD_AT_MOST = 1e6;

  private final Weighing weighing;
  private final Reasons reasons;
  private final Layout layout;
  private final int width;
  private final String currency;

  private ReasonsText(Weighing weighing, Reasons reasons, Layout layout, int width) {
    this.weighing = weighing;
    this.reasons = reasons;
    this.layout = layout;
    this.width = width;
    this.currency = weighing.currency().getCurrencyCode();
  }

  static void write(Job job, Weighing weighing, Reasons reasons, Layout layout, int width) {
    ReasonsText text = new ReasonsText(weighing, reasons, layout, width);
    text.breakEven(job);
    text.influences();
    text.odds();
    text.rules();
    text.courses();
  }

  private void breakEven(Job job) {
    layout.heading("Where the answer turns");
    if (Double.isNaN(weighing.breakEvenRepair())) {
      layout.hanging(
          INDENT, "There is not both a repair and a replacement to hold against each other.");
      return;
    }
    layout.hanging(
        INDENT,
        "Break-even price of the repair: %s %s"
            .formatted(WeighingText.amount(weighing.breakEvenRepair()), currency));
    String age = job.appliance().age().map(at -> "; this machine is at " + at.display()).orElse("");
    layout.hanging(
        INDENT,
        "Break-even age of the machine: "
            + (Double.isNaN(reasons.breakEvenAge())
                ? "none; at this bill " + cheaper() + " costs less at any age up to 60 years"
                : QuantityFormat.fixed(reasons.breakEvenAge(), 1)
                    + " years; at this bill, older ones are better replaced"
                    + age));
  }

  private String cheaper() {
    for (Option option : weighing.options()) {
      boolean replaces = option.id().equals(Option.REPLACE);
      if (replaces || !option.remedies().isEmpty()) {
        return replaces ? "replacing" : "repairing";
      }
    }
    return "repairing";
  }

  private void influences() {
    if (reasons.influences().isEmpty()) {
      return;
    }
    layout.heading("What moves it most");
    layout.hanging(
        INDENT,
        "What the best repair saves against replacing, in "
            + currency
            + " a year, if one figure is at its low (L) or high (H) end and all others as they are. Right"
            + " of the bar | repairing costs less, left of it replacing.");
    Axis axis = Axis.of(reasons.influences(), width);
    for (Influence influence : reasons.influences()) {
      layout.hanging(
          INDENT,
          "%s: %s (L) to %s (H)%s"
              .formatted(
                  influence.what(),
                  influence.low(),
                  influence.high(),
                  influence.decides() ? "; turns the answer" : ""));
      layout.asIs(axis.line(influence));
    }
  }

  private void odds() {
    layout.heading("Odds that it costs least, and regret");
    layout.hanging(
        INDENT,
        "Regret: what choosing it costs on average, in "
            + currency
            + " a year, beyond what would have turned out cheapest.");
    int room = Math.max(10, Math.min(40, width - 40));
    for (int i = 0; i < weighing.options().size(); i++) {
      Option option = weighing.options().get(i);
      int full = (int) Math.round(room * option.probabilityCheapest());
      double regret = reasons.regret().getOrDefault(option.id(), Double.NaN);
      layout.asIs(
          "%s%s. %s%s %s%s"
              .formatted(
                  INDENT,
                  i + 1,
                  "#".repeat(full),
                  ".".repeat(room - full),
                  WeighingText.inHundred(option.probabilityCheapest()),
                  Double.isNaN(regret) ? "" : ", regret " + WeighingText.amount(regret)));
    }
  }

  private void rules() {
    if (reasons.rules().isEmpty()) {
      return;
    }
    layout.heading("A rule of thumb beside it");
    for (Reasons.RuleOfThumb rule : reasons.rules()) {
      layout.hanging(INDENT, rule.rule() + " Source: " + rule.source().display() + ".");
      layout.hanging(INDENT, rule.here());
    }
  }

  private void courses() {
    if (reasons.courses().isEmpty()) {
      return;
    }
    layout.heading("Paid in all by the end of each year (" + currency + ", prices of today)");
    layout.hanging(
        INDENT,
        "* is the mean; the colons are where 9 of 10 cases lie; below are the years from now.");
    List<CoursePlot> plots = new ArrayList<>();
    double top = CoursePlot.top(reasons.courses());
    for (int i = 0; i < reasons.courses().size(); i++) {
      String id = reasons.courses().get(i).option();
      plots.add(new CoursePlot((i + 1) + ". " + id, reasons.courses().get(i), top));
    }
    int beside =
        Math.max(1, Math.min(2, (width - INDENT.length() + 2) / (plots.get(0).width() + 2)));
    for (int i = 0; i < plots.size(); i += beside) {
      for (String line : CoursePlot.beside(plots.subList(i, Math.min(plots.size(), i + beside)))) {
        layout.asIs((INDENT + line).stripTrailing());
      }
    }
  }

  /**
   * The axis that all influences share.
   *
   * @param low the least saving shown
   * @param high the greatest saving shown
   * @param room how many columns there are
   * @param label how many characters a figure takes
   */
  private record Axis(double low, double high, int room, int label) {

    static Axis of(List<Influence> influences, int width) {
      double low = 0;
      double high = 0;
      int label = 1;
      for (Influence each : influences) {
        low = Math.min(low, Math.min(each.savingLow(), each.savingHigh()));
        high = Math.max(high, Math.max(each.savingLow(), each.savingHigh()));
        label = Math.max(label, Math.max(figure(each.savingLow()), figure(each.savingHigh())));
      }
      int room = Math.max(15, Math.min(60, width - 2 * label - 7));
      return new Axis(low, high > low ? high : low + 1, room, label);
    }

    private static int figure(double saving) {
      return shown(saving).length();
    }

    private static String shown(double saving) {
      return Math.abs(saving) < TOLD_AT_MOST
          ? WeighingText.amount(saving)
          : QuantityFormat.fixed(saving / TOLD_AT_MOST, 1) + "M";
    }

    private int column(double saving) {
      return (int) Math.round((room - 1) * (saving - low) / (high - low));
    }

    String line(Influence influence) {
      boolean lowFirst = influence.savingLow() <= influence.savingHigh();
      double least = lowFirst ? influence.savingLow() : influence.savingHigh();
      double most = lowFirst ? influence.savingHigh() : influence.savingLow();
      StringBuilder bar = new StringBuilder(" ".repeat(room));
      for (int c = column(least); c <= column(most); c++) {
        bar.setCharAt(c, '=');
      }
      bar.setCharAt(column(0), '|');
      bar.setCharAt(column(least), lowFirst ? 'L' : 'H');
      bar.setCharAt(column(most), lowFirst ? 'H' : 'L');
      String left = shown(least);
      return ("    " + " ".repeat(label - left.length()) + left + " " + bar + " " + shown(most))
          .stripTrailing();
    }
  }
}

package kelter.cli.weighing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import kelter.cli.terminal.Terminal;
import kelter.cli.text.Figures;
import kelter.cli.text.JobText;
import kelter.cli.text.Layout;
import kelter.core.job.Job;
import kelter.core.option.CarbonBalance;
import kelter.core.option.Option;
import kelter.core.option.Weighing;
import kelter.core.quantity.QuantityFormat;
import kelter.core.source.Source;
import kelter.core.vocabulary.Statement;

/** Repair or replace, for the owner: the answer first, then the options, then what it rests on. */
public final class WeighingText {

  private static final String INDENT = "  ";
  private final Layout layout;
  private final int width;
  private final Weighing weighing;
  private final String currency;
  private final List<String> head;

  private WeighingText(Weighing weighing, Terminal terminal) {
    this.layout = new Layout(terminal);
    this.width = terminal.width();
    this.weighing = weighing;
    this.currency = weighing.currency().getCurrencyCode();
    this.head =
        List.of(
            "bill now, " + currency,
            "works",
            "lasts",
            currency + " a year",
            "9 of 10 cases",
            "cheapest");
  }

  /**
   * Writes the options of a job.
   *
   * @param weighed the job with its options
   * @param terminal where they will be shown
   * @return the text, with a line end after the last line
   */
  public static String of(Weighed weighed, Terminal terminal) {
    Job job = weighed.job();
    Weighing weighing = weighed.weighing();
    WeighingText text = new WeighingText(weighing, terminal);
    JobText.write(job, weighed.vocabulary(), text.layout);
    text.answer();
    text.options();
    if (weighed.reasons().isPresent()) {
      ReasonsText.write(job, weighing, weighed.reasons().get(), text.layout, text.width);
    }
    if (weighed.carbon().isPresent()) {
      text.carbon(weighed.carbon().get());
    }
    text.list("Assumptions", Statement.texts(weighing.assumptions()));
    text.list("Sources", weighing.sources().stream().map(Source::display).toList());
    if (weighed.reasons().isEmpty()) {
      text.layout.blank().line("'--why' tells what would turn the answer, and draws it.");
    }
    return text.layout.toString();
  }

  private void carbon(CarbonBalance carbon) {
    layout.heading("Carbon (kg of carbon dioxide equivalent a year)");
    layout.hanging(INDENT, "Keeping the machine: " + amount(carbon.runningOld()) + " kg a year.");
    layout.hanging(
        INDENT,
        "Replacing it: %s kg a year, of which %s kg are for making a new one (%s kg in all)."
            .formatted(
                amount(carbon.runningNew() + carbon.makingNewPerYear()),
                amount(carbon.makingNewPerYear()),
                amount(carbon.makingNew())));
    layout.hanging(
        INDENT,
        Double.isNaN(carbon.payBack())
            ? "A new machine never makes good what its making emits: it takes as much energy."
            : "A new machine makes good what its making emits after "
                + QuantityFormat.fixed(carbon.payBack(), 1)
                + " years.");
    for (String item : Statement.texts(carbon.assumptions())) {
      layout.hanging(INDENT + "- ", item);
    }
    for (Source source : carbon.sources()) {
      layout.hanging(INDENT + "- ", "Source: " + source.display());
    }
  }

  private void answer() {
    layout.heading(Answer.heading(weighing));
    new Answer(weighing).sentences().forEach(sentence -> layout.hanging(INDENT, sentence));
    if (!weighing.options().isEmpty()) {
      layout.blank();
    }
  }

  private void options() {
    List<List<String>> rows = new ArrayList<>(List.of(head));
    weighing.options().forEach(option -> rows.add(cells(option)));
    int[] widths = widths(rows);
    boolean fits = row(head, widths).length() <= width;
    if (fits) {
      layout.asIs(row(head, widths));
    }
    for (int i = 0; i < weighing.options().size(); i++) {
      Option option = weighing.options().get(i);
      String label = INDENT + (i + 1) + ". ";
      layout.hanging(label, sentence(option.title()) + " [" + option.id() + "]");
      if (fits) {
        layout.asIs(row(rows.get(i + 1), widths));
      } else {
        layout.hanging(" ".repeat(label.length()), told(rows.get(i + 1)));
      }
    }
    layout.blank();
    layout.hanging(
        INDENT,
        ("Bill now: what is paid today, on average. Works: the chance that the machine works after"
                + " it, whatever else may be wrong with it. Lasts: how long it then goes on, on average."
                + " %s a year: all that is paid from today on, later failures and new machines included,"
                + " spread evenly over the years; it lies between the two figures in 9 of 10 cases, and"
                + " can be below zero since years beyond the period are credited. Cheapest: in how many"
                + " of 100 cases the option turns out to cost least.")
            .formatted(currency));
  }

  private static List<String> cells(Option option) {
    return List.of(
        amount(option.outlay()),
        Figures.percent(option.probabilityOfCure()),
        QuantityFormat.fixed(option.years(), 1) + " years",
        amount(option.annualCost().mean()),
        amount(option.annualCost().low()) + " to " + amount(option.annualCost().high()),
        inHundred(option.probabilityCheapest()));
  }

  private String told(List<String> cells) {
    return IntStream.range(0, cells.size())
        .mapToObj(i -> head.get(i) + " " + cells.get(i))
        .collect(Collectors.joining("; "));
  }

  private int[] widths(List<List<String>> rows) {
    return IntStream.range(0, head.size())
        .map(c -> rows.stream().mapToInt(row -> row.get(c).length()).max().orElse(0))
        .toArray();
  }

  private static String row(List<String> cells, int[] widths) {
    StringBuilder line = new StringBuilder(INDENT + "   ");
    for (int c = 0; c < widths.length; c++) {
      line.append(c == 0 ? "" : "  ").append(" ".repeat(widths[c] - cells.get(c).length()));
      line.append(cells.get(c));
    }
    return line.toString();
  }

  private void list(String heading, List<String> items) {
    if (!items.isEmpty()) {
      layout.heading(heading);
      for (String item : items) {
        layout.hanging("  - ", item);
      }
    }
  }

  /** Words with a capital at their beginning. */
  static String sentence(String words) {
    return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  static String amount(double value) {
    return QuantityFormat.fixed(value, 0);
  }

  /** A chance as a frequency, which is understood at once; never rounded to certainty. */
  static String inHundred(double probability) {
    if (probability > 0.99) {
      return "> 99 of 100";
    }
    return probability < 0.01 ? "< 1 of 100" : Math.round(100 * probability) + " of 100";
  }
}

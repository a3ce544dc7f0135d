package kelter.cli.weighing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.cli.terminal.Terminal;
import kelter.cli.text.JobText;
import kelter.cli.text.Layout;
import kelter.core.option.Option;
import kelter.core.option.Reasons.Influence;
import kelter.core.option.Weighing;
import kelter.core.safety.Caution;

/**
 * Repair or replace on one screen of 80 columns by 24 lines: the advice, the best options, and what
 * it depends on. {@link WeighingText} tells all of it.
 */
public final class WeighingScreen {

  private static final int BEST = 2;
  private static final String INDENT = "  ";

  private final Weighing weighing;
  private final String currency;
  private final Layout layout;

  private WeighingScreen(Weighing weighing, Terminal terminal) {
    this.weighing = weighing;
    this.currency = weighing.currency().getCurrencyCode();
    this.layout = new Layout(terminal);
  }

  /**
   * Writes the advice for a job.
   *
   * @param weighed the job with its options, and why they come out so where that is known
   * @param cautions what to mind before anything is done
   * @param terminal where it will be shown
   * @return the text, with a line end after the last line
   */
  public static String of(Weighed weighed, List<Caution> cautions, Terminal terminal) {
    WeighingScreen screen = new WeighingScreen(weighed.weighing(), terminal);
    JobText.head(weighed.job(), cautions, screen.layout);
    screen.answer();
    screen.options();
    screen.dependsOn(weighed);
    screen.layout.hanging(
        "More: ", "kelter weigh --full JOB".replace(' ', '\u00a0') + ", --why, --plot, --carbon");
    return screen.layout.toString();
  }

  private void answer() {
    layout.heading(Answer.heading(weighing));
    new Answer(weighing).sentences().forEach(sentence -> layout.hanging(INDENT, sentence));
    layout.blank();
  }

  /** The best two, and the best of the other side where that is none of them. */
  private void options() {
    List<Option> options = weighing.options();
    List<Option> told = new ArrayList<>();
    boolean sideToTell = true;
    for (int i = 0; i < options.size(); i++) {
      boolean other = i > 0 && options.get(i).replaces() != options.get(0).replaces();
      if (i < BEST || other && sideToTell) {
        option(i + 1, options.get(i));
        told.add(options.get(i));
      }
      sideToTell &= !other;
    }
    List<String> besides = besides(told);
    if (!besides.isEmpty()) {
      layout.hanging(INDENT, String.join(" ", besides));
    } else if (!options.isEmpty()) {
      layout.blank();
    }
  }

  /** What the figures above do not add up without, and what one below 0 means. */
  private List<String> besides(List<Option> told) {
    List<String> besides = new ArrayList<>();
    List<Option> others = weighing.options().stream().filter(each -> !told.contains(each)).toList();
    if (!others.isEmpty()) {
      besides.add(
          "%s (--full): cheapest in %s."
              .formatted(
                  others.size() == 1 ? "1 option more" : others.size() + " options more",
                  WeighingText.inHundred(
                      others.stream().mapToDouble(Option::probabilityCheapest).sum())));
    }
    if (told.stream().anyMatch(option -> option.annualCost().low() < 0)) {
      besides.add("Below 0: years left at the end are credited.");
    }
    return besides;
  }

  private void option(int place, Option option) {
    String label = INDENT + place + ". ";
    layout.hanging(label, WeighingText.sentence(option.title()));
    layout.hanging(
        " ".repeat(label.length()),
        "%s a year (9 of 10 cases: %s to %s); bill now %s; cheapest in %s"
            .formatted(
                WeighingText.amount(option.annualCost().mean()),
                WeighingText.amount(option.annualCost().low()),
                WeighingText.amount(option.annualCost().high()),
                WeighingText.amount(option.outlay()),
                WeighingText.inHundred(option.probabilityCheapest())));
  }

  /** The figure that moves the answer most; where none is known, what was assumed first. */
  private void dependsOn(Weighed weighed) {
    Optional<Influence> most =
        weighed.reasons().flatMap(reasons -> reasons.influences().stream().findFirst());
    if (most.isPresent()) {
      layout.hanging("Depends most on: ", told(most.get()));
    } else if (!weighing.assumptions().isEmpty()) {
      layout.hanging("Assumed: ", weighing.assumptions().get(0).text());
    }
  }

  private String told(Influence most) {
    return "%s. At its low end repair costs %s than a new machine, at its high end %s%s."
        .formatted(
            most.what(),
            lessOrMore(most.savingLow()),
            lessOrMore(most.savingHigh()),
            most.decides() ? ": it turns the answer" : "");
  }

  private String lessOrMore(double saving) {
    return "%s %s a year %s"
        .formatted(WeighingText.amount(Math.abs(saving)), currency, saving < 0 ? "more" : "less");
  }
}

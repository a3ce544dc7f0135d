package kelter.cli.weighing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import kelter.core.option.Option;
import kelter.core.option.Weighing;

/** The answer to repair or replace in a few sentences, the advice first. */
final class Answer {

  private static final double HALF = 0.5;

  private final Weighing weighing;
  private final String currency;

  Answer(Weighing weighing) {
    this.weighing = weighing;
    this.currency = weighing.currency().getCurrencyCode();
  }

  static String heading(Weighing weighing) {
    return "Repair or replace (amounts in %s, %s)"
        .formatted(
            weighing.currency().getCurrencyCode(),
            weighing.taxed() ? "tax included" : "repair before tax");
  }

  /** What to choose, how sure that is, and up to which bill a repair pays. */
  List<String> sentences() {
    if (weighing.options().isEmpty()) {
      return List.of("There is nothing to choose from: no repair is known.");
    }
    Option best = weighing.options().get(0);
    if (weighing.recommended().isEmpty()) {
      return List.of(
          "Do not choose yet. First " + weighing.conclusion().action() + ". Then weigh again.",
          "By what is known so far, %s would cost least: %s.%s"
              .formatted(course(best), amountAYear(best), other(best)));
    }
    List<String> sentences = new ArrayList<>();
    String least = weighing.isClose() ? " costs least on average: " : " costs least: ";
    sentences.add(
        WeighingText.sentence(course(best)) + least + amountAYear(best) + "." + rival(best));
    if (!Double.isNaN(weighing.breakEvenRepair())) {
      sentences.add(breakEven());
    }
    return sentences;
  }

  private static String course(Option best) {
    return switch (best.id()) {
      case Option.REPLACE -> "a new machine (1.)";
      case Option.NOTHING -> "leaving it as it is for now (1.)";
      default -> "repair (1.)";
    };
  }

  private String amountAYear(Option option) {
    return "about " + WeighingText.amount(option.annualCost().mean()) + " " + currency + " a year";
  }

  /** What it is held against: a new machine, or the best option that is none. */
  private String other(Option best) {
    for (Option option : weighing.options()) {
      if (option.replaces() != best.replaces()) {
        return (best.replaces() ? " The best of the others: " : " A new machine: ")
            + amountAYear(option)
            + ".";
      }
    }
    return best.replaces() ? "" : " Replacing is no option here.";
  }

  /** The same with the odds, and a word where they are close. */
  private String rival(Option best) {
    if (weighing.options().stream().allMatch(each -> each.replaces() == best.replaces())) {
      return other(best);
    }
    double odds = weighing.oddsOfSide();
    String side = best.replaces() ? "Replacing" : "Not replacing";
    if (!weighing.isClose()) {
      return "%s %s costs least in %s cases."
          .formatted(other(best), side, WeighingText.inHundred(odds));
    }
    return "%s It is close: %s costs least in only %s cases.%s"
        .formatted(
            other(best),
            side.toLowerCase(Locale.ROOT),
            WeighingText.inHundred(odds),
            odds < HALF ? " What it saves in those makes the average." : "");
  }

  private String breakEven() {
    double bill = weighing.breakEvenRepair();
    return bill > 0
        ? "A repair pays up to a bill of about "
            + WeighingText.amount(bill)
            + " "
            + currency
            + "; above that a new machine costs less by the year."
        : "Not even a repair for nothing would pay: a new machine costs less by the year.";
  }
}

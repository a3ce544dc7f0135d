package kelter.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import kelter.cli.terminal.Terminal;
import kelter.core.module.Computation;
import kelter.core.module.Output;
import kelter.core.module.UncertaintyAnalysis;
import kelter.core.quantity.QuantityFormat;
import kelter.core.quantity.QuantityKind;
import kelter.core.uncertainty.Budget;
import kelter.core.uncertainty.ErrorEffect;
import kelter.core.uncertainty.ErrorTerm;
import kelter.core.uncertainty.montecarlo.MonteCarlo;
import kelter.core.uncertainty.montecarlo.Validation;

/** The uncertainty of a calculation for a person: a table for each result, largest part first. */
public final class BudgetText {

  private static final List<String> HEAD =
      List.of("input", "estimate", "u", "distribution", "c", "c u", "share");

  /** Beyond so many decimal places a figure is told by its digits. */
  private static final int MOST_PLACES = 9;

  private final UncertaintyAnalysis analysis;
  private final Layout layout;
  private final Terminal terminal;

  private BudgetText(UncertaintyAnalysis analysis, Terminal terminal) {
    this.analysis = analysis;
    this.layout = new Layout(terminal);
    this.terminal = terminal;
  }

  /**
   * Writes the budgets of a calculation.
   *
   * @param analysis the analysis
   * @param terminal where it will be shown
   * @return the text, with a line end after the last line
   */
  public static String of(UncertaintyAnalysis analysis, Terminal terminal) {
    BudgetText text = new BudgetText(analysis, terminal);
    if (analysis.effects().isEmpty()) {
      text.layout.blank();
      text.layout.hanging(
          "  ",
          "There is no budget: no input has an uncertainty. Write it behind a value, for instance"
              + " ± 0.3 in its unit, ± 2 %, ± 0.3 (k=2), ± 0.3 (triangular), or give several"
              + " readings with ; between them.");
    } else {
      text.write();
    }
    return text.layout.toString();
  }

  private void write() {
    List<Output> outputs = analysis.computation().calculation().outputs();
    for (int i = 0; i < outputs.size(); i++) {
      write(outputs.get(i), i);
    }
    layout.blank();
    layout.hanging(
        "  ",
        "u is the standard uncertainty of an input, c the sensitivity of the result to it (unit of"
            + " the result by unit of the input), c u its contribution. Budget after JCGM 100:2008,"
            + " Monte Carlo after JCGM 101:2008, seed "
            + analysis.settings().seed()
            + ".");
  }

  private void write(Output output, int place) {
    Budget budget = analysis.budgets().get(place);
    String unit = output.kind().unit().symbol();
    layout
        .blank()
        .line(
            terminal.heading("Budget of " + output.id() + (unit.isEmpty() ? "" : ", in " + unit)));
    if (budget.result().standardUncertainty() == 0) {
      layout.hanging("  ", "To first order no uncertain input moves it.");
    } else {
      List<List<String>> rows = new ArrayList<>(List.of(HEAD));
      budget.lines().forEach(line -> rows.add(row(line, output)));
      layout.figures("  ", rows);
      layout.hanging("  result       ", result(budget, output.kind()));
    }
    if (!analysis.outcomes().isEmpty()) {
      MonteCarlo.Outcome outcome = analysis.outcomes().get(place);
      layout.hanging("  Monte Carlo  ", monteCarlo(outcome, budget, output.kind()));
      layout.hanging("  first order  ", verdict(outcome, output.kind()));
    }
    analysis
        .refused()
        .ifPresent(reason -> layout.hanging("  Monte Carlo  ", "not possible: " + reason));
  }

  private List<String> row(Budget.Line line, Output output) {
    ErrorEffect effect = line.effect();
    double perUnit = output.kind().unit().factor();
    String estimate = "";
    String u = "";
    String sensitivity = "";
    if (effect.inputs().size() == 1) {
      int place = effect.inputs().get(0);
      Computation.Input input = analysis.computation().inputs().get(place);
      QuantityKind kind = input.parameter().kind();
      double factor = kind.unit().factor();
      estimate = told(kind.fromSi(input.quantity().value(), kind.unit()), kind);
      u = told(effect.moves().get(place) / factor, kind);
      sensitivity = QuantityFormat.plain(line.sensitivity() * factor / perUnit);
    }
    return List.of(
        name(effect),
        estimate,
        u,
        distribution(effect),
        sensitivity,
        QuantityFormat.plain(line.contribution() / perUnit),
        QuantityFormat.fixed(100 * line.share(), 1) + " %");
  }

  private String name(ErrorEffect effect) {
    String inputs =
        effect.inputs().stream()
            .map(place -> analysis.computation().inputs().get(place).parameter().id())
            .collect(Collectors.joining(", "));
    return effect.title().equals(ErrorTerm.STATED) ? inputs : inputs + ": " + effect.title();
  }

  private static String told(double value, QuantityKind kind) {
    return (QuantityFormat.plain(value) + " " + kind.unit().symbol()).strip();
  }

  private static String distribution(ErrorEffect effect) {
    double dof = effect.degreesOfFreedom();
    return Double.isInfinite(dof)
        ? effect.shape().words()
        : effect.shape().words() + ", dof " + QuantityFormat.plain(dof);
  }

  private static String result(Budget budget, QuantityKind kind) {
    double factor = kind.unit().factor();
    String unit = unit(kind);
    double value = kind.fromSi(budget.result().value(), kind.unit());
    String standard =
        "standard uncertainty %s%s, %s"
            .formatted(
                QuantityFormat.plain(budget.result().standardUncertainty() / factor),
                unit,
                freedom(budget.degreesOfFreedom()));
    if (Double.isNaN(budget.coverageFactor())) {
      return QuantityFormat.plain(value) + unit + ", " + standard + ": too few for an interval";
    }
    return "%s%s (k\u00a0=\u00a0%s, %s), %s"
        .formatted(
            QuantityFormat.withExpanded(value, budget.expanded() / factor),
            unit,
            QuantityFormat.fixed(budget.coverageFactor(), 2),
            level(budget),
            standard);
  }

  private static String freedom(double degreesOfFreedom) {
    if (Double.isInfinite(degreesOfFreedom)) {
      return "degrees of freedom infinite";
    }
    return "degrees of freedom "
        + QuantityFormat.plain(
            degreesOfFreedom < 1 ? degreesOfFreedom : Math.floor(degreesOfFreedom));
  }

  private static String level(Budget budget) {
    return QuantityFormat.plain(100 * budget.coverageProbability()) + "\u00a0%";
  }

  private static String unit(QuantityKind kind) {
    String symbol = kind.unit().symbol();
    return symbol.isEmpty() ? "" : "\u00a0" + symbol;
  }

  private static String monteCarlo(MonteCarlo.Outcome outcome, Budget budget, QuantityKind kind) {
    double factor = kind.unit().factor();
    String unit = unit(kind);
    int places = places((outcome.high() - outcome.low()) / factor);
    String text =
        "%s to %s%s (%s), mean %s%s, standard uncertainty %s%s, %s trials"
            .formatted(
                rounded(outcome.low(), kind, places),
                rounded(outcome.high(), kind, places),
                unit,
                level(budget),
                rounded(outcome.mean(), kind, places),
                unit,
                QuantityFormat.plain(outcome.standardUncertainty() / factor),
                unit,
                outcome.trials() + outcome.undefined());
    return outcome.undefined() == 0
        ? text
        : text + "; in " + outcome.undefined() + " of them the values gave no result";
  }

  /** As many decimal places as show the width of an interval with three digits. */
  private static int places(double width) {
    return width > 0 ? 2 - (int) Math.floor(Math.log10(width)) : MOST_PLACES + 1;
  }

  private static String rounded(double si, QuantityKind kind, int places) {
    double value = kind.fromSi(si, kind.unit());
    return places > MOST_PLACES || places < 0
        ? QuantityFormat.plain(value)
        : QuantityFormat.fixed(value, places);
  }

  /** The finest comparison that it passes, else the coarsest. */
  private String verdict(MonteCarlo.Outcome outcome, QuantityKind kind) {
    Validation two = outcome.toTwoDigits();
    Validation one = outcome.toOneDigit();
    if (two.holds() == Validation.Answer.YES) {
      return "holds to 2 digits of the uncertainty" + ends(two, kind);
    }
    return switch (one.holds()) {
      case YES ->
          "holds to 1 digit of the uncertainty, "
              + (two.holds() == Validation.Answer.NO ? "not to 2" : "2 would need more trials")
              + ends(one, kind);
      case NO ->
          terminal.attention("does not hold, take the Monte Carlo interval") + ends(one, kind);
      case UNSETTLED -> "not settled, more trials would tell" + ends(one, kind);
    };
  }

  private static String ends(Validation validation, QuantityKind kind) {
    double factor = kind.unit().factor();
    String unit = unit(kind);
    return (": the ends of the intervals differ by %s and %s%s, allowed is %s%s"
            + " (JCGM 101:2008, clause 8)")
        .formatted(
            QuantityFormat.plain(validation.lowDifference() / factor),
            QuantityFormat.plain(validation.highDifference() / factor),
            unit,
            QuantityFormat.plain(validation.tolerance() / factor),
            unit);
  }
}

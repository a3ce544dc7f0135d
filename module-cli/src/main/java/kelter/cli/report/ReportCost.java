package kelter.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import kelter.cli.text.StepText;
import kelter.core.option.Explained;
import kelter.core.option.Option;
import kelter.core.option.Reasons;
import kelter.core.option.Weighing;
import kelter.core.quantity.QuantityFormat;

/** What the options cost over the years, as they stood before the work. */
final class ReportCost {

  private static final int MOST = 4;

  private ReportCost() {}

  /** The drawing and its table; empty where nothing was weighed. */
  static Optional<Map<String, Object>> of(Explained explained, UnaryOperator<String> words) {
    Weighing weighing = explained.weighing();
    if (weighing.options().isEmpty() || explained.reasons().isEmpty()) {
      return Optional.empty();
    }
    List<Option> options = weighing.options().stream().limit(MOST).toList();
    List<LinesDrawing.Line> lines = new ArrayList<>();
    List<Map<String, Object>> rows = new ArrayList<>();
    for (Option option : options) {
      String letter = String.valueOf((char) ('A' + rows.size()));
      course(explained.reasons().get(), option)
          .ifPresent(course -> lines.add(line(letter, course)));
      rows.add(
          Map.of(
              "title",
              words.apply(letter + ": " + StepText.sentence(option.title())),
              "mean",
              amount(option.annualCost().mean()),
              "span",
              amount(option.annualCost().low()) + " to " + amount(option.annualCost().high()),
              "odds",
              "about " + Math.round(100 * option.probabilityCheapest()) + " of 100 cases"));
    }
    LinesDrawing.About about =
        new LinesDrawing.About(
            "cost",
            "Cost over the years",
            "The ways by letters; the table has their names and figures.",
            "years from now",
            weighing.currency().getCurrencyCode());
    return Optional.of(
        Map.of(
            "currency",
            weighing.currency().getCurrencyCode()
                + (weighing.taxed() ? ", tax included" : ", repair before tax"),
            "drawing",
            LinesDrawing.of(about, lines, List.of()),
            "rows",
            rows,
            "note",
            words.apply(
                "As weighed by what was known before the work; figures are estimates from"
                    + " draws, and rounded.")));
  }

  private static Optional<Reasons.Course> course(Reasons reasons, Option option) {
    return reasons.courses().stream()
        .filter(course -> course.option().equals(option.id()))
        .findFirst();
  }

  private static LinesDrawing.Line line(String letter, Reasons.Course course) {
    double[] years = new double[course.paid().size()];
    double[] paid = new double[years.length];
    for (int i = 0; i < years.length; i++) {
      years[i] = i;
      paid[i] = course.paid().get(i).mean();
    }
    return new LinesDrawing.Line(letter, years, paid);
  }

  private static String amount(double amount) {
    return QuantityFormat.fixed(amount, 0);
  }
}

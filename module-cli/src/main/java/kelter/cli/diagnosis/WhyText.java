package kelter.cli.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import kelter.cli.terminal.Terminal;
import kelter.cli.text.CautionLines;
import kelter.cli.text.Figures;
import kelter.cli.text.Layout;
import kelter.cli.text.SymptomsText;
import kelter.core.diagnosis.Diagnosis;
import kelter.core.diagnosis.Explanation;
import kelter.core.diagnosis.Remedy;
import kelter.core.quantity.QuantityFormat;
import kelter.core.vocabulary.Likelihood;

/** Why a fault is held for as likely as it is, in plain words with numbers. */
public final class WhyText {

  private static final int OPEN_TOLD = 4;

  /** What is less is told as 0.00 without a sign. */
  private static final double LEAST_BITS = 0.005;

  private static final String NOT_MODELLED =
      "No measurement of it is known here: only reports, and what is found elsewhere, tell of it.";

  private static final String BITS_OF_REPORTS =
      "Above 0 speaks for the fault, below 0 against it; 1 bit doubles or halves the odds. Bits of"
          + " reports do not add up: a report that another cause or report explains says little.";

  private final Layout layout;

  private WhyText(Terminal terminal) {
    this.layout = new Layout(terminal);
  }

  /**
   * Writes an explanation.
   *
   * @param explanation the reasons
   * @param permitted the remedies that may be proposed
   * @param terminal where it will be shown
   * @return the text
   */
  public static String of(Explanation explanation, List<Remedy> permitted, Terminal terminal) {
    WhyText text = new WhyText(terminal);
    text.chances(explanation);
    text.readings(explanation);
    text.reports(explanation);
    text.open(explanation);
    text.turning(explanation);
    text.remedies(explanation, permitted);
    return text.layout.toString();
  }

  private void chances(Explanation explanation) {
    Diagnosis.FaultProbability fault = explanation.fault();
    layout.heading(
        "Why %s: %s (%s)"
            .formatted(fault.fault().component(), fault.fault().title(), fault.fault().key()));
    layout.hanging(
        "  ",
        "%s (%s). %s"
            .formatted(
                Figures.percent(fault.probability()),
                Likelihood.of(fault.probability()).words(),
                fault.fault().modelled() ? severity(fault.severity()) : NOT_MODELLED));
    layout.hanging(
        "  ",
        "Before anything was measured: %s; %s."
            .formatted(
                Figures.percent(explanation.prior().probability()),
                explanation.prior().source().display()));
  }

  private static String severity(Diagnosis.Severity severity) {
    if (!severity.isTold()) {
      return "How bad it is, if it is there, nothing tells so far.";
    }
    return ("If it is there, its severity is %s ± %s, from 0 (none) to 1 (total); ± is the standard"
            + " uncertainty times 2.")
        .formatted(
            QuantityFormat.fixed(severity.mean(), 2), QuantityFormat.fixed(2 * severity.sd(), 2));
  }

  private void readings(Explanation explanation) {
    layout.heading("What each reading says by itself");
    if (explanation.evidence().isEmpty()) {
      layout.hanging("  ", "Nothing that it would show in was read.");
      return;
    }
    layout.hanging("  ", "The likeliest other cause: " + explanation.rival() + ".");
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("against nothing wrong", "against that cause", "reading"));
    explanation.evidence().stream()
        .sorted(Comparator.comparingDouble(e -> -Math.abs(e.bits())))
        .forEach(
            e ->
                rows.add(
                    List.of(
                        times(e.bits()),
                        times(e.againstNext()),
                        e.component() + " " + e.observable().replace('-', ' ') + " " + e.shown())));
    layout.table("  ", rows);
  }

  private void reports(Explanation explanation) {
    layout.heading("What each report says beside all the others");
    if (explanation.reports().isEmpty()) {
      layout.hanging("  ", "No symptom of the machine was reported.");
      return;
    }
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("bits", "report"));
    explanation.reports().stream()
        .sorted(Comparator.comparingDouble(report -> -Math.abs(report.bits())))
        .forEach(
            report ->
                rows.add(
                    List.of(
                        bits(report.bits()),
                        SymptomsText.answered(report.symptom(), report.answer()))));
    layout.table("  ", rows);
    layout.hanging("  ", BITS_OF_REPORTS);
  }

  private static String bits(double bits) {
    String figure = QuantityFormat.fixed(bits, 2);
    return bits >= LEAST_BITS ? "+" + figure : figure;
  }

  /**
   * A likelihood ratio in words. The grades are those of the guideline of the European forensic
   * institutes of 2015, from memory.
   */
  private static String times(double bits) {
    double ratio = Math.pow(2, Math.abs(bits));
    if (ratio < 1.3) {
      return "says nothing";
    }
    String strength =
        ratio < 2
            ? "hardly"
            : ratio < 10
                ? "weakly"
                : ratio < 100 ? "moderately" : ratio < 1000 ? "fairly strongly" : "strongly";
    String shown =
        ratio < 10 ? QuantityFormat.fixed(ratio, 1) : ratio < 1e6 ? rounded(ratio) : "> 10^6";
    return strength + (bits > 0 ? " for, " : " against, ") + shown + "\u00a0times";
  }

  /** Two significant digits. */
  private static String rounded(double ratio) {
    double step = Math.pow(10, Math.floor(Math.log10(ratio)) - 1);
    return QuantityFormat.fixed(Math.round(ratio / step) * step, 0);
  }

  private void open(Explanation explanation) {
    layout.heading("What was not measured");
    if (explanation.open().isEmpty()) {
      layout.hanging("  ", "Nothing that would tell much of it.");
    }
    int told = 0;
    for (Diagnosis.NextMeasurement next : explanation.open()) {
      if (told++ < OPEN_TOLD) {
        layout.hanging(
            "  - ",
            "%s: %s, %s\u00a0bits, about %s\u00a0min, %s"
                .formatted(
                    next.question().component(),
                    next.question().observable().title(),
                    QuantityFormat.fixed(next.bits(), 2),
                    QuantityFormat.fixed(next.minutes(), 0),
                    next.question().observable().procedure().hazard().word()));
      }
    }
  }

  private void turning(Explanation explanation) {
    layout.heading("What would change the answer");
    double turning = explanation.prior().turning();
    if (Double.isNaN(turning)) {
      layout.hanging("  ", "No change of what was held of it beforehand, short of certainty.");
    } else {
      double times = turning < 1 ? 1 / turning : turning;
      layout.hanging(
          "  ",
          "Another state would lead if the odds of this fault beforehand were %s times %s."
              .formatted(
                  times < 10
                      ? QuantityFormat.fixed(times, 1)
                      : times < 1e6 ? rounded(times) : "> 10^6",
                  turning < 1 ? "smaller" : "greater"));
    }
  }

  private void remedies(Explanation explanation, List<Remedy> permitted) {
    List<Remedy> told = new ArrayList<>(explanation.fault().fault().remedies());
    told.retainAll(permitted);
    layout.heading("What cures it");
    if (told.isEmpty()) {
      layout.hanging("  - ", "Not for this tool: it is for people licensed or equipped for it.");
    }
    CautionLines cautions = new CautionLines(layout);
    for (Remedy remedy : told) {
      layout.hanging(
          "  - ",
          "%s: %s, %s\u00a0min, with a chance of %s if that is the fault"
              .formatted(
                  remedy.component(),
                  remedy.title(),
                  QuantityFormat.fixed(remedy.minutes(), 0),
                  Figures.percent(remedy.probabilityOfCure())));
      cautions.write("    ", remedy.cautions());
    }
  }
}

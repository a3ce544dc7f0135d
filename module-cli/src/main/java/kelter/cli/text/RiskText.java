package kelter.cli.text;

import java.util.List;
import kelter.core.check.DecisionRule;
import kelter.core.check.Finding;
import kelter.core.check.GuardBand;
import kelter.core.check.Limits;
import kelter.core.check.RiskOfFinding;

/** The risks of a wrong verdict for a person. */
final class RiskText {

  private RiskText() {}

  static void write(List<Finding> findings, DecisionRule rule, Layout layout) {
    layout.heading("Risks of a wrong verdict");
    for (Finding finding : findings) {
      RiskOfFinding.of(finding).ifPresent(risk -> write(finding, risk, rule, layout));
    }
    if (findings.stream().allMatch(finding -> RiskOfFinding.of(finding).isEmpty())) {
      layout.hanging("  ", "There is no value with an uncertainty that is held against a limit.");
      return;
    }
    layout.hanging(
        "  ",
        "After JCGM 106:2012, clauses 8 and 9. The chances over many parts assume that 9 of 10"
            + " conform, normal about the middle of the limits (common practice, no source).");
  }

  private static void write(Finding finding, RiskOfFinding risk, DecisionRule rule, Layout layout) {
    layout.hanging("  ", finding.component() + ": " + finding.title());
    layout.hanging(
        "      ",
        ("Passed, it fails to conform with %s (consumer's risk); rejected, it conforms all the same"
                + " with %s (producer's risk).")
            .formatted(Figures.percent(risk.ifPassed()), Figures.percent(risk.ifRejected())));
    layout.hanging(
        "      ",
        "Guard band for %s: %s; as wide as ± U (k = 2, ILAC-G8): %s."
            .formatted(
                Figures.percent(rule.level()),
                band(finding, GuardBand.at(rule.level(), risk.measured())),
                band(finding, GuardBand.expanded(risk.uncertainty()))));
    risk.overMany()
        .ifPresent(
            many ->
                layout.hanging(
                    "      ",
                    ("Over many parts, passing what reads inside the limits: %s passed that do not"
                            + " conform, %s rejected that do.")
                        .formatted(
                            Figures.percent(many.consumer()), Figures.percent(many.producer()))));
  }

  private static String band(Finding finding, GuardBand band) {
    try {
      Limits accepted = band.acceptance(finding.limits());
      return "pass " + Figures.limits(accepted, finding.kind(), TellingUnit.of(finding));
    } catch (IllegalArgumentException nothingLeft) {
      return "nothing is left to pass";
    }
  }
}

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
    boolean any = false;
    for (Finding finding : findings) {
      if (RiskOfFinding.of(finding).isPresent()) {
        write(finding, RiskOfFinding.of(finding).get(), rule, layout);
        any = true;
      }
    }
    if (!any) {
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
        "Passed, it fails to conform with "
            + Figures.percent(risk.ifPassed())
            + " (consumer's risk); rejected, it conforms all the same with "
            + Figures.percent(risk.ifRejected())
            + " (producer's risk).");
    layout.hanging(
        "      ",
        "Guard band for "
            + Figures.percent(rule.level())
            + ": "
            + band(finding, GuardBand.at(rule.level(), risk.uncertainty()))
            + "; as wide as ± U (k = 2, ILAC-G8): "
            + band(finding, GuardBand.expanded(risk.uncertainty()))
            + ".");
    risk.overMany()
        .ifPresent(
            many ->
                layout.hanging(
                    "      ",
                    "Over many parts, passing what reads inside the limits: "
                        + Figures.percent(many.consumer())
                        + " passed that do not conform, "
                        + Figures.percent(many.producer())
                        + " rejected that do."));
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

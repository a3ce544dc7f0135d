package kelter.cli.text;

import java.util.List;
import kelter.cli.terminal.Terminal;
import kelter.core.check.Finding;
import kelter.core.check.Settling;
import kelter.core.check.Verdict;
import kelter.core.vocabulary.Statement;
import kelter.core.workshop.Case;

/** Findings for a person. */
public final class FindingsText {

  private FindingsText() {}

  /**
   * Writes the findings of a job.
   *
   * @param machine the job with its findings
   * @param risks whether to tell the risks of a wrong verdict
   * @param terminal where they will be shown
   * @return the text, with a line end after the last line
   */
  public static String of(Case machine, boolean risks, Terminal terminal) {
    List<Finding> findings = machine.findings();
    Settling settling = machine.settling();
    Layout layout = new Layout(terminal);
    JobText.write(machine.job(), machine.vocabulary(), layout);
    write(findings, settling, layout, new CautionLines(layout), terminal, true);
    if (risks) {
      RiskText.write(findings, settling.rule(), layout);
    }
    return layout.toString();
  }

  /**
   * Writes findings into a longer text.
   *
   * @param findings the findings
   * @param settling how undecided ones could be settled
   * @param layout where they are written
   * @param cautions the cautions of that text
   * @param terminal where it will be shown
   * @param withSources whether the source of each limit is told
   */
  public static void write(
      List<Finding> findings,
      Settling settling,
      Layout layout,
      CautionLines cautions,
      Terminal terminal,
      boolean withSources) {
    layout.heading("Readings against limits");
    if (findings.isEmpty()) {
      layout.hanging("  ", "There is no reading that could be held against a limit.");
      return;
    }
    for (Finding finding : findings) {
      write(finding, settling, layout, terminal, withSources);
    }
    layout.hanging("  ", "Before you take these readings again:");
    for (Finding finding : findings) {
      cautions.writeNew("  ", finding.cautions());
    }
  }

  /** What was measured and what is allowed; nothing of a part that nobody is to measure. */
  private static String against(Finding finding) {
    boolean limited =
        Double.isFinite(finding.limits().low()) || Double.isFinite(finding.limits().high());
    String measured = Figures.measured(finding);
    if (!limited) {
      return measured.isEmpty() ? "" : measured + ": ";
    }
    return measured + "; allowed " + Figures.limits(finding) + ": ";
  }

  private static void write(
      Finding finding, Settling settling, Layout layout, Terminal terminal, boolean withSource) {
    layout.hanging("  ", finding.component() + ": " + finding.title());
    String verdict = finding.verdict().words();
    boolean needsAttention =
        finding.verdict() == Verdict.DOES_NOT_CONFORM || finding.verdict() == Verdict.UNDECIDED;
    double conformity = finding.judgement().probabilityOfConformity();
    String chance =
        Double.isNaN(conformity) ? "" : " (conformity " + Figures.percent(conformity) + ")";
    layout.hanging(
        "      ",
        against(finding) + (needsAttention ? terminal.attention(verdict) : verdict) + chance);
    if (finding.judgement().assumed()) {
      layout.hanging(
          "      ", "No instrument of known accuracy named: an ordinary one is assumed.");
    }
    for (String sentence : Statement.texts(settling.of(finding))) {
      layout.hanging("      ", sentence);
    }
    if (!finding.remark().isBlank()) {
      layout.hanging("      ", finding.remark());
    }
    if (withSource) {
      layout.hanging("      Source: ", finding.source().display());
    }
  }
}

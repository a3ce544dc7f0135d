package kelter.core.workshop.kind;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kelter.core.catalogue.TypicalMachine;
import kelter.core.catalogue.TypicalMachine.OpenFigure;
import kelter.core.check.Checker;
import kelter.core.check.DecisionRule;
import kelter.core.check.Finding;
import kelter.core.check.Judgement;
import kelter.core.check.Limits;
import kelter.core.check.Verdict;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.source.Source;
import kelter.core.source.Standing;

/**
 * Findings where limits rest on typical figures.
 *
 * <p>Every check is made with each such figure at what is usual, at the low and at the high end of
 * its span. A finding whose limits move with it has the widest limits and is from memory. It
 * conforms only where it does so at all three, and does not conform only where it does so at all
 * three and against the widest limits, since the figure may lie anywhere between. Where only a
 * value above the limits is feared ({@link kelter.core.check.Allowed#fearingAbove()}), it conforms
 * where it lies above none of the three and within one.
 */
public final class TypicalFindings {

  /** The low and the high end of a typical figure: 5 and 95 of 100 machines. */
  private static final double END = 1.6448536269514722;

  private final List<Finding> usual;
  private final Map<String, Spread> spreads = new LinkedHashMap<>();

  /** What became of a finding as figures moved. */
  private record Spread(Limits limits, double leastHigh, boolean agreed, List<String> figures) {

    Spread and(Finding moved, Finding usual, String figure) {
      Limits wider =
          new Limits(
              Math.min(limits.low(), moved.limits().low()),
              Math.max(limits.high(), moved.limits().high()));
      List<String> all = new ArrayList<>(figures);
      if (!all.contains(figure)) {
        all.add(figure);
      }
      return new Spread(
          wider,
          Math.min(leastHigh, moved.limits().high()),
          agreed && moved.verdict() == usual.verdict(),
          all);
    }
  }

  private TypicalFindings(List<Finding> usual) {
    this.usual = usual;
  }

  /**
   * The findings of a job.
   *
   * @param checker the checks
   * @param job the job as it is stated
   * @param machine its machine, in which typical figures stand in
   * @return the findings
   */
  public static List<Finding> of(Checker checker, Job job, TypicalMachine machine) {
    Job usual = job.with(machine.usual());
    Checker finding = checker.findingIn(usual);
    TypicalFindings findings = new TypicalFindings(finding.findings(usual));
    for (int j = 0; j < machine.open().size(); j++) {
      OpenFigure open = machine.open().get(j);
      if (!findings.usual.isEmpty() && open.figure().isOpen() && isRead(job, open.component())) {
        findings.move(finding.findings(job.with(machine.at(j, -END))), open.told());
        findings.move(finding.findings(job.with(machine.at(j, END))), open.told());
      }
    }
    return findings.told(checker.rule());
  }

  private static boolean isRead(Job job, String component) {
    for (Measurement measurement : job.measurements()) {
      if (measurement.component().equals(component)) {
        return true;
      }
    }
    return false;
  }

  private static boolean hasMoved(Limits before, Limits after) {
    return before.low() != after.low() || before.high() != after.high();
  }

  private void move(List<Finding> moved, String figure) {
    for (Finding each : moved) {
      for (Finding before : usual) {
        if (before.id().equals(each.id()) && hasMoved(before.limits(), each.limits())) {
          spreads.put(
              before.id(),
              spreads
                  .getOrDefault(
                      before.id(),
                      new Spread(before.limits(), before.limits().high(), true, List.of()))
                  .and(each, before, figure));
        }
      }
    }
  }

  private List<Finding> told(DecisionRule rule) {
    List<Finding> told = new ArrayList<>();
    for (Finding finding : usual) {
      Spread spread = spreads.get(finding.id());
      told.add(spread == null ? finding : told(finding, spread, rule));
    }
    return List.copyOf(told);
  }

  private static Finding told(Finding finding, Spread spread, DecisionRule rule) {
    Source source =
        new Source(finding.source().document() + ", with typical figures", Standing.FROM_MEMORY);
    if (finding.fearedAbove() && finding.judgement().quantity().isPresent()) {
      Limits strict = new Limits(spread.limits().low(), spread.leastHigh());
      Judgement judgement =
          Judgement.of(
              finding.judgement().quantity().get(), strict, rule, finding.judgement().assumed());
      if (judgement.verdict() == Verdict.CONFORMS) {
        return finding
            .judged(judgement, strict)
            .within(strict, source, remark(finding, spread, false), false);
      }
    }
    boolean open =
        finding.verdict() != Verdict.NOT_MEASURED
            && !(spread.agreed() && isOutside(finding, spread.limits(), rule));
    return finding.within(spread.limits(), source, remark(finding, spread, open), open);
  }

  private static String remark(Finding finding, Spread spread, boolean open) {
    String rests =
        "Typical: "
            + String.join("; ", spread.figures())
            + (open ? ". State what this machine has, to decide it." : ".");
    return finding.remark().isEmpty() ? rests : finding.remark() + " " + rests;
  }

  /** Whether a finding that does not conform does not conform to other limits either. */
  private static boolean isOutside(Finding finding, Limits widest, DecisionRule rule) {
    Judgement usual = finding.judgement();
    return finding.verdict() != Verdict.DOES_NOT_CONFORM
        || usual.quantity().isEmpty()
        || Judgement.of(usual.quantity().get(), widest, rule, usual.assumed()).verdict()
            == Verdict.DOES_NOT_CONFORM;
  }
}

package kelter.cli.diagnosis;

import java.util.ArrayList;
import java.util.List;
import kelter.cli.terminal.Terminal;
import kelter.cli.text.Figures;
import kelter.cli.text.Layout;
import kelter.core.diagnosis.Diagnosis;

/** How the faults would be ranked if some readings or reports were others. */
public final class WhatIfText {

  private static final double TOLD = 0.01;

  private WhatIfText() {}

  /**
   * Writes both rankings beside each other.
   *
   * @param changes the other readings and reports, as they were given
   * @param now the diagnosis of the job as it is
   * @param then the diagnosis with the others
   * @param terminal where it will be shown
   * @return the text
   */
  public static String of(List<String> changes, Diagnosis now, Diagnosis then, Terminal terminal) {
    Layout layout = new Layout(terminal);
    layout.heading("What if " + String.join(" and ", changes));
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("now", "then", "fault"));
    for (Diagnosis.FaultProbability fault : then.faults()) {
      double before = probability(now, fault.fault().key());
      if (before >= TOLD || fault.probability() >= TOLD) {
        rows.add(row(before, fault.probability(), DiagnosisWords.named(fault.fault())));
      }
    }
    rows.add(row(now.healthy(), then.healthy(), "nothing wrong"));
    rows.add(
        row(
            now.unexplained().probability(),
            then.unexplained().probability(),
            "something that no known fault explains"));
    layout.table("  ", rows);
    layout.blank();
    layout.hanging("  Now:  ", DiagnosisWords.conclusion(now));
    layout.hanging("  Then: ", DiagnosisWords.conclusion(then));
    layout.line("The job is as it was: nothing was written.");
    return layout.toString();
  }

  private static double probability(Diagnosis diagnosis, String key) {
    return diagnosis.fault(key).map(Diagnosis.FaultProbability::probability).orElse(0.0);
  }

  private static List<String> row(double before, double after, String words) {
    return List.of(Figures.percent(before), Figures.percent(after), words);
  }
}

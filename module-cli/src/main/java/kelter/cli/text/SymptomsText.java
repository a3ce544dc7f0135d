package kelter.cli.text;

import java.util.ArrayList;
import java.util.List;
import kelter.core.job.Complaint;
import kelter.core.job.SymptomReport;
import kelter.core.job.SymptomReport.Answer;
import kelter.core.vocabulary.Symptom;
import kelter.core.vocabulary.Vocabulary;

/** What was reported of the machine, in words for a person. */
public final class SymptomsText {

  private SymptomsText() {}

  /**
   * A symptom and the answer that was given.
   *
   * @param symptom the symptom
   * @param answer what was said
   * @return for instance {@code stays cold: no}
   */
  public static String answered(Symptom symptom, Answer answer) {
    return symptom.title() + ": " + answer.id();
  }

  /** What is there, and behind it what is not; empty if nothing was reported. */
  static String reported(Complaint complaint, Vocabulary vocabulary) {
    List<String> there = new ArrayList<>();
    List<String> absent = new ArrayList<>();
    for (SymptomReport report : complaint.symptoms()) {
      String title = vocabulary.symptom(report.symptom()).orElseThrow().title();
      (report.answer() == Answer.NO ? absent : there).add(title + circumstances(report));
    }
    List<String> parts = new ArrayList<>();
    if (!there.isEmpty()) {
      parts.add(String.join(", ", there));
    }
    if (!absent.isEmpty()) {
      parts.add("not: " + String.join(", ", absent));
    }
    return String.join("; ", parts);
  }

  private static String circumstances(SymptomReport report) {
    List<String> told = new ArrayList<>();
    if (report.answer() == Answer.SOMETIMES) {
      told.add("sometimes");
    }
    report.when().ifPresent(when -> told.add("when " + when.id()));
    if (!report.step().isBlank()) {
      told.add("step: " + report.step());
    }
    if (!report.since().isBlank()) {
      told.add("since: " + report.since());
    }
    return told.isEmpty() ? "" : " (" + String.join("; ", told) + ")";
  }
}

package kelter.core.diagnosis.engine;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kelter.core.diagnosis.symptom.Background;
import kelter.core.diagnosis.symptom.Report;
import kelter.core.diagnosis.symptom.Reports;
import kelter.core.diagnosis.symptom.WrongReports;
import kelter.core.job.SymptomReport;
import kelter.core.vocabulary.Symptom;

/**
 * The symptoms of which something was said, those that hide them, and what was said, by numbers.
 *
 * @param symptoms the symptoms that are weighed, in the order of their numbers
 * @param said what was said, for the first of them; the others only hide some
 * @param numbers the same as chances
 */
record Asked(List<Symptom> symptoms, List<SymptomReport> said, Reports numbers) {

  /**
   * The chance that somebody says "sometimes" where the symptom is there, and where it is not; from
   * memory.
   */
  private static final double SOMETIMES_IF_THERE = 0.25;

  private static final double SOMETIMES_IF_ABSENT = 0.02;

  /**
   * Sorts what was said.
   *
   * @param known all symptoms of machines
   * @param said what was said of some of them
   * @throws IllegalArgumentException if something was said of one that is not known
   */
  static Asked of(List<Symptom> known, List<SymptomReport> said) {
    Map<String, Symptom> byId = new LinkedHashMap<>();
    for (Symptom symptom : known) {
      byId.put(symptom.id(), symptom);
    }
    Map<String, Symptom> weighed = new LinkedHashMap<>();
    List<Report> reports = new ArrayList<>();
    for (SymptomReport report : said) {
      Symptom symptom = byId.get(report.symptom());
      if (symptom == null) {
        throw new IllegalArgumentException("no symptom '" + report.symptom() + "' is known");
      }
      weighed.put(symptom.id(), symptom);
      reports.add(chances(report.answer(), symptom.misreports()));
    }
    for (Symptom symptom : List.copyOf(weighed.values())) {
      for (String masker : symptom.maskedBy()) {
        if (weighed.putIfAbsent(masker, byId.get(masker)) == null) {
          reports.add(Report.UNASKED);
        }
      }
    }
    List<String> order = List.copyOf(weighed.keySet());
    List<Background> backgrounds = new ArrayList<>();
    for (Symptom symptom : weighed.values()) {
      backgrounds.add(
          new Background(symptom.leak(), symptom.amongUnfounded(), maskers(symptom, order)));
    }
    return new Asked(
        List.copyOf(weighed.values()), List.copyOf(said), new Reports(backgrounds, reports));
  }

  /** The places of those that hide a symptom, if they are weighed. */
  private static int[] maskers(Symptom symptom, List<String> order) {
    return symptom.maskedBy().stream().mapToInt(order::indexOf).filter(i -> i >= 0).toArray();
  }

  static Report chances(SymptomReport.Answer answer, Symptom.Misreports wrong) {
    WrongReports chances =
        new WrongReports(wrong.falseYes(), wrong.falseNo(), wrong.yesWhenMasked());
    return switch (answer) {
      case YES -> Report.yes(chances);
      case NO -> Report.no(chances);
      case SOMETIMES -> new Report(SOMETIMES_IF_THERE, SOMETIMES_IF_ABSENT, wrong.yesWhenMasked());
    };
  }
}

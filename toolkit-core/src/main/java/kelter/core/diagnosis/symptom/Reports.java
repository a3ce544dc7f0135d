package kelter.core.diagnosis.symptom;

import java.util.ArrayList;
import java.util.List;

/**
 * The symptoms of a machine and what was reported of each. Given which symptoms are there, reports
 * are independent of each other.
 *
 * @param symptoms the symptoms; their places are their numbers everywhere else
 * @param reports what was said of each, {@link Report#UNASKED} where nothing was
 */
public record Reports(List<Background> symptoms, List<Report> reports) {

  /**
   * Checks that they fit together.
   *
   * @throws IllegalArgumentException if the lists differ in length, or a masker is not one of the
   *     symptoms, or a symptom masks itself
   */
  public Reports {
    symptoms = List.copyOf(symptoms);
    reports = List.copyOf(reports);
    if (symptoms.size() != reports.size()) {
      throw new IllegalArgumentException(
          symptoms.size() + " symptoms and " + reports.size() + " reports; one each is needed");
    }
    for (int i = 0; i < symptoms.size(); i++) {
      for (int masker : symptoms.get(i).maskers()) {
        if (masker < 0 || masker >= symptoms.size() || masker == i) {
          throw new IllegalArgumentException(
              "symptom " + i + " is masked by " + masker + "; another symptom is allowed");
        }
      }
    }
  }

  /** How many symptoms there are. */
  public int count() {
    return symptoms.size();
  }

  /** A symptom by its number. */
  public Background symptom(int symptom) {
    return symptoms.get(symptom);
  }

  /** What was said of a symptom. */
  public Report report(int symptom) {
    return reports.get(symptom);
  }

  /** The same with another report of one symptom. */
  public Reports with(int symptom, Report report) {
    List<Report> changed = new ArrayList<>(reports);
    changed.set(symptom, report);
    return new Reports(symptoms, changed);
  }

  /** The same with one symptom unasked. */
  public Reports without(int symptom) {
    return with(symptom, Report.UNASKED);
  }
}

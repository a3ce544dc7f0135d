package kelter.core.workshop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.check.Finding;
import kelter.core.job.Job;
import kelter.core.job.SymptomReport;
import kelter.core.safety.Caution;
import kelter.core.vocabulary.Symptom;
import kelter.core.vocabulary.Symptoms;

/**
 * Symptoms that tell of current or fire where none may be. A machine of which one is reported, be
 * it now and then, stays unplugged until the cause is found and the report is answered no. Common
 * practice, no source.
 */
final class ReportedDanger {

  private static final List<Symptom> DANGERS =
      List.of(
          Symptoms.SHOCK_FELT,
          Symptoms.TRIPS_RCD,
          Symptoms.TRIPS_BREAKER,
          Symptoms.SPARKS,
          Symptoms.SMELLS_BURNT);

  private ReportedDanger() {}

  /**
   * One caution for all of them.
   *
   * @param job the job
   * @param findings its findings; what one of them warns of already is left to it
   * @return the caution, or empty if nothing of the kind is reported
   */
  static Optional<Caution> caution(Job job, List<Finding> findings) {
    List<String> reported = new ArrayList<>();
    for (Symptom danger : DANGERS) {
      if (isReported(danger, job) && !isFound(danger, findings)) {
        reported.add(danger.title());
      }
    }
    return reported.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Caution(
                Caution.Signal.DANGER,
                "Electric shock or fire. It is reported that the machine "
                    + String.join(" and ", reported)
                    + ": leave it unplugged until the cause is found and mended.",
                true));
  }

  private static boolean isReported(Symptom danger, Job job) {
    for (SymptomReport report : job.complaint().symptoms()) {
      if (report.symptom().equals(danger.id())) {
        return report.answer() != SymptomReport.Answer.NO;
      }
    }
    return false;
  }

  private static boolean isFound(Symptom danger, List<Finding> findings) {
    for (Finding finding : findings) {
      if (finding.observable().equals(danger.id()) && finding.keepsUnplugged()) {
        return true;
      }
    }
    return false;
  }
}

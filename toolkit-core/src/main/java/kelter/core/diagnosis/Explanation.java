package kelter.core.diagnosis;

import java.util.List;
import java.util.Objects;

/**
 * Why a fault is held for as likely as it is.
 *
 * @param fault the fault, how likely and how bad
 * @param prior what was held of it before anything was measured
 * @param evidence what each reading that speaks of its group of components says for it, by itself:
 *     against nothing being wrong there, and against the rival
 * @param reports what each report of a symptom says for it
 * @param rival the likeliest state of that group without the fault, in words for a person
 * @param open measurements of that group that were not taken, in the order of {@link
 *     Diagnosis#next()}
 */
public record Explanation(
    Diagnosis.FaultProbability fault,
    Diagnosis.Prior prior,
    List<Diagnosis.Evidence> evidence,
    List<Diagnosis.ReportEvidence> reports,
    String rival,
    List<Diagnosis.NextMeasurement> open) {

  public Explanation {
    Objects.requireNonNull(fault);
    Objects.requireNonNull(prior);
    evidence = List.copyOf(evidence);
    reports = List.copyOf(reports);
    Objects.requireNonNull(rival);
    open = List.copyOf(open);
  }
}

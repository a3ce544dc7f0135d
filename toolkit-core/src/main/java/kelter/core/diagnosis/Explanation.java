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
 * @param rival the likeliest state of that group without the fault, in words for a person
 * @param open measurements of that group that were not taken, in the order of {@link
 *     Diagnosis#next()}
 */
public record Explanation(
    Diagnosis.FaultProbability fault,
    Diagnosis.Prior prior,
    List<Diagnosis.Evidence> evidence,
    String rival,
    List<Diagnosis.NextMeasurement> open) {

  public Explanation {
    Objects.requireNonNull(fault);
    Objects.requireNonNull(prior);
    evidence = List.copyOf(evidence);
    Objects.requireNonNull(rival);
    open = List.copyOf(open);
  }
}

package kelter.core.check;

import java.util.List;
import java.util.Optional;
import kelter.core.uncertainty.CoverageFactor;
import kelter.core.uncertainty.ErrorTerm;
import kelter.core.uncertainty.Estimate;
import kelter.core.uncertainty.InputQuantity;

/**
 * What a wrong verdict on one finding would risk.
 *
 * @param measured what is known of the value by its reading, in the coherent SI unit
 * @param ifPassed the specific consumer's risk: the probability that the part does not conform, if
 *     it is passed (JCGM 106:2012, 9.3.2)
 * @param ifRejected the specific producer's risk: the probability that it conforms, if it is
 *     rejected
 * @param overMany the global risks of passing every reading inside the limits, where both limits
 *     are known, for parts of which 9 in 10 conform, normal about the middle of the limits
 */
public record RiskOfFinding(
    InputQuantity measured, double ifPassed, double ifRejected, Optional<ConformityRisk> overMany) {

  /** The share of parts that conform, before one is measured; common practice, no source. */
  private static final double SHARE = 0.9;

  /**
   * The risks of a finding.
   *
   * @param finding the finding
   * @return the risks, or empty if it has no value with an uncertainty or no limit
   */
  public static Optional<RiskOfFinding> of(Finding finding) {
    Optional<InputQuantity> measured = finding.judgement().quantity();
    Limits limits = finding.limits();
    boolean unlimited = Double.isInfinite(limits.low()) && Double.isInfinite(limits.high());
    if (measured.isEmpty() || !(measured.get().estimate().standardUncertainty() > 0) || unlimited) {
      return Optional.empty();
    }
    double conforms = DecisionRule.probabilityOfConformity(measured.get(), limits);
    return Optional.of(
        new RiskOfFinding(
            measured.get(), 1 - conforms, conforms, overMany(limits, measured.get().terms())));
  }

  /**
   * The standard uncertainty of the reading.
   *
   * @return the standard uncertainty, in the coherent SI unit
   */
  public double uncertainty() {
    return measured.estimate().standardUncertainty();
  }

  private static Optional<ConformityRisk> overMany(Limits limits, List<ErrorTerm> errors) {
    double half = (limits.high() - limits.low()) / 2;
    if (!(half > 0) || Double.isInfinite(half)) {
      return Optional.empty();
    }
    double spread = half / CoverageFactor.of(SHARE, Double.POSITIVE_INFINITY);
    Estimate prior = new Estimate(limits.low() + half, spread);
    return Optional.of(ConformityRisk.of(prior, errors, limits, limits));
  }
}

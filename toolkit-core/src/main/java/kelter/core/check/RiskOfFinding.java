package kelter.core.check;

import java.util.Optional;
import kelter.core.uncertainty.CoverageFactor;
import kelter.core.uncertainty.Estimate;

/**
 * What a wrong verdict on one finding would risk.
 *
 * @param uncertainty the standard uncertainty of the reading, in the coherent SI unit
 * @param ifPassed the specific consumer's risk: the probability that the part does not conform, if
 *     it is passed (JCGM 106:2012, 9.3.2)
 * @param ifRejected the specific producer's risk: the probability that it conforms, if it is
 *     rejected
 * @param overMany the global risks of passing every reading inside the limits, where both limits
 *     are known, for parts of which 9 in 10 conform, normal about the middle of the limits
 */
public record RiskOfFinding(
    double uncertainty, double ifPassed, double ifRejected, Optional<ConformityRisk> overMany) {

  /** The share of parts that conform, before one is measured; common practice, no source. */
  private static final double SHARE = 0.9;

  /**
   * The risks of a finding.
   *
   * @param finding the finding
   * @return the risks, or empty if it has no value with an uncertainty or no limit
   */
  public static Optional<RiskOfFinding> of(Finding finding) {
    Optional<Estimate> measured = finding.judgement().measured();
    Limits limits = finding.limits();
    boolean unlimited = Double.isInfinite(limits.low()) && Double.isInfinite(limits.high());
    if (measured.isEmpty() || !(measured.get().standardUncertainty() > 0) || unlimited) {
      return Optional.empty();
    }
    double conforms = DecisionRule.probabilityOfConformity(measured.get(), limits);
    if (Double.isNaN(conforms)) {
      return Optional.empty();
    }
    double u = measured.get().standardUncertainty();
    return Optional.of(new RiskOfFinding(u, 1 - conforms, conforms, overMany(limits, u)));
  }

  private static Optional<ConformityRisk> overMany(Limits limits, double u) {
    double half = (limits.high() - limits.low()) / 2;
    if (!(half > 0) || Double.isInfinite(half) || Double.isInfinite(u)) {
      return Optional.empty();
    }
    double spread = half / CoverageFactor.of(SHARE, Double.POSITIVE_INFINITY);
    Estimate prior = new Estimate(limits.low() + half, spread);
    return Optional.of(ConformityRisk.of(prior, u, limits, limits));
  }
}

package kelter.core.check;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import kelter.core.numeric.Simpson;
import kelter.core.uncertainty.ErrorTerm;
import kelter.core.uncertainty.Estimate;
import kelter.core.uncertainty.InputQuantity;
import kelter.core.uncertainty.Normal;

/**
 * How often a measured part is judged wrongly, over many parts (JCGM 106:2012, clause 9): the
 * consumer's risk, that one does not conform and is accepted, and the producer's risk, that one
 * conforms and is rejected. True values are normal, errors of measurement as they are distributed.
 *
 * @param consumer the global consumer's risk (9.5.2), from 0 to 1
 * @param producer the global producer's risk (9.5.3), from 0 to 1
 */
public record ConformityRisk(double consumer, double producer) {

  /** Beyond this many standard deviations a normal distribution has nothing, to 1e-18. */
  private static final double FAR = 9;

  private static final int PANELS = 60;

  /**
   * The risks with a normal error of measurement.
   *
   * @param prior what is known of the parts before any is measured: mean and standard deviation
   *     above zero
   * @param measurement the standard uncertainty of a measurement, above zero, same unit
   * @param tolerance what a part may be
   * @param acceptance which measured values are accepted
   * @return the risks
   * @throws IllegalArgumentException if a spread is not finite and above zero
   */
  public static ConformityRisk of(
      Estimate prior, double measurement, Limits tolerance, Limits acceptance) {
    if (!(measurement >= 0) || Double.isInfinite(measurement)) {
      throw noSpread();
    }
    return of(prior, List.of(ErrorTerm.normal(measurement)), tolerance, acceptance);
  }

  /**
   * The risks.
   *
   * @param prior what is known of the parts before any is measured: mean and standard deviation
   *     above zero
   * @param errors the errors of a measurement, not all of them zero, same unit
   * @param tolerance what a part may be
   * @param acceptance which measured values are accepted
   * @return the risks
   * @throws IllegalArgumentException if a spread is not finite and above zero
   */
  public static ConformityRisk of(
      Estimate prior, List<ErrorTerm> errors, Limits tolerance, Limits acceptance) {
    double spread = prior.standardUncertainty();
    double measurement = new InputQuantity(0, errors).estimate().standardUncertainty();
    if (!(spread > 0 && measurement > 0) || Double.isInfinite(spread + measurement)) {
      throw noSpread();
    }
    double[] edges = edges(prior, measurement, tolerance, acceptance);
    double consumer = 0;
    double producer = 0;
    for (int i = 0; i + 1 < edges.length; i++) {
      boolean conforms = tolerance.contain(edges[i] / 2 + edges[i + 1] / 2);
      DoubleUnaryOperator density = x -> wrong(prior, errors, acceptance, conforms, x);
      double wrong = Simpson.integral(density, edges[i], edges[i + 1], PANELS);
      consumer += conforms ? 0 : wrong; // equations (17) and (18)
      producer += conforms ? wrong : 0; // equations (19) and (20)
    }
    return new ConformityRisk(consumer, producer);
  }

  private static IllegalArgumentException noSpread() {
    return new IllegalArgumentException(
        "the parts and the measurement both have a spread that is finite and above zero");
  }

  /** Where the integrand bends: the limits, and where a measurement can still be on either side. */
  private static double[] edges(
      Estimate prior, double measurement, Limits tolerance, Limits acceptance) {
    double from = prior.value() - FAR * prior.standardUncertainty();
    double to = prior.value() + FAR * prior.standardUncertainty();
    double near = FAR * measurement;
    double[] edges = {
      from,
      to,
      tolerance.low(),
      tolerance.high(),
      acceptance.low() - near,
      acceptance.low(),
      acceptance.low() + near,
      acceptance.high() - near,
      acceptance.high(),
      acceptance.high() + near
    };
    return Arrays.stream(edges).filter(x -> x >= from && x <= to).sorted().toArray();
  }

  /** How often a part of this value comes and is judged wrongly, per unit of the value. */
  private static double wrong(
      Estimate prior, List<ErrorTerm> errors, Limits acceptance, boolean conforms, double x) {
    double z = (x - prior.value()) / prior.standardUncertainty();
    double density = Math.exp(Normal.logDensity(z)) / prior.standardUncertainty();
    double accepted =
        DecisionRule.probabilityOfConformity(new InputQuantity(x, errors), acceptance);
    return density * (conforms ? 1 - accepted : accepted);
  }
}

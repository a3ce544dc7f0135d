package kelter.core.check;

import java.util.List;
import java.util.Optional;
import kelter.core.job.Evaluation;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import kelter.core.uncertainty.Estimate;
import kelter.core.vocabulary.Observable;

/**
 * A measurement held against limits.
 *
 * @param measured the estimate in the coherent SI unit, or empty for a reading without a value
 * @param probabilityOfConformity from 0 to 1; NaN where the reading cannot tell
 * @param verdict the verdict
 * @param assumed whether the accuracy of an ordinary instrument had to be assumed
 */
public record Judgement(
    Optional<Estimate> measured, double probabilityOfConformity, Verdict verdict, boolean assumed) {

  /**
   * Holds a measurement against limits.
   *
   * @param job the job, for its instruments
   * @param measurement a measurement of the job
   * @param observable what was measured
   * @param limits what it may be
   * @param rule when a verdict may be given
   * @return the judgement
   */
  public static Judgement of(
      Job job, Measurement measurement, Observable observable, Limits limits, DecisionRule rule) {
    Optional<Evaluation> evaluation = Evaluation.of(job, measurement, observable);
    if (evaluation.isPresent()) {
      return of(evaluation.get().estimate(), limits, rule, evaluation.get().assumed());
    }
    double probability = withoutValue(measurement.readings(), limits);
    Verdict verdict = Double.isNaN(probability) ? Verdict.UNDECIDED : rule.verdict(probability);
    return new Judgement(Optional.empty(), probability, verdict, false);
  }

  /**
   * Holds an estimate against limits.
   *
   * @param estimate the estimate in the coherent SI unit
   * @param limits what it may be
   * @param rule when a verdict may be given
   * @param assumed whether the accuracy of an ordinary instrument had to be assumed
   * @return the judgement
   */
  public static Judgement of(Estimate estimate, Limits limits, DecisionRule rule, boolean assumed) {
    double probability = DecisionRule.probabilityOfConformity(estimate, limits);
    return new Judgement(
        Optional.of(estimate), probability, rule.verdict(estimate, limits), assumed);
  }

  /**
   * What is left of a judgement against limits of which nobody has said that they hold: that the
   * reading conforms, since it then does so whatever holds, and otherwise nothing.
   *
   * @return this where the verdict is that it conforms; else undecided, with no probability, unless
   *     nothing was measured
   */
  public Judgement onlyIfConforming() {
    return verdict == Verdict.CONFORMS || verdict == Verdict.NOT_MEASURED
        ? this
        : new Judgement(measured, Double.NaN, Verdict.UNDECIDED, assumed);
  }

  /** 0 or 1 where every reading settles the matter in the same way, otherwise NaN. */
  private static double withoutValue(List<Reading> readings, Limits limits) {
    double settled = withoutValue(readings.get(0), limits);
    for (Reading reading : readings) {
      if (withoutValue(reading, limits) != settled) {
        return Double.NaN;
      }
    }
    return settled;
  }

  /** 0 or 1 where a reading without a value settles the matter, otherwise NaN. */
  private static double withoutValue(Reading reading, Limits limits) {
    double least = reading.least();
    double most = reading.most();
    if (reading instanceof Reading.Value) {
      return Double.NaN;
    }
    if (least > limits.high() || most < limits.low()) {
      return 0;
    }
    // Over range does not tell how far: whether it is enough stays open.
    return least < most && least >= limits.low() && most <= limits.high() ? 1 : Double.NaN;
  }
}

package kelter.core.check;

import java.util.List;
import java.util.Optional;
import kelter.core.job.Evaluation;
import kelter.core.job.Instrument;
import kelter.core.job.Reading;
import kelter.core.problem.Required;
import kelter.core.uncertainty.Estimate;
import kelter.core.uncertainty.InputQuantity;
import kelter.core.vocabulary.Observable;

/**
 * A measurement held against limits.
 *
 * @param quantity what is known of the value, in the coherent SI unit, or empty for a reading
 *     without a value
 * @param probabilityOfConformity from 0 to 1; NaN where the reading cannot tell
 * @param verdict the verdict
 * @param assumed whether the accuracy of an ordinary instrument had to be assumed
 */
public record Judgement(
    Optional<InputQuantity> quantity,
    double probabilityOfConformity,
    Verdict verdict,
    boolean assumed) {

  /**
   * Checks that it can be told.
   *
   * @throws NullPointerException if anything is null
   * @throws IllegalArgumentException if the probability does not lie between 0 and 1, or something
   *     conforms of which nothing can be told
   */
  public Judgement {
    Required.optional(quantity, "the quantity of a judgement");
    Required.value(verdict, "the verdict of a judgement");
    boolean told = probabilityOfConformity >= 0 && probabilityOfConformity <= 1;
    if (!told && !(Double.isNaN(probabilityOfConformity) && verdict != Verdict.CONFORMS)) {
      throw new IllegalArgumentException(
          verdict.words() + " with a probability of conformity of " + probabilityOfConformity);
    }
  }

  /** No verdict, since there is nothing to hold against anything. */
  static final Judgement NOT_MEASURED =
      new Judgement(Optional.empty(), Double.NaN, Verdict.NOT_MEASURED, false);

  /**
   * The estimate with all errors combined.
   *
   * @return the estimate in the coherent SI unit, or empty for a reading without a value
   */
  public Optional<Estimate> measured() {
    return quantity.isPresent() ? Optional.of(quantity.get().estimate()) : Optional.empty();
  }

  /**
   * Holds a measurement against limits. A reading over range is beyond the greatest value that its
   * instrument can show, or that the observable can be where the range is not stated.
   *
   * @param measured a measurement of a job
   * @param limits what it may be
   * @param rule when a verdict may be given
   * @return the judgement
   */
  public static Judgement of(Measured measured, Limits limits, DecisionRule rule) {
    Optional<Evaluation> evaluation =
        Evaluation.of(measured.job(), measured.measurement(), measured.observable());
    if (evaluation.isPresent()) {
      return of(evaluation.get().quantity(), limits, rule, evaluation.get().assumed());
    }
    double probability =
        withoutValue(measured.measurement().readings(), limits, endOfRange(measured));
    Verdict verdict = Double.isNaN(probability) ? Verdict.UNDECIDED : rule.verdict(probability);
    return new Judgement(Optional.empty(), probability, verdict, false);
  }

  private static double endOfRange(Measured measured) {
    Observable observable = measured.observable();
    Optional<String> named = measured.measurement().instrument();
    Optional<Instrument> meter =
        named.isPresent() ? measured.job().instrument(named.get()) : Optional.empty();
    Optional<Instrument.Function> greatest =
        meter.isPresent()
            ? meter.get().range(observable.kind(), Double.POSITIVE_INFINITY)
            : Optional.empty();
    return greatest.isPresent() && Double.isFinite(greatest.get().end())
        ? greatest.get().end()
        : observable.span().high();
  }

  /**
   * Holds an estimate with a normal distribution around it against limits.
   *
   * @param estimate the estimate in the coherent SI unit
   * @param limits what it may be
   * @param rule when a verdict may be given
   * @param assumed whether the accuracy of an ordinary instrument had to be assumed
   * @return the judgement
   */
  public static Judgement of(Estimate estimate, Limits limits, DecisionRule rule, boolean assumed) {
    boolean finite = Double.isFinite(estimate.value() + estimate.standardUncertainty());
    return finite
        ? of(InputQuantity.normal(estimate), limits, rule, assumed)
        : new Judgement(Optional.empty(), Double.NaN, Verdict.NOT_MEASURED, assumed);
  }

  /**
   * Holds a value against limits, with each error as it is distributed.
   *
   * @param quantity what is known of the value, in the coherent SI unit
   * @param limits what it may be
   * @param rule when a verdict may be given
   * @param assumed whether the accuracy of an ordinary instrument had to be assumed
   * @return the judgement
   */
  public static Judgement of(
      InputQuantity quantity, Limits limits, DecisionRule rule, boolean assumed) {
    double probability = DecisionRule.probabilityOfConformity(quantity, limits);
    return new Judgement(
        Optional.of(quantity), probability, rule.verdict(quantity, limits), assumed);
  }

  /**
   * What is left of a judgement against limits of which nobody has said that they hold: that the
   * reading conforms, since it then does so whatever holds, and otherwise nothing.
   *
   * @return this where the verdict is that it conforms; else undecided, with no probability, unless
   *     nothing was measured
   */
  public Judgement onlyIfConforming() {
    return verdict == Verdict.CONFORMS || verdict == Verdict.NOT_MEASURED ? this : undecided();
  }

  /**
   * The same without a verdict, since the limits are open.
   *
   * @return an undecided judgement with no probability
   */
  Judgement undecided() {
    return new Judgement(quantity, Double.NaN, Verdict.UNDECIDED, assumed);
  }

  /** 0 or 1 where every reading settles the matter in the same way, otherwise NaN. */
  private static double withoutValue(List<Reading> readings, Limits limits, double endOfRange) {
    double settled = withoutValue(readings.get(0), limits, endOfRange);
    for (Reading reading : readings) {
      if (withoutValue(reading, limits, endOfRange) != settled) {
        return Double.NaN;
      }
    }
    return settled;
  }

  /** 0 or 1 where a reading without a value settles the matter, otherwise NaN. */
  private static double withoutValue(Reading reading, Limits limits, double endOfRange) {
    if (reading instanceof Reading.OverRange) {
      return limits.high() < endOfRange ? 0 : Double.NaN;
    }
    if (reading instanceof Reading.Value) {
      return Double.NaN;
    }
    if (reading.least() > limits.high() || reading.most() < limits.low()) {
      return 0;
    }
    return reading.least() >= limits.low() && reading.most() <= limits.high() ? 1 : Double.NaN;
  }
}

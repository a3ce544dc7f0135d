package kelter.hydraulics.check;

import java.util.List;
import java.util.Optional;
import kelter.core.check.DecisionRule;
import kelter.core.check.Finding;
import kelter.core.check.Judgement;
import kelter.core.check.Limits;
import kelter.core.check.Verdict;
import kelter.core.job.Evaluation;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.quantity.Quantity;
import kelter.core.source.Source;
import kelter.core.vocabulary.Observable;

/**
 * A measurement held against limits and told as a finding.
 *
 * @param check the id of the check
 * @param title what is held against what, for a person
 * @param observable what was measured
 * @param source where the limits come from
 */
record Told(String check, String title, Observable observable, Source source) {

  private static final Limits NO_LIMITS =
      new Limits(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

  Finding finding(
      Job job, Measurement measurement, Limits limits, DecisionRule rule, String remark) {
    Judgement judgement = Judgement.of(job, measurement, observable, limits, rule);
    return finding(job, measurement, limits, judgement, remark);
  }

  /** A finding without a verdict, for a reading to which no limits can be found. */
  Finding without(Job job, Measurement measurement, String why) {
    Judgement none = new Judgement(Optional.empty(), Double.NaN, Verdict.NOT_MEASURED, false);
    return finding(job, measurement, NO_LIMITS, none, why);
  }

  private Finding finding(
      Job job, Measurement measurement, Limits limits, Judgement judgement, String remark) {
    return new Finding(
        check + "." + measurement.component(),
        measurement.component(),
        observable.id(),
        title,
        shown(job, measurement),
        observable.kind(),
        observable.kind().unit(),
        judgement,
        limits,
        source,
        List.copyOf(observable.procedure().cautions()),
        remark);
  }

  private String shown(Job job, Measurement measurement) {
    return Evaluation.of(job, measurement, observable)
        .map(Evaluation::estimate)
        .map(e -> Quantity.ofSi(e.value(), e.standardUncertainty(), observable.kind()).display())
        .orElse("no value");
  }
}

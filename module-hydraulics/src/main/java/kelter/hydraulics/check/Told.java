package kelter.hydraulics.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import kelter.core.check.DecisionRule;
import kelter.core.check.Finding;
import kelter.core.check.Judgement;
import kelter.core.check.Limits;
import kelter.core.check.Measured;
import kelter.core.check.Verdict;
import kelter.core.job.Component;
import kelter.core.job.Evaluation;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.quantity.Quantity;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.core.uncertainty.Estimate;
import kelter.core.vocabulary.Observable;

/**
 * A measurement held against limits and told as a finding.
 *
 * @param check the id of the check
 * @param title what is held against what, for a person
 * @param observable what was measured
 * @param source where the limits come from
 * @param more what to mind beyond the cautions of the procedure
 */
record Told(String check, String title, Observable observable, Source source, List<Caution> more) {

  Told(String check, String title, Observable observable, Source source) {
    this(check, title, observable, source, List.of());
  }

  Told minding(Caution caution) {
    return new Told(check, title, observable, source, List.of(caution));
  }

  /** Whether the job has a reading of the observable, so that the rest need not be worked out. */
  boolean isRead(Job job, Component component) {
    for (Measurement measurement : job.measurements()) {
      if (measurement.component().equals(component.id())
          && measurement.observable().equals(observable.id())) {
        return true;
      }
    }
    return false;
  }

  /**
   * A finding for each measurement of the observable.
   *
   * @param limits the limits of a measurement; if it throws, the finding has no verdict and says
   *     why
   */
  List<Finding> each(
      Job job,
      Component component,
      DecisionRule rule,
      String remark,
      Function<Measurement, Limits> limits) {
    List<Finding> findings = new ArrayList<>();
    for (Measurement measurement : job.measurements(component.id(), observable.id())) {
      try {
        findings.add(finding(job, measurement, limits.apply(measurement), rule, remark));
      } catch (IllegalArgumentException impossible) {
        findings.add(without(job, measurement, impossible.getMessage()));
      }
    }
    return findings;
  }

  /** A finding for each measurement of the observable, all against the same limits. */
  List<Finding> each(
      Job job, Component component, DecisionRule rule, String remark, Limits limits) {
    List<Finding> findings = new ArrayList<>();
    for (Measurement measurement : job.measurements(component.id(), observable.id())) {
      findings.add(finding(job, measurement, limits, rule, remark));
    }
    return findings;
  }

  private static final Limits NO_LIMITS =
      new Limits(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

  Finding finding(
      Job job, Measurement measurement, Limits limits, DecisionRule rule, String remark) {
    Judgement judgement =
        Judgement.of(
            new Measured(
                job,
                job.appliance().component(measurement.component()).orElseThrow(),
                observable,
                measurement),
            limits,
            rule);
    return finding(job, measurement, limits, judgement, remark);
  }

  /** A finding without a verdict, for a reading to which no limits can be found. */
  Finding without(Job job, Measurement measurement, String why) {
    Judgement none = new Judgement(Optional.empty(), Double.NaN, Verdict.NOT_MEASURED, false);
    return finding(job, measurement, NO_LIMITS, none, why);
  }

  /** The same for each of some readings. */
  List<Finding> without(Job job, List<Measurement> measurements, String why) {
    List<Finding> findings = new ArrayList<>();
    for (Measurement measurement : measurements) {
      findings.add(without(job, measurement, why));
    }
    return findings;
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
        cautions(),
        remark);
  }

  private List<Caution> cautions() {
    List<Caution> all = new ArrayList<>(observable.procedure().cautions());
    all.addAll(more);
    return all;
  }

  private String shown(Job job, Measurement measurement) {
    Optional<Evaluation> evaluation = Evaluation.of(job, measurement, observable);
    if (evaluation.isEmpty()) {
      return "no value";
    }
    Estimate estimate = evaluation.get().estimate();
    return Quantity.ofSi(estimate.value(), estimate.standardUncertainty(), observable.kind())
        .display();
  }
}

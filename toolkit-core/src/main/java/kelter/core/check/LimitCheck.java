package kelter.core.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.job.Component;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import kelter.core.quantity.Unit;
import kelter.core.safety.Caution;
import kelter.core.vocabulary.ComponentKind;
import kelter.core.vocabulary.Observable;

/**
 * Holds every reading of one observable of a kind of component against the limits that a rule
 * gives.
 *
 * @param id the id of the check
 * @param title what it asks
 * @param kind the kind of component that it looks at
 * @param observable what must have been read
 * @param rule gives the limits of a reading
 */
public record LimitCheck(
    String id, String title, ComponentKind kind, Observable observable, LimitRule rule)
    implements Check {

  private static final Limits NONE = new Limits(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

  /**
   * Begins a check.
   *
   * @param id the id of the check
   * @param title what it asks
   * @return what lacks only where it looks
   */
  public static Named named(String id, String title) {
    return new Named(id, title);
  }

  /**
   * A check of which only id and title are said.
   *
   * @param id the id of the check
   * @param title what it asks
   */
  public record Named(String id, String title) {

    /**
     * Says where it looks.
     *
     * @param kind the kind of component that it looks at
     * @param observable what must have been read
     * @param rule gives the limits of a reading
     * @return the check
     */
    public LimitCheck on(ComponentKind kind, Observable observable, LimitRule rule) {
      return new LimitCheck(id, title, kind, observable, rule);
    }
  }

  @Override
  public List<Finding> apply(Job job, DecisionRule decision) {
    List<Finding> findings = new ArrayList<>();
    for (Component component : job.appliance().components()) {
      if (kind.id().equals(component.kind())) {
        for (Measurement measurement : job.measurements(component.id(), observable.id())) {
          Measured measured = new Measured(job, component, observable, measurement);
          Optional<Allowed> allowed = rule.allowed(measured);
          if (allowed.isPresent()) {
            findings.add(finding(measured, allowed.get(), decision));
          }
        }
      }
    }
    return findings;
  }

  private Finding finding(Measured measured, Allowed allowed, DecisionRule decision) {
    Limits limits = allowed.limits().orElse(NONE);
    Judgement judgement =
        allowed.limits().isPresent()
            ? Judgement.of(measured, limits, decision)
            : Judgement.NOT_MEASURED;
    if (allowed.otherwise().isPresent() && judgement.verdict() != Verdict.DOES_NOT_CONFORM) {
      limits = allowed.otherwise().get();
      judgement = Judgement.of(measured, limits, decision).onlyIfConforming();
    }
    return new Finding(
        id + "." + measured.component().id(),
        measured.component().id(),
        observable.id(),
        allowed.title(),
        measured.measurement().shown(),
        observable.kind(),
        unit(measured.measurement()),
        judgement,
        limits,
        allowed.source(),
        cautions(allowed, judgement.verdict()),
        allowed.remark(),
        allowed.fearedAbove());
  }

  private List<Caution> cautions(Allowed allowed, Verdict verdict) {
    List<Caution> cautions = new ArrayList<>();
    if (verdict == Verdict.DOES_NOT_CONFORM && allowed.ifNot().isPresent()) {
      cautions.add(allowed.ifNot().get());
    }
    cautions.addAll(observable.procedure().cautions());
    cautions.addAll(allowed.cautions());
    return cautions;
  }

  private Unit unit(Measurement measurement) {
    return measurement.readings().get(0) instanceof Reading.Value value
        ? value.quantity().unit()
        : observable.kind().unit();
  }
}

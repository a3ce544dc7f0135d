package kelter.electrical.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import kelter.core.check.Check;
import kelter.core.check.DecisionRule;
import kelter.core.check.Finding;
import kelter.core.check.Judgement;
import kelter.core.check.Limits;
import kelter.core.check.Verdict;
import kelter.core.job.Component;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import kelter.core.quantity.Unit;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.core.vocabulary.Observable;

/**
 * Holds every reading of one observable on components of some kinds against the limits that a rule
 * gives.
 *
 * @param id the id of the check
 * @param title what it asks
 * @param kinds the kinds of components it looks at
 * @param observable what must have been read
 * @param rule gives the limits of a reading, or none if the job lacks the figures
 */
record LimitCheck(String id, String title, List<String> kinds, Observable observable, Rule rule)
    implements Check {

  /** Gives the limits of a reading. */
  @FunctionalInterface
  interface Rule {

    /**
     * What a reading may be.
     *
     * @param job the job
     * @param component the component that was measured
     * @param measurement what was read
     * @return the limits, or empty if the job lacks the figures
     */
    Optional<Allowed> of(Job job, Component component, Measurement measurement);
  }

  /**
   * What a reading may be.
   *
   * @param limits the limits in the coherent SI unit
   * @param source where they come from
   * @param title what is held against what
   * @param remark what the verdict rests on
   * @param ifNot what to mind where the reading does not conform
   */
  record Allowed(
      Limits limits, Source source, String title, String remark, Optional<Caution> ifNot) {}

  @Override
  public List<Finding> apply(Job job, DecisionRule decision) {
    List<Finding> findings = new ArrayList<>();
    for (Component component : job.appliance().components()) {
      if (kinds.contains(component.kind())) {
        addTo(findings, job, component, decision);
      }
    }
    return findings;
  }

  private void addTo(List<Finding> findings, Job job, Component component, DecisionRule decision) {
    int place = 0;
    for (Measurement measurement : job.measurements(component.id(), observable.id())) {
      place++;
      String name = id + "." + component.id() + (place > 1 ? "-" + place : "");
      rule.of(job, component, measurement)
          .map(allowed -> finding(name, job, measurement, allowed, decision))
          .ifPresent(findings::add);
    }
  }

  private Finding finding(
      String name, Job job, Measurement measurement, Allowed allowed, DecisionRule decision) {
    Judgement judgement = Judgement.of(job, measurement, observable, allowed.limits(), decision);
    List<Caution> cautions = new ArrayList<>(observable.procedure().cautions());
    if (judgement.verdict() == Verdict.DOES_NOT_CONFORM) {
      allowed.ifNot().ifPresent(caution -> cautions.add(0, caution));
    }
    return new Finding(
        name,
        measurement.component(),
        observable.id(),
        allowed.title(),
        shown(measurement),
        observable.kind(),
        unit(measurement),
        judgement,
        allowed.limits(),
        allowed.source(),
        cautions,
        allowed.remark());
  }

  private Unit unit(Measurement measurement) {
    return measurement.readings().get(0) instanceof Reading.Value value
        ? value.quantity().unit()
        : observable.kind().unit();
  }

  private static String shown(Measurement measurement) {
    return measurement.readings().stream().map(LimitCheck::shown).collect(Collectors.joining(", "));
  }

  private static String shown(Reading reading) {
    if (reading instanceof Reading.Value value) {
      return value.quantity().display();
    }
    if (reading instanceof Reading.Below below) {
      return "below " + below.limit().display();
    }
    if (reading instanceof Reading.Above above) {
      return "above " + above.limit().display();
    }
    if (reading instanceof Reading.Grade grade) {
      return grade.word();
    }
    if (reading instanceof Reading.YesNo yesNo) {
      return yesNo.yes() ? "yes" : "no";
    }
    return "over range";
  }
}

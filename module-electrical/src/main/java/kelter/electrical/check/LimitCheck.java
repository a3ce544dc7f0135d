package kelter.electrical.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.check.Check;
import kelter.core.check.DecisionRule;
import kelter.core.check.Finding;
import kelter.core.check.Judgement;
import kelter.core.check.Limits;
import kelter.core.check.Measured;
import kelter.core.check.Verdict;
import kelter.core.job.Component;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.job.Reading;
import kelter.core.quantity.Unit;
import kelter.core.safety.Caution;
import kelter.core.source.Source;
import kelter.core.vocabulary.Observable;
import kelter.electrical.component.HeaterKinds;

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

  /**
   * What a reading may be.
   *
   * @param limits the limits in the coherent SI unit
   * @param source where they come from
   * @param title what is held against what
   * @param remark what the verdict rests on
   * @param ifNot what to mind where the reading does not conform
   * @param otherwise stricter limits that hold instead if the machine is of a protection class that
   *     its nameplate does not tell; what lies between both is undecided
   */
  record Allowed(
      Limits limits,
      Source source,
      String title,
      String remark,
      Optional<Caution> ifNot,
      Optional<Limits> otherwise) {

    /** Limits that depend on nothing untold. */
    Allowed(Limits limits, Source source, String title, String remark, Optional<Caution> ifNot) {
      this(limits, source, title, remark, ifNot, Optional.empty());
    }

    /** The same where the class is not told. */
    Allowed orIfOfAnotherClass(Limits stricter) {
      return new Allowed(limits, source, title, remark, ifNot, Optional.of(stricter));
    }
  }

  /**
   * What gives the limits of a reading. The classes that work them out are looked up when there is
   * such a reading, so that a job waits for none but its own.
   */
  enum Rule {
    HEATER_RESISTANCE,
    HEATER_INSULATION,
    APPLIANCE_INSULATION,
    PROTECTIVE_CONDUCTOR,
    CONDUCTOR_CURRENT,
    TOUCH_CURRENT,
    SENSOR_RESISTANCE,
    HEATER_POWER,
    HEATER_CURRENT,
    HEATER_VOLTAGE,
    HEATING_RATE,
    AIR_RISE,
    SHOWN_TEMPERATURE,
    CONTACT_DROP,
    SUPPLY;

    /**
     * What a reading may be.
     *
     * @param job the job
     * @param part the component that was measured
     * @param measurement what was read
     * @return the limits, or empty if the job lacks the figures
     */
    Optional<Allowed> allowed(Job job, Component part, Measurement measurement) {
      return switch (this) {
        case HEATER_RESISTANCE -> HeaterRule.of(job, part, measurement);
        case HEATER_INSULATION -> InsulationRule.heater(job, part, measurement);
        case APPLIANCE_INSULATION -> InsulationRule.appliance(job, part, measurement);
        case PROTECTIVE_CONDUCTOR -> ContinuityRule.protectiveConductor(job, part, measurement);
        case CONDUCTOR_CURRENT -> LeakageRule.conductor(job, part, measurement);
        case TOUCH_CURRENT -> LeakageRule.touch(job, part, measurement);
        case SENSOR_RESISTANCE -> SensorRule.of(job, part, measurement);
        case HEATER_POWER -> InputRule.power(job, part, measurement);
        case HEATER_CURRENT -> InputRule.current(job, part, measurement);
        case HEATER_VOLTAGE -> HeatingRule.voltage(job, part, measurement);
        case HEATING_RATE -> HeatingRule.rate(job, part, measurement);
        case AIR_RISE -> HeatingRule.airRise(job, part, measurement);
        case SHOWN_TEMPERATURE -> SensorRule.shown(job, part, measurement);
        case CONTACT_DROP -> ContinuityRule.contactDrop(job, part, measurement);
        case SUPPLY -> SupplyRule.of(job, part, measurement);
      };
    }
  }

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
    Observable own = HeaterKinds.as(component.kind(), observable);
    int place = 0;
    for (Measurement measurement : job.measurements(component.id(), observable.id())) {
      place++;
      String name = id + "." + component.id() + (place > 1 ? "-" + place : "");
      Optional<Allowed> allowed = rule.allowed(job, component, measurement);
      if (allowed.isPresent()) {
        findings.add(finding(name, job, measurement, own, allowed.get(), decision));
      }
    }
  }

  private Finding finding(
      String name,
      Job job,
      Measurement measurement,
      Observable own,
      Allowed allowed,
      DecisionRule decision) {
    Measured measured =
        new Measured(
            job,
            job.appliance().component(measurement.component()).orElseThrow(),
            own,
            measurement);
    Judgement judgement = Judgement.of(measured, allowed.limits(), decision);
    Limits limits = allowed.limits();
    if (allowed.otherwise().isPresent() && judgement.verdict() != Verdict.DOES_NOT_CONFORM) {
      limits = allowed.otherwise().get();
      judgement = Judgement.of(measured, limits, decision).onlyIfConforming();
    }
    List<Caution> cautions = new ArrayList<>(own.procedure().cautions());
    if (judgement.verdict() == Verdict.DOES_NOT_CONFORM) {
      if (allowed.ifNot().isPresent()) {
        cautions.add(0, allowed.ifNot().get());
      }
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
        limits,
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
    StringBuilder all = new StringBuilder();
    for (Reading reading : measurement.readings()) {
      all.append(all.isEmpty() ? "" : ", ").append(reading.display());
    }
    return all.toString();
  }
}

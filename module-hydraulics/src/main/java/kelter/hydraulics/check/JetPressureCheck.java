package kelter.hydraulics.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.check.Check;
import kelter.core.check.DecisionRule;
import kelter.core.check.Finding;
import kelter.core.check.Limits;
import kelter.core.job.Component;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.source.Source;
import kelter.hydraulics.fault.wash.WashCircuit;
import kelter.hydraulics.part.WashPumpKind;

/**
 * Does the pressure in the spray arm lie within a quarter of what the pump's curve, the passage and
 * the jets let expect? A pressure that is too low tells of the pump or its inlet, one that is too
 * high of closed jets.
 */
public final class JetPressureCheck implements Check {

  private static final String ID = "jet-pressure";
  private static final String TITLE = "Pressure before the jets against the operating point";
  private static final double BAND = 0.25;
  private static final Source SOURCE =
      Source.commonPractice(
          "within 25 % of the pressure at which the pump's curve meets passage and jets");

  /** A check without a memory. */
  public JetPressureCheck() {}

  @Override
  public String id() {
    return ID;
  }

  @Override
  public String title() {
    return TITLE;
  }

  @Override
  public List<Finding> apply(Job job, DecisionRule rule) {
    List<Finding> findings = new ArrayList<>();
    for (Component component : job.appliance().components()) {
      if (component.kind().equals(WashPumpKind.ID)) {
        findings.addAll(apply(job, component, rule));
      }
    }
    return List.copyOf(findings);
  }

  private static List<Finding> apply(Job job, Component component, DecisionRule rule) {
    List<Measurement> measurements =
        job.measurements(component.id(), WashPumpKind.JET_PRESSURE.id());
    if (measurements.isEmpty()) {
      return List.of();
    }
    Told told = new Told(ID, TITLE, WashPumpKind.JET_PRESSURE, SOURCE);
    List<Finding> findings = new ArrayList<>();
    try {
      Optional<WashCircuit> wash = WashCircuit.of(component, job.appliance().nameplate());
      if (wash.isPresent() && wash.get().known()) {
        for (Measurement measurement : measurements) {
          findings.add(apply(job, measurement, wash.get(), told, rule));
        }
      }
    } catch (IllegalArgumentException impossible) {
      return told.without(job, measurements, impossible.getMessage());
    }
    return findings;
  }

  private static Finding apply(
      Job job, Measurement measurement, WashCircuit wash, Told told, DecisionRule rule) {
    double expected = wash.jetPressure(measurement.conditions());
    Limits limits = new Limits(expected * (1 - BAND), expected * (1 + BAND));
    String remark = wash.rated().remark("", measurement.conditions());
    return told.finding(job, measurement, limits, rule, remark);
  }
}

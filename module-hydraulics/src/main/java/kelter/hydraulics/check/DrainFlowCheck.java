package kelter.hydraulics.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.check.Check;
import kelter.core.check.DecisionRule;
import kelter.core.check.Finding;
import kelter.core.check.Limits;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.source.Source;
import kelter.hydraulics.fault.drain.DrainPath;
import kelter.hydraulics.part.DrainPumpKind;

/**
 * Does the drain pump move at least 85 % of the water that its curve, hose and lift let expect? 9 %
 * are those of ISO 9906 grade 3B, the rest is for the hose.
 */
public final class DrainFlowCheck implements Check {

  private static final String ID = "drain-flow";
  private static final String TITLE = "Flow rate of the drain against its operating point";
  private static final double LEAST_SHARE = 0.85;
  private static final Source SOURCE =
      Source.commonPractice(
          "at least 85 % of the flow rate at which the pump's curve meets lift and hose; a third less where"
              + " the hose had to be assumed");
  private static final double LEAST_SHARE_ASSUMED = 0.6;

  /** A check without a memory. */
  public DrainFlowCheck() {}

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
      if (component.kind().equals(DrainPumpKind.ID)) {
        findings.addAll(apply(job, component, rule));
      }
    }
    return List.copyOf(findings);
  }

  private static List<Finding> apply(Job job, Component component, DecisionRule rule) {
    List<Measurement> measurements = job.measurements(component.id(), DrainPumpKind.FLOW.id());
    if (measurements.isEmpty()) {
      return List.of();
    }
    Told told = new Told(ID, TITLE, DrainPumpKind.FLOW, SOURCE);
    Optional<DrainPath> path;
    try {
      path = DrainPath.of(component, job.appliance().nameplate());
    } catch (IllegalArgumentException impossible) {
      return told.without(job, measurements, impossible.getMessage());
    }
    List<Finding> findings = new ArrayList<>();
    if (path.isPresent() && path.get().curveKnown()) {
      for (Measurement measurement : measurements) {
        findings.add(apply(job, measurement, path.get(), told, rule));
      }
    }
    return findings;
  }

  private static Finding apply(
      Job job, Measurement measurement, DrainPath path, Told told, DecisionRule rule) {
    double share = path.hoseKnown() ? LEAST_SHARE : LEAST_SHARE_ASSUMED;
    String remark =
        path.hoseKnown()
            ? ""
            : "Lift, length or bore of the hose had to be assumed; give them for a narrower limit.";
    Conditions conditions = measurement.conditions();
    try {
      double expected = path.point(conditions).flow();
      Limits limits = Limits.atLeast(share * expected);
      return told.finding(job, measurement, limits, rule, path.rated().remark(remark, conditions));
    } catch (IllegalArgumentException impossible) {
      return told.without(job, measurement, impossible.getMessage());
    }
  }
}

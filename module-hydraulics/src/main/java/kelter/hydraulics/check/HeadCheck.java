package kelter.hydraulics.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kelter.core.check.Check;
import kelter.core.check.DecisionRule;
import kelter.core.check.Finding;
import kelter.core.check.Limits;
import kelter.core.job.Component;
import kelter.core.job.Curve;
import kelter.core.job.Evaluation;
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.source.Source;
import kelter.core.vocabulary.Observable;
import kelter.hydraulics.part.DrainPumpKind;
import kelter.hydraulics.part.RatedSupply;
import kelter.hydraulics.part.WashPumpKind;
import kelter.hydraulics.pump.Iso9906Grade;
import kelter.hydraulics.pump.PumpCurve;

/**
 * Is the head of a pump, at no flow or at the flow stated, that of its curve, within the 7 % either
 * way that ISO 9906 allows in its widest grade? On another frequency the curve is taken at that
 * speed. That standard binds no pump of this size: an analogy.
 */
public final class HeadCheck implements Check {

  private static final String ID = "pump-head-on-curve";
  private static final OnPump OBSERVED = new OnPump(DrainPumpKind.HEAD, WashPumpKind.HEAD);
  private static final String TITLE = "Head of the pump against its curve";
  private static final Iso9906Grade GRADE = Iso9906Grade.GRADE_3B;
  private static final Source SOURCE =
      Source.fromMemory(
          "ISO 9906:2012, 4.4, Table 8, grade 3B: head ±7 %, by analogy, as no grade binds pumps below"
              + " 1 kW; about the component's own curve");

  /** A check without a memory. */
  public HeadCheck() {}

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
      Optional<Observable> head = OBSERVED.of(component);
      if (head.isPresent()) {
        findings.addAll(apply(job, component, head.get(), rule));
      }
    }
    return List.copyOf(findings);
  }

  private static List<Finding> apply(
      Job job, Component component, Observable head, DecisionRule rule) {
    Optional<Curve> points = component.curve(DrainPumpKind.HEAD_CURVE.id());
    List<Measurement> measurements = job.measurements(component.id(), head.id());
    if (points.isEmpty() || measurements.isEmpty()) {
      return List.of();
    }
    Told told = new Told(ID, TITLE, head, SOURCE);
    List<Finding> findings = new ArrayList<>();
    for (Measurement measurement : measurements) {
      findings.add(apply(job, measurement, component, points.get(), told, rule));
    }
    return findings;
  }

  private static Finding apply(
      Job job,
      Measurement measurement,
      Component component,
      Curve points,
      Told told,
      DecisionRule rule) {
    double flow = measurement.conditions().si("flow", 0);
    RatedSupply supply = RatedSupply.of(component, job.appliance().nameplate());
    double expected;
    try {
      double speed = supply.supply(measurement.conditions()).frequency();
      expected = PumpCurve.through(points.xSi(), points.ySi()).atSpeed(speed).head(flow);
    } catch (IllegalArgumentException noCurve) {
      return told.without(job, measurement, noCurve.getMessage());
    }
    Limits limits = GRADE.head(expected);
    String remark = remark(job, measurement, limits, flow);
    return told.finding(
        job, measurement, limits, rule, supply.remark(remark, measurement.conditions()));
  }

  private static String remark(Job job, Measurement measurement, Limits limits, double flow) {
    Optional<Evaluation> read = Evaluation.of(job, measurement, DrainPumpKind.HEAD);
    if (read.isPresent() && read.get().estimate().value() > limits.high()) {
      return "A pump does not gain head with age: read it again, and see whether the curve is that of"
          + " this pump.";
    }
    return flow == 0
        ? "At no flow the hose plays no part: a low head is the pump's own, its speed's, or air's."
        : "";
  }
}

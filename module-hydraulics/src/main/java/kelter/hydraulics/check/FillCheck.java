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
import kelter.hydraulics.fault.fill.FillState;
import kelter.hydraulics.part.InletValveKind;
import kelter.hydraulics.water.Water;

/**
 * Does the machine fill with at least 75 % of the flow rate of its valve, does the tap give one and
 * a half times that, and does the supply without flow lie between 50 kPa and 1000 kPa, the range
 * for which most inlet valves are made? All limits are common practice.
 */
public final class FillCheck implements Check {

  private static final String ID = "fill-supply";
  private static final String TITLE = "Supply and fill flow against the inlet valve";
  private static final double LEAST_SHARE = 0.75;
  private static final double LEAST_TAP = 1.5; // ratio
  private static final Limits SUPPLY = new Limits(50_000, 1_000_000); // Pa
  private static final double COLD = Water.FREEZING + 15; // K

  private static final Told FLOW =
      new Told(
          ID + "-flow",
          "Flow rate while it fills against that of the valve",
          InletValveKind.FILL_FLOW,
          Source.commonPractice("at least 75 % of the flow rate of the valve at the usual supply"));

  private static final Told PRESSURE =
      new Told(
          ID + "-pressure",
          "Pressure of the supply against what inlet valves are made for",
          InletValveKind.STATIC_PRESSURE,
          Source.commonPractice("50 to 1000 kPa, as most inlet valves are marked"));

  private static final Told TAP =
      new Told(
          ID + "-tap",
          "Flow rate of the open tap against what the machine takes",
          InletValveKind.TAP_FLOW,
          Source.commonPractice("at least one and a half times the flow rate of the valve"));

  /** A check without a memory. */
  public FillCheck() {}

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
      if (component.kind().equals(InletValveKind.ID)) {
        findings.addAll(PRESSURE.each(job, component, rule, "", SUPPLY));
        findings.addAll(flow(job, component, rule));
        if (TAP.isRead(job, component)) {
          findings.addAll(tap(job, component, rule));
        }
      }
    }
    return List.copyOf(findings);
  }

  private static List<Finding> tap(Job job, Component valve, DecisionRule rule) {
    return TAP.each(
        job,
        valve,
        rule,
        "",
        m ->
            FillState.of(valve)
                .map(order -> Limits.atLeast(LEAST_TAP * flow(order)))
                .orElseThrow(
                    () ->
                        new IllegalArgumentException(
                            "Give the 'rated-flow' or 'kv' of the inlet valve to have it judged.")));
  }

  private static List<Finding> flow(Job job, Component component, DecisionRule rule) {
    List<Measurement> measurements =
        job.measurements(component.id(), InletValveKind.FILL_FLOW.id());
    if (measurements.isEmpty()) {
      return List.of();
    }
    try {
      Optional<FillState> order = FillState.of(component);
      return order.isPresent()
          ? FLOW.each(job, component, rule, "", Limits.atLeast(LEAST_SHARE * flow(order.get())))
          : List.of();
    } catch (IllegalArgumentException impossible) {
      return FLOW.without(job, measurements, impossible.getMessage());
    }
  }

  private static double flow(FillState order) {
    return order.path().flow(Water.at(COLD));
  }
}

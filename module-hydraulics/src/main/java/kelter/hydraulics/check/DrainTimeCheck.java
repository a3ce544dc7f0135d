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
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityFormat;
import kelter.core.safety.Caution;
import kelter.core.safety.Caution.Signal;
import kelter.core.source.Source;
import kelter.hydraulics.fault.drain.DrainPath;
import kelter.hydraulics.part.DrainPumpKind;

/**
 * Is the machine empty within the time that its water takes at 85 % of the flow rate at which the
 * pump's curve meets lift and hose; at 60 % where curve or hose had to be assumed? The shares are
 * those of {@link DrainFlowCheck}.
 */
public final class DrainTimeCheck implements Check {

  private static final String ID = "drain-time";
  private static final String TITLE = "Time to drain against the operating point";
  private static final double LEAST_SHARE = 0.85; // ratio
  private static final double LEAST_SHARE_ASSUMED = 0.6; // ratio
  private static final double KILOGRAMS = 1000; // in a m3 of water

  private static final Told TOLD =
      new Told(
          ID,
          "Time of a full drain phase against that of the operating point",
          DrainPumpKind.DRAIN_TIME,
          Source.commonPractice(
              "water of a drain phase by 85 % of the flow rate at which the pump's curve meets lift and"
                  + " hose; by 60 % where curve or hose had to be assumed"));

  /** A check without a memory. */
  public DrainTimeCheck() {}

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
    for (Component pump : job.appliance().componentsOf(DrainPumpKind.ID)) {
      Optional<Quantity> volume = pump.figure(DrainPumpKind.DRAIN_VOLUME.id());
      if (volume.isPresent() && TOLD.isRead(job, pump)) {
        findings.addAll(apply(job, pump, volume.get().si(), rule));
      }
    }
    return List.copyOf(findings);
  }

  private static List<Finding> apply(Job job, Component pump, double volume, DecisionRule rule) {
    Told told = TOLD.minding(weight(volume));
    List<Finding> findings = new ArrayList<>();
    for (Measurement measurement : job.measurements(pump.id(), TOLD.observable().id())) {
      try {
        findings.add(apply(job, pump, measurement, volume, told, rule));
      } catch (IllegalArgumentException impossible) {
        findings.add(told.without(job, measurement, impossible.getMessage()));
      }
    }
    return findings;
  }

  private static Finding apply(
      Job job,
      Component pump,
      Measurement measurement,
      double volume,
      Told told,
      DecisionRule rule) {
    Optional<DrainPath> path = DrainPath.of(pump, job.appliance().nameplate());
    if (path.isEmpty()) {
      throw new IllegalArgumentException(
          "By its curve the pump does not lift water to the outlet.");
    }
    boolean known = path.get().curveKnown() && path.get().hoseKnown();
    double share = known ? LEAST_SHARE : LEAST_SHARE_ASSUMED;
    Conditions conditions = measurement.conditions();
    Limits limits = Limits.atMost(volume / (share * flow(path.get(), conditions)));
    return told.finding(job, measurement, limits, rule, path.get().rated().remark("", conditions));
  }

  private static double flow(DrainPath path, Conditions conditions) {
    double flow = path.point(conditions).flow();
    if (flow <= 0) {
      throw new IllegalArgumentException("Under these conditions the pump lifts no water.");
    }
    return flow;
  }

  private static Caution weight(double volume) {
    return new Caution(
        Signal.WARNING,
        "Crushing. A machine that has not drained holds up to %s kg of water: empty it before you tilt it."
            .formatted(QuantityFormat.plain(Math.rint(volume * KILOGRAMS))));
  }
}

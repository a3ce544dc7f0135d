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
import kelter.core.source.Source;
import kelter.hydraulics.fault.wash.WashCircuit;
import kelter.hydraulics.part.WashPumpKind;
import kelter.hydraulics.pump.PumpHead;
import kelter.hydraulics.suction.CriticalSubmergence;
import kelter.hydraulics.suction.NpshAvailable;
import kelter.hydraulics.water.Water;

/**
 * Is the water before the wash pump far enough from boiling, does the filter take no more than 0.3
 * m, and does the water stand at three quarters of its working height at least, so that no air is
 * drawn in?
 *
 * <p>What is available at the inlet, air and gauge pressure less vapour pressure, is at least the
 * net positive suction head that the pump requires. The velocity head, which would add to it, is
 * left out: that errs on the strict side. Air at another height above the sea is not covered.
 */
public final class SuctionCheck implements Check {

  private static final String ID = "suction";
  private static final String TITLE = "Suction of the wash pump: boiling, filter, air";
  private static final double USUAL_REQUIRED = 2; // m, the most of small pumps, from memory
  private static final double FILTER_LOSS = 0.3; // m
  private static final double LEAST_LEVEL = 0.75; // ratio
  private static final double MILLIMETRES = 1000; // in a m

  private static final Told BOILING =
      new Told(
          ID + "-cavitation",
          "Pressure before the wash pump against boiling of the water",
          WashPumpKind.INLET_PRESSURE,
          Source.fromMemory(
              "ISO 9906:2012, 3.2.18; NPSH required as the component says, else 2 m, the most that small"
                  + " pumps need"));

  private static final Told FILTER =
      new Told(
          ID + "-filter",
          "Pressure before the wash pump against a clean filter",
          WashPumpKind.INLET_PRESSURE,
          Source.commonPractice(
              "a clean filter takes 0.3 m at most, below the water less the velocity head"));

  private static final Told AIR =
      new Told(
          ID + "-level",
          "Height of the water above the pump inlet against its working height",
          WashPumpKind.LEVEL,
          Source.commonPractice("at least three quarters of the working height"));

  /** A check without a memory. */
  public SuctionCheck() {}

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
    for (Component pump : job.appliance().componentsOf(WashPumpKind.ID)) {
      if (BOILING.isRead(job, pump)) {
        findings.addAll(BOILING.each(job, pump, rule, "", m -> boiling(pump, m)));
        findings.addAll(FILTER.each(job, pump, rule, "", m -> filter(job, pump, m)));
      }
      if (AIR.isRead(job, pump)) {
        findings.addAll(AIR.each(job, pump, rule, bareInlet(job, pump), m -> level(pump)));
      }
    }
    return List.copyOf(findings);
  }

  private static Limits boiling(Component pump, Measurement measurement) {
    Conditions conditions = measurement.conditions();
    if (conditions.figure("temperature").isEmpty()) {
      throw new IllegalArgumentException(
          "State the temperature of the water: hot water boils at a weaker suction.");
    }
    double required = figure(pump, WashPumpKind.NPSH_REQUIRED.id()).orElse(USUAL_REQUIRED);
    Water water = WashCircuit.water(conditions);
    double spare = NpshAvailable.of(water, Water.STANDARD_ATMOSPHERE, 0, 0) - required;
    return Limits.atLeast(-water.pressure(spare));
  }

  private static Limits filter(Job job, Component pump, Measurement measurement) {
    WashCircuit wash = circuit(job, pump);
    double flow = wash.point(measurement.conditions()).flow();
    double clean = wash.level() - PumpHead.velocityHead(flow, wash.passage().bore());
    return Limits.atLeast(
        WashCircuit.water(measurement.conditions()).pressure(clean - FILTER_LOSS));
  }

  private static Limits level(Component pump) {
    double working =
        figure(pump, WashPumpKind.WORKING_LEVEL.id())
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "Give the 'working-level' of the wash pump to have the height judged."));
    return Limits.atLeast(LEAST_LEVEL * working);
  }

  private static String bareInlet(Job job, Component pump) {
    try {
      WashCircuit wash = circuit(job, pump);
      double needed = CriticalSubmergence.of(wash.point().flow(), wash.passage().bore());
      return "With filter and cover off, the inlet would need about %s mm (ANSI/HI 9.8) to draw no air."
          .formatted(QuantityFormat.plain(Math.rint(needed * MILLIMETRES)));
    } catch (IllegalArgumentException noCircuit) {
      return "";
    }
  }

  private static WashCircuit circuit(Job job, Component pump) {
    return WashCircuit.of(pump, job.appliance().nameplate())
        .orElseThrow(
            () -> new IllegalArgumentException("By its curve the pump does not reach the jets."));
  }

  private static Optional<Double> figure(Component pump, String name) {
    return pump.figure(name).map(Quantity::si);
  }
}

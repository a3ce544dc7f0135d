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
import kelter.core.job.Job;
import kelter.core.job.Measurement;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.QuantityFormat;
import kelter.core.safety.Caution;
import kelter.core.safety.Caution.Signal;
import kelter.core.source.Source;
import kelter.hydraulics.drain.HoseBackflow;
import kelter.hydraulics.drain.StandpipeOverflow;
import kelter.hydraulics.part.DrainPumpKind;
import kelter.hydraulics.pipe.Hose;
import kelter.hydraulics.pump.PumpCurve;
import kelter.hydraulics.water.Water;

/**
 * Does the outlet of the drain hose lie as high as it should, so that the pump reaches it and the
 * machine does not siphon, does the check valve hold what is in the hose, and does the standpipe
 * take what the pump gives?
 */
public final class DrainHoseCheck implements Check {

  private static final String ID = "drain-hose";
  private static final String TITLE = "Height of the drain hose, and what runs back from it";
  private static final double BAND = 0.15; // m, about the lift that the job gives
  private static final double USUAL_LOWEST = 0.4; // m
  private static final double USUAL_HIGHEST = 1; // m
  private static final double MOST_RETURNED = 0.25; // ratio of the content of the hose
  private static final double RETURNED_ANYWAY = 2e-5; // m3

  private static final double USUAL_STANDPIPE = 0.04; // m; common practice
  private static final double TRAP_LOSS =
      5; // entrance 0.5, two bends of 1.5, branch 1.5; judgement
  private static final double ROOM = Water.FREEZING + 20; // K

  private static final Told LIFT =
      new Told(
          ID + "-lift",
          "Height of the outlet above the water against where it should be",
          DrainPumpKind.LIFT,
          Source.commonPractice(
              "within 0.15 m of the lift that the component gives, else 0.4 to 1 m above the water"));

  private static final Told RETURNED =
      new Told(
          ID + "-returned",
          "Water that runs back against the content of the hose",
          DrainPumpKind.RETURNED,
          Source.commonPractice("at most a quarter of the content of the hose and 20 mL"));

  private static final Told STANDPIPE =
      new Told(
              ID + "-standpipe",
              "Flow rate of the drain against what the standpipe takes",
              DrainPumpKind.FLOW,
              Source.fromMemory(
                  "Energy equation, White, Fluid Mechanics, chapter 6; loss of the trap 5, length as the"
                      + " height"))
          .minding(
              new Caution(
                  Signal.NOTICE,
                  "An overflowing standpipe floods the floor. Watch the first drain phase to its end."));

  /** A check without a memory. */
  public DrainHoseCheck() {}

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
      if (LIFT.isRead(job, pump)) {
        findings.addAll(LIFT.each(job, pump, rule, mostHead(pump), m -> lift(pump)));
      }
      if (pump.figures().containsKey(DrainPumpKind.STANDPIPE_HEIGHT.id())) {
        findings.addAll(STANDPIPE.each(job, pump, rule, "", m -> standpipe(pump, m)));
      }
      if (RETURNED.isRead(job, pump)) {
        findings.addAll(RETURNED.each(job, pump, rule, "", m -> returned(pump)));
      }
    }
    return List.copyOf(findings);
  }

  private static Limits lift(Component pump) {
    return figure(pump, DrainPumpKind.STATIC_LIFT.id())
        .map(lift -> new Limits(Math.max(0, lift - BAND), lift + BAND))
        .orElse(new Limits(USUAL_LOWEST, USUAL_HIGHEST));
  }

  private static String mostHead(Component pump) {
    Optional<Curve> points = pump.curve(DrainPumpKind.HEAD_CURVE.id());
    try {
      return points
          .map(p -> PumpCurve.through(p.xSi(), p.ySi()).shutOffHead())
          .map(
              head ->
                  "By its curve the pump lifts %s m at most, and nothing flows at that height."
                      .formatted(QuantityFormat.plain(Math.rint(100 * head) / 100)))
          .orElse("");
    } catch (IllegalArgumentException noCurve) {
      return "";
    }
  }

  private static Limits returned(Component pump) {
    Optional<Double> bore = figure(pump, DrainPumpKind.HOSE_BORE.id());
    Optional<Double> length = figure(pump, DrainPumpKind.HOSE_LENGTH.id());
    if (bore.isEmpty() || length.isEmpty()) {
      throw new IllegalArgumentException(
          "Give 'hose-bore' and 'hose-length' of the drain pump to have it judged.");
    }
    double content = HoseBackflow.volume(bore.get(), length.get());
    return Limits.atMost(MOST_RETURNED * content + RETURNED_ANYWAY);
  }

  private static Limits standpipe(Component pump, Measurement measurement) {
    double height = figure(pump, DrainPumpKind.STANDPIPE_HEIGHT.id()).orElseThrow();
    double bore = figure(pump, DrainPumpKind.STANDPIPE_BORE.id()).orElse(USUAL_STANDPIPE);
    Water water = Water.at(measurement.conditions().si("temperature", ROOM));
    Hose pipe = new Hose(height, bore, 0, TRAP_LOSS);
    return Limits.atMost(StandpipeOverflow.capacity(height, pipe, water));
  }

  private static Optional<Double> figure(Component pump, String name) {
    return pump.figure(name).map(Quantity::si);
  }
}

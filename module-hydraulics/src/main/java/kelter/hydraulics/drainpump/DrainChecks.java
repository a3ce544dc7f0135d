package kelter.hydraulics.drainpump;

import java.util.Optional;
import kelter.core.check.Allowed;
import kelter.core.check.Limits;
import kelter.core.check.Measured;
import kelter.core.job.Component;
import kelter.core.job.Curve;
import kelter.core.quantity.QuantityFormat;
import kelter.core.source.Source;
import kelter.hydraulics.caution.HydraulicCautions;
import kelter.hydraulics.drain.HoseBackflow;
import kelter.hydraulics.drain.StandpipeOverflow;
import kelter.hydraulics.pipe.Hose;
import kelter.hydraulics.pumppart.PumpWords;
import kelter.hydraulics.pumppart.RatedPump;

/** What readings on the way of the water out may be. */
final class DrainChecks {

  /** 9 % are those of ISO 9906 grade 3B, the rest is for the hose. */
  private static final double LEAST_SHARE = 0.85; // ratio

  private static final double LEAST_SHARE_ASSUMED = 0.6; // ratio
  private static final Source OPERATING_POINT =
      Source.commonPractice(
          "at least 85 % of the flow rate at which the pump's curve meets lift and hose; a third less where"
              + " the hose had to be assumed");

  private static final double KILOGRAMS = 1000; // in a m3 of water
  private static final Source DRAIN_TIME =
      Source.commonPractice(
          "water of a drain phase by 85 % of the flow rate at which the pump's curve meets lift and"
              + " hose; by 60 % where curve or hose had to be assumed");

  private static final double BAND = 0.15; // m, about the lift that the job gives
  private static final Limits USUAL_LIFT = new Limits(0.4, 1); // m
  private static final Source LIFT =
      Source.commonPractice(
          "within 0.15 m of the lift that the component gives, else 0.4 to 1 m above the water");

  private static final double MOST_RETURNED = 0.25; // ratio of the content of the hose
  private static final double RETURNED_ANYWAY = 2e-5; // m3
  private static final Source RETURNED =
      Source.commonPractice("at most a quarter of the content of the hose and 20 mL");

  private static final double USUAL_STANDPIPE = 0.04; // m; common practice
  private static final double TRAP_LOSS =
      5; // entrance 0.5, two bends of 1.5, branch 1.5; judgement
  private static final Source STANDPIPE =
      Source.fromMemory(
          "Energy equation, White, Fluid Mechanics, chapter 6; loss of the trap 5, length as the height");

  private DrainChecks() {}

  /**
   * Does the drain pump move at least 85 % of the water that its curve, hose and lift let expect;
   * 60 % where the hose had to be assumed?
   */
  static Optional<Allowed> flow(Measured measured) {
    String title = "Flow rate of the drain against its operating point";
    Optional<DrainPath> path;
    try {
      path = path(measured);
    } catch (IllegalArgumentException impossible) {
      return Optional.of(Allowed.without(title, OPERATING_POINT, impossible.getMessage()));
    }
    if (path.isEmpty()) {
      return Optional.of(Allowed.without(title, OPERATING_POINT, tooHigh(measured).getMessage()));
    }
    if (!path.get().pump().known()) {
      return Optional.empty();
    }
    DrainPath known = path.get();
    double share = known.hoseKnown() ? LEAST_SHARE : LEAST_SHARE_ASSUMED;
    String remark =
        known.hoseKnown()
            ? ""
            : "Lift, length or bore of the hose had to be assumed; give them for a narrower limit.";
    return Optional.of(
        Allowed.of(
                title,
                OPERATING_POINT,
                () -> Limits.atLeast(share * known.flow(measured.conditions())))
            .resting(known.pump().supply().remark(remark, measured.conditions())));
  }

  private static Optional<DrainPath> path(Measured measured) {
    return DrainPath.of(measured.component(), measured.appliance().nameplate());
  }

  /** Is the machine empty within the time that its water takes at such a flow rate? */
  static Optional<Allowed> time(Measured measured) {
    double volume = measured.component().si(DrainPump.DRAIN_VOLUME);
    if (Double.isNaN(volume)) {
      return Optional.empty();
    }
    return Optional.of(
        drained(measured, volume)
            .minding(
                HydraulicCautions.UNDRAINED_WEIGHT.with(
                    QuantityFormat.plain(Math.rint(volume * KILOGRAMS)))));
  }

  private static Allowed drained(Measured measured, double volume) {
    String title = "Time of a full drain phase against that of the operating point";
    try {
      DrainPath path = path(measured).orElseThrow(() -> tooHigh(measured));
      boolean known = path.pump().known() && path.hoseKnown();
      double flow = path.flow(measured.conditions());
      return flow <= 0
          ? Allowed.without(title, DRAIN_TIME, "Under these conditions the pump lifts no water.")
          : Allowed.of(
                  title,
                  DRAIN_TIME,
                  Limits.atMost(volume / ((known ? LEAST_SHARE : LEAST_SHARE_ASSUMED) * flow)))
              .resting(path.pump().supply().remark("", measured.conditions()));
    } catch (IllegalArgumentException impossible) {
      return Allowed.without(title, DRAIN_TIME, impossible.getMessage());
    }
  }

  private static IllegalArgumentException tooHigh(Measured measured) {
    return new IllegalArgumentException(
        "Not judged: " + DrainPath.tooHigh(measured.component()) + ".");
  }

  /** Does the outlet lie as high as it should, so that the pump reaches it and nothing siphons? */
  static Optional<Allowed> lift(Measured measured) {
    double lift = measured.component().si(DrainPump.STATIC_LIFT);
    return Optional.of(
        Allowed.of(
                "Height of the outlet above the water against where it should be",
                LIFT,
                Double.isNaN(lift) ? USUAL_LIFT : new Limits(Math.max(0, lift - BAND), lift + BAND))
            .resting(mostHead(measured.component())));
  }

  private static String mostHead(Component pump) {
    Optional<Curve> points = pump.curve(PumpWords.HEAD_CURVE);
    if (points.isEmpty()) {
      return "";
    }
    try {
      double head = RatedPump.curve(points.get()).shutOffHead();
      return "By its curve the pump lifts %s m at most, and nothing flows at that height."
          .formatted(QuantityFormat.plain(Math.rint(100 * head) / 100));
    } catch (IllegalArgumentException noCurve) {
      return "";
    }
  }

  /** Does the standpipe take what the pump gives? */
  static Optional<Allowed> standpipe(Measured measured) {
    double height = measured.component().si(DrainPump.STANDPIPE_HEIGHT);
    if (Double.isNaN(height)) {
      return Optional.empty();
    }
    double bore = measured.component().si(DrainPump.STANDPIPE_BORE, USUAL_STANDPIPE);
    return Optional.of(
        Allowed.of(
                "Flow rate of the drain against what the standpipe takes",
                STANDPIPE,
                () ->
                    Limits.atMost(
                        StandpipeOverflow.capacity(
                            height,
                            new Hose(height, bore, 0, TRAP_LOSS),
                            RatedPump.water(measured.conditions()))))
            .minding(HydraulicCautions.STANDPIPE_OVERFLOW));
  }

  /** Does the check valve hold what is in the hose? */
  static Optional<Allowed> returned(Measured measured) {
    String title = "Water that runs back against the content of the hose";
    double bore = measured.component().si(DrainPump.HOSE_BORE);
    double length = measured.component().si(DrainPump.HOSE_LENGTH);
    return Optional.of(
        Double.isNaN(bore + length)
            ? Allowed.without(
                title,
                RETURNED,
                "Give 'hose-bore' and 'hose-length' of the drain pump to have it judged.")
            : Allowed.of(
                title,
                RETURNED,
                () ->
                    Limits.atMost(
                        MOST_RETURNED * HoseBackflow.volume(bore, length) + RETURNED_ANYWAY)));
  }
}

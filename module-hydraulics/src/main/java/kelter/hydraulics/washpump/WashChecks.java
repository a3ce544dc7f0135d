package kelter.hydraulics.washpump;

import java.util.Optional;
import kelter.core.check.Allowed;
import kelter.core.check.Limits;
import kelter.core.check.Measured;
import kelter.core.quantity.QuantityFormat;
import kelter.core.source.Source;
import kelter.hydraulics.part.WaterSide;
import kelter.hydraulics.pump.PumpHead;
import kelter.hydraulics.pumppart.RatedPump;
import kelter.hydraulics.suction.CriticalSubmergence;
import kelter.hydraulics.suction.NpshAvailable;
import kelter.hydraulics.water.Water;

/** What readings in the circuit of the wash water may be. */
final class WashChecks {

  private static final double BAND = 0.25; // ratio
  private static final Source PRESSURE =
      Source.commonPractice(
          "within 25 % of the pressure at which the pump's curve meets passage and jets");

  /** Are at least nine tenths of the jets open? */
  static final Allowed JETS_CLOSED =
      Allowed.of(
          "Share of the jets that are closed",
          Source.commonPractice("at most one jet in ten closed"),
          new Limits(0, 0.1));

  private static final double LEAST_SHARE = 0.6; // ratio
  private static final double LEAST_SPEED = 5.0 / 60; // 1/s
  private static final Source ARM =
      Source.commonPractice(
          "at least 60 % of the speed of a good machine; 5 in a minute where it is not known");

  private static final double USUAL_REQUIRED = 2; // m, the most of small pumps, from memory
  private static final Source NPSH =
      Source.fromMemory(
          "ISO 9906:2012, 3.2.18; NPSH required as the component says, else 2 m, the most that small"
              + " pumps need");

  private static final double FILTER_LOSS = 0.3; // m
  private static final Source FILTER =
      Source.commonPractice(
          "a clean filter takes 0.3 m at most, below the water less the velocity head");

  private static final double LEAST_LEVEL = 0.75; // ratio
  private static final double MILLIMETRES = 1000; // in a m
  private static final Source LEVEL =
      Source.commonPractice("at least three quarters of the working height");

  private WashChecks() {}

  private static Optional<WashCircuit> circuit(Measured measured) {
    return WashCircuit.of(measured.component(), measured.appliance().nameplate());
  }

  private static WashCircuit reachingJets(Measured measured) {
    return circuit(measured)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "Not judged: " + WashCircuit.tooHigh(measured.component()) + "."));
  }

  /**
   * Does the pressure in the spray arm lie within a quarter of what the pump's curve, the passage
   * and the jets let expect? A pressure that is too low tells of the pump or its inlet, one that is
   * too high of closed jets.
   */
  static Optional<Allowed> jetPressure(Measured measured) {
    String title = "Pressure before the jets against the operating point";
    try {
      WashCircuit wash = reachingJets(measured);
      if (!wash.pump().known()) {
        return Optional.empty();
      }
      double expected = wash.jetPressure(measured.conditions());
      return Optional.of(
          Allowed.of(title, PRESSURE, new Limits(expected * (1 - BAND), expected * (1 + BAND)))
              .resting(wash.pump().supply().remark("", measured.conditions())));
    } catch (IllegalArgumentException impossible) {
      return Optional.of(Allowed.without(title, PRESSURE, impossible.getMessage()));
    }
  }

  /**
   * Does the spray arm turn at 60 % of the speed of a good machine, or, where that is not known, at
   * five revolutions in a minute?
   */
  static Optional<Allowed> armSpeed(Measured measured) {
    double rated = measured.component().si(WashPump.RATED_ARM_SPEED);
    boolean known = !Double.isNaN(rated);
    return Optional.of(
        Allowed.of(
                "Speed of the spray arm against that of a good machine",
                ARM,
                Limits.atLeast(known ? LEAST_SHARE * rated : LEAST_SPEED))
            .resting(
                known
                    ? "An arm that stands still: free its bearing first, then look at the pressure before it."
                    : "Give the arm's speed on a good machine for a narrower limit."));
  }

  /**
   * Is the water before the pump far enough from boiling? What is available at the inlet, air and
   * gauge pressure less vapour pressure, is at least the net positive suction head that the pump
   * requires. The velocity head, which would add to it, is left out: that errs on the strict side.
   * Air at another height above the sea is not covered.
   */
  static Optional<Allowed> cavitation(Measured measured) {
    String title = "Pressure before the wash pump against boiling of the water";
    if (measured.conditions().figure(WaterSide.AT_TEMPERATURE).isEmpty()) {
      return Optional.of(
          Allowed.without(
              title,
              NPSH,
              "State the temperature of the water: hot water boils at a weaker suction."));
    }
    double required = measured.component().si(WashPump.NPSH_REQUIRED, USUAL_REQUIRED);
    return Optional.of(
        Allowed.of(
            title,
            NPSH,
            () -> {
              Water water = RatedPump.water(measured.conditions());
              double available = NpshAvailable.of(water, Water.STANDARD_ATMOSPHERE, 0, 0);
              return Limits.atLeast(-water.pressure(available - required));
            }));
  }

  /** Does the filter take no more than 0.3 m? */
  static Optional<Allowed> filter(Measured measured) {
    return Optional.of(
        Allowed.of(
            "Pressure before the wash pump against a clean filter",
            FILTER,
            () -> {
              WashCircuit wash = reachingJets(measured);
              double flow = wash.flow(measured.conditions());
              double clean = wash.level() - PumpHead.velocityHead(flow, wash.passage().bore());
              return Limits.atLeast(
                  RatedPump.water(measured.conditions()).pressure(clean - FILTER_LOSS));
            }));
  }

  /** Does the water stand at three quarters of its working height, so that no air is drawn in? */
  static Optional<Allowed> level(Measured measured) {
    String title = "Height of the water above the pump inlet against its working height";
    double working = measured.component().si(WashPump.WORKING_LEVEL);
    return Optional.of(
        Double.isNaN(working)
            ? Allowed.without(
                title,
                LEVEL,
                "Give the 'working-level' of the wash pump to have the height judged.")
            : Allowed.of(title, LEVEL, Limits.atLeast(LEAST_LEVEL * working))
                .resting(bareInlet(measured)));
  }

  private static String bareInlet(Measured measured) {
    try {
      WashCircuit wash = reachingJets(measured);
      double needed = CriticalSubmergence.of(wash.pump().point().flow(), wash.passage().bore());
      return "With filter and cover off, the inlet would need about %s mm (ANSI/HI 9.8) to draw no air."
          .formatted(QuantityFormat.plain(Math.rint(needed * MILLIMETRES)));
    } catch (IllegalArgumentException noCircuit) {
      return "";
    }
  }
}

package kelter.electrical.heating;

import java.util.Optional;
import kelter.core.check.Allowed;
import kelter.core.check.Limits;
import kelter.core.check.Measured;
import kelter.core.job.RatedRange;
import kelter.core.safety.Caution;
import kelter.core.safety.Caution.Signal;
import kelter.core.source.Source;
import kelter.electrical.caution.Cautions;
import kelter.electrical.component.Electrical;
import kelter.electrical.rating.MainsRange;
import kelter.electrical.rating.SensorCurve;
import kelter.electrical.supply.SupplyRange.Range;

/** What links, relays and sensors of a heating circuit may measure, and the supply of it. */
final class ControlChecks {

  /** A closed contact under load, V; common practice, no source. */
  private static final double DROP = 0.5;

  private static final Caution HOT_CONTACT =
      new Caution(
          Signal.WARNING,
          "Fire. A contact that drops voltage heats itself and its terminals: do not let the machine"
              + " heat again before it is renewed.",
          true);

  /** How far a sensor may lie from its table, as a ratio; common practice, no source. */
  private static final double FROM_TABLE = 0.05;

  /** The room where no temperature is stated, K. */
  private static final double COOL_ROOM = 288.15;

  private static final double WARM_ROOM = 298.15;

  /** How far the machine's own temperature may be off, K; common practice, no source. */
  private static final double SHOWN = 5;

  private ControlChecks() {}

  static Optional<Allowed> contactDrop(Measured measured) {
    return Optional.of(
        Allowed.of(
                "voltage drop of a closed contact",
                Source.commonPractice("a contact in order drops less than 0.5 V under its load"),
                Limits.atMost(DROP))
            .resting("times the current it is the heat: 1 V at 10 A are 10 W")
            .butIfNot(HOT_CONTACT));
  }

  /**
   * What a sensor's table or curve says at the temperature stated, within 5 %. Where no temperature
   * is stated, the limits span what it may have from 15 °C to 25 °C.
   */
  static Optional<Allowed> sensor(Measured measured) {
    Optional<SensorCurve> curve = SensorCurve.of(measured.component());
    if (curve.isEmpty()) {
      return Optional.empty();
    }
    double cool = ohm(curve.get(), measured, COOL_ROOM);
    double warm = ohm(curve.get(), measured, WARM_ROOM);
    if (!Double.isFinite(cool + warm)) {
      return Optional.empty();
    }
    boolean stated = measured.conditions().figure(Electrical.TEMPERATURE).isPresent();
    return Optional.of(
        Allowed.of(
                "sensor resistance against its curve",
                Source.commonPractice(
                    "within 5 % of the sensor's curve; curve: " + curve.get().source().display()),
                new Limits(
                    Math.min(cool, warm) * (1 - FROM_TABLE),
                    Math.max(cool, warm) * (1 + FROM_TABLE)))
            .resting(stated ? "" : "15 °C to 25 °C taken, because no temperature is stated"));
  }

  /** Resistance at the temperature stated, else at the usual one, Ohm; NaN outside the curve. */
  private static double ohm(SensorCurve curve, Measured measured, double usual) {
    return curve.ohm(measured.conditions().si(Electrical.TEMPERATURE, usual));
  }

  static Optional<Allowed> shown(Measured measured) {
    return Optional.of(
        Allowed.of(
            "temperature shown against a thermometer",
            Source.commonPractice("the machine shows the temperature within 5 K"),
            new Limits(-SHOWN, SHOWN)));
  }

  /**
   * The voltage at the outlet: EN 50160 for appliances rated 220 V to 240 V, ANSI C84.1
   * (utilization, range B) for those rated 110 V to 127 V. Of another rated range 10 % below its
   * lower to 10 % above its upper limit; none for other voltages.
   */
  static Optional<Allowed> supply(Measured measured) {
    Optional<RatedRange> rated = measured.appliance().nameplate().voltage();
    if (rated.isEmpty()) {
      return Optional.empty();
    }
    double low = rated.get().low().si();
    double high = rated.get().high().si();
    if (low >= 220 && high <= 240) {
      return Optional.of(ofTheNet(Range.EN_50160_ALWAYS));
    }
    if (low >= 110 && high <= 127) {
      return Optional.of(ofTheNet(Range.ANSI_UTILIZATION_B));
    }
    return rated.get().isRange() ? Optional.of(ofTheNameplate(rated.get())) : Optional.empty();
  }

  private static Allowed ofTheNet(Range range) {
    return Allowed.of("supply voltage against the range of the net", range.source(), range.limits())
        .resting("one reading is a hint only: the range holds for means over ten minutes")
        .butIfNot(Cautions.FIXED_WIRING);
  }

  private static Allowed ofTheNameplate(RatedRange rated) {
    return Allowed.of(
            "supply voltage against the rated range",
            Source.commonPractice(
                "the mains range of 10 % below and above the limits of a rated range"),
            MainsRange.of(rated))
        .resting("rated " + rated.display() + ", which may stand on more than one net")
        .butIfNot(Cautions.FIXED_WIRING);
  }
}

package kelter.hydraulics.fault;

import java.util.Optional;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.hydraulics.part.DrainPumpKind;
import kelter.hydraulics.part.Given;
import kelter.hydraulics.part.RatedSupply;

/**
 * What the winding of a small pump motor measures between its terminals: R = R20 (1 + 0.00393 (t −
 * 20)), t in °C.
 *
 * <p>It holds for copper from −50 °C to 200 °C; what is stated beyond counts as the end of that
 * range. Where a job has no figure, a typical one is taken: it goes with U²/P, and for 30 W at 230
 * V pumps of the usual kinds (shaded pole, permanent-magnet synchronous) lie between some 100 and
 * 250 ohm.
 *
 * <p>Source: coefficient of IEC 60028; typical resistances from memory.
 *
 * @param cold the resistance at 20 °C, in ohm, above 0
 * @param spread how far windings of the kind differ, as a natural logarithm, above 0
 */
public record PumpWinding(double cold, double spread) {

  /** What an open winding measures, the end of the span of the observable, in ohm. */
  public static final double OPEN = DrainPumpKind.OPEN_CIRCUIT;

  /** An open winding may leak a little through damp: its spread as a natural logarithm. */
  private static final double SPREAD_OF_OPEN = 1;

  /** Temperature coefficient of annealed copper at 20 °C, 1/K. IEC 60028. */
  private static final double COEFFICIENT = 0.00393;

  private static final double ROOM = 293.15; // K
  private static final double COLDEST = 223.15; // K
  private static final double HOTTEST = 473.15; // K

  /** Windings by one figure, as a natural logarithm; from memory. */
  private static final double OF_A_FIGURE = 0.06;

  /** R P / U² of a typical pump, the middle of 100 to 250 ohm at 30 W and 230 V; from memory. */
  private static final double TYPICAL = 0.09;

  /** Half of the logarithm of 250 over 100, as a natural logarithm; from memory. */
  private static final double OF_A_TYPICAL_PUMP = 0.45;

  private static final double USUAL_POWER = 30; // W; common practice, no source
  private static final double USUAL_VOLTAGE = 230; // V; common practice, no source

  /** Where power or voltage are not known, as a natural logarithm; judgement. */
  private static final double OF_AN_UNKNOWN_PUMP = 0.8;

  /** Between two terminals of a motor behind an inverter, ohm; from memory. */
  private static final double BEHIND_AN_INVERTER = 10;

  /** The spread of that, as a natural logarithm; judgement. */
  private static final double OF_AN_INVERTER_MOTOR = 0.9;

  /**
   * The winding of a pump.
   *
   * @param pump the pump
   * @param supply what it was made for
   * @return the winding by its figure, or a typical one
   */
  public static PumpWinding of(Component pump, RatedSupply supply) {
    Optional<Double> stated = Given.si(pump.figure(DrainPumpKind.WINDING.id()));
    if (stated.isPresent() && stated.get() > 0) {
      return new PumpWinding(stated.get(), OF_A_FIGURE);
    }
    if (supply.torqueLimit().isPresent()) {
      return new PumpWinding(BEHIND_AN_INVERTER, OF_AN_INVERTER_MOTOR);
    }
    Optional<Double> power = Given.mean(pump.nameplate().power());
    boolean known = power.isPresent() && power.get() > 0 && supply.voltage().isPresent();
    double voltage = supply.voltage().isPresent() ? supply.voltage().get() : USUAL_VOLTAGE;
    double rated = power.isPresent() && power.get() > 0 ? power.get() : USUAL_POWER;
    return new PumpWinding(
        TYPICAL * voltage * voltage / rated, known ? OF_A_TYPICAL_PUMP : OF_AN_UNKNOWN_PUMP);
  }

  /**
   * The resistance between the terminals.
   *
   * @param open whether the winding or its protector is open
   * @param conditions the conditions of the reading: the temperature of the winding, 20 °C unless
   *     stated
   * @return the resistance in ohm, at most {@link #OPEN}
   */
  public double resistance(boolean open, Conditions conditions) {
    if (open) {
      return OPEN;
    }
    double kelvin = conditions.si("temperature", ROOM);
    double inRange = Math.min(HOTTEST, Math.max(COLDEST, kelvin));
    return Math.min(OPEN, cold * (1 + COEFFICIENT * (inRange - ROOM)));
  }

  /**
   * How far windings in this state differ.
   *
   * @param resistance what {@link #resistance} says, in ohm
   * @return the standard deviation of its natural logarithm
   */
  public double spreadAt(double resistance) {
    return resistance >= OPEN ? SPREAD_OF_OPEN : spread;
  }
}

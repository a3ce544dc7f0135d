package kelter.hydraulics.pumppart;

import kelter.core.diagnosis.model.Circumstances;
import kelter.core.diagnosis.model.Spread;
import kelter.core.diagnosis.model.State;
import kelter.core.job.Component;
import kelter.core.job.Conditions;
import kelter.core.law.Celsius;
import kelter.core.law.CopperResistance;

/**
 * What the winding of a small pump motor measures between its terminals, copper brought to the
 * temperature of the reading.
 *
 * <p>It holds from −50 °C to 200 °C; what is stated beyond counts as the end of that range. Where a
 * job has no figure, a typical one is taken: it goes with U²/P, and for 30 W at 230 V pumps of the
 * usual kinds (shaded pole, permanent-magnet synchronous) lie between some 100 and 250 ohm.
 *
 * <p>Source: {@link CopperResistance}; typical resistances from memory.
 *
 * @param cold the resistance at 20 °C, in ohm, above 0
 * @param spread how far windings of the kind differ, as a natural logarithm, above 0
 */
record PumpWinding(double cold, double spread) implements Circumstances<Double>, Spread<Object> {

  /** An open winding may leak a little through damp: its spread as a natural logarithm. */
  private static final double SPREAD_OF_OPEN = 1;

  private static final double COLDEST = Celsius.ZERO - 50; // K
  private static final double HOTTEST = Celsius.ZERO + 200; // K

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
  static PumpWinding of(Component pump, RatedSupply supply) {
    double stated = pump.si(PumpWords.WINDING);
    if (stated > 0) {
      return new PumpWinding(stated, OF_A_FIGURE);
    }
    if (supply.isInverter()) {
      return new PumpWinding(BEHIND_AN_INVERTER, OF_AN_INVERTER_MOTOR);
    }
    double power = RatedSupply.mean(pump.nameplate().power(), USUAL_POWER);
    double voltage = supply.voltage().isPresent() ? supply.voltage().get() : USUAL_VOLTAGE;
    boolean known = pump.nameplate().power().isPresent() && supply.voltage().isPresent();
    return new PumpWinding(
        TYPICAL * voltage * voltage / power, known ? OF_A_TYPICAL_PUMP : OF_AN_UNKNOWN_PUMP);
  }

  /**
   * The resistance between the terminals.
   *
   * @param temperature the temperature of the winding, K
   * @return the resistance, ohm, at most {@link PumpWords#OPEN_CIRCUIT}
   */
  double at(double temperature) {
    double inRange = Math.min(HOTTEST, Math.max(COLDEST, temperature));
    return Math.min(PumpWords.OPEN_CIRCUIT, cold * CopperResistance.factor(inRange));
  }

  @Override
  public Terminals under(Conditions conditions) {
    return new Terminals(at(conditions.si(PumpWords.OF_WINDING, Celsius.TWENTY)));
  }

  @Override
  public double of(double resistance, InOrder order, Object solved) {
    return resistance >= PumpWords.OPEN_CIRCUIT ? SPREAD_OF_OPEN : spread;
  }

  /**
   * What is measured in any state.
   *
   * @param whole the resistance of a winding that is not open, ohm
   */
  record Terminals(double whole) implements Circumstances.Solver<Double> {
    @Override
    public Double in(State state) {
      return state.has(PumpFigure.OPEN_WINDING) ? PumpWords.OPEN_CIRCUIT : whole;
    }
  }
}

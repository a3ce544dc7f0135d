package kelter.electrical.motor;

import kelter.core.diagnosis.model.Circumstances;
import kelter.core.diagnosis.model.State;
import kelter.core.job.Conditions;
import kelter.core.law.InductionMachine;
import kelter.electrical.copper.CopperCoil;

/**
 * The current of a capacitor motor that is switched on, ratio to the rated one, at the usual
 * voltage whatever the conditions of the reading (Kirchhoff's current law: two ways side by side,
 * the main winding and the auxiliary one behind the capacitor). With one way open nothing turns the
 * field, with both open no current flows. Figures are from memory.
 */
enum RunningMotor implements Circumstances<Double>, Circumstances.Solver<Double> {
  /** At work. */
  AT_WORK;

  /** The power factor of a small motor at rated load, as a ratio; from memory. */
  private static final double POWER_FACTOR = 0.65;

  /** Current of a blocked rotor over the rated one, by the law that pumps follow too. */
  static final double BLOCKED =
      InductionMachine.SMALL.current(1, POWER_FACTOR, InductionMachine.IDLE_POWER);

  /** Current of the auxiliary winding alone over that of both. */
  private static final double AUXILIARY_ALONE = 0.1;

  /** Below this ratio of its capacitance a capacitor carries nothing. */
  private static final double OPEN_CAPACITOR = 0.01;

  @Override
  public Circumstances.Solver<Double> under(Conditions conditions) {
    return this;
  }

  @Override
  public Double in(State state) {
    boolean main = state.of(MotorFigure.MAIN) < CopperCoil.OPEN;
    boolean auxiliary =
        state.of(MotorFigure.AUXILIARY) < CopperCoil.OPEN
            && state.of(MotorFigure.CAPACITANCE) > OPEN_CAPACITOR;
    double current = state.of(MotorFigure.CURRENT);
    if (!main) {
      return auxiliary ? AUXILIARY_ALONE * current : 0;
    }
    return auxiliary ? current : Math.max(current, BLOCKED);
  }
}

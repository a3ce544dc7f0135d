package kelter.electrical.motor;

import kelter.core.diagnosis.model.Circumstances;
import kelter.core.diagnosis.model.State;
import kelter.core.job.Conditions;
import kelter.core.law.InductionMachine;
import kelter.electrical.copper.CopperCoil;

/**
 * What flows and what is heard when a capacitor motor is switched on (Kirchhoff's current law: two
 * ways side by side, the main winding and the auxiliary one behind the capacitor). With one way
 * open nothing turns the field, with both open no current flows. Figures are from memory.
 *
 * @param current current, ratio to the rated one
 * @param hums chance that it hums and does not turn
 * @param silent chance that it makes no sound and does not turn
 */
record RunningMotor(double current, double hums, double silent) {

  /** At the usual voltage, whatever the conditions of the reading. */
  static final Circumstances<RunningMotor> AT_WORK = new AtWork();

  /** The power factor of a small motor at rated load, as a ratio; from memory. */
  private static final double POWER_FACTOR = 0.65;

  /** Current of a blocked rotor over the rated one, by the law that pumps follow too. */
  static final double BLOCKED =
      InductionMachine.SMALL.current(1, POWER_FACTOR, InductionMachine.IDLE_POWER);

  /** Current of the auxiliary winding alone over that of both. */
  private static final double AUXILIARY_ALONE = 0.1;

  /** Below this ratio of its capacitance a capacitor carries nothing. */
  private static final double OPEN_CAPACITOR = 0.01;

  private static final double SELDOM = 0.02;

  private static RunningMotor of(State state) {
    boolean main = state.of(MotorFigure.MAIN) < CopperCoil.OPEN;
    boolean auxiliary =
        state.of(MotorFigure.AUXILIARY) < CopperCoil.OPEN
            && state.of(MotorFigure.CAPACITANCE) > OPEN_CAPACITOR;
    double current = state.of(MotorFigure.CURRENT);
    double hums = state.of(MotorFigure.HUMS);
    if (!main) {
      return auxiliary
          ? new RunningMotor(AUXILIARY_ALONE * current, hums, 0.7)
          : new RunningMotor(0, SELDOM, 0.95);
    }
    return new RunningMotor(auxiliary ? current : Math.max(current, BLOCKED), hums, SELDOM);
  }

  private record AtWork()
      implements Circumstances<RunningMotor>, Circumstances.Solver<RunningMotor> {
    @Override
    public Circumstances.Solver<RunningMotor> under(Conditions conditions) {
      return this;
    }

    @Override
    public RunningMotor in(State state) {
      return of(state);
    }
  }
}

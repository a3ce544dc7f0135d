package kelter.hydraulics.brew;

import kelter.core.diagnosis.model.Circumstances;
import kelter.core.diagnosis.model.State;
import kelter.core.job.Conditions;
import kelter.hydraulics.pump.VibrationPump;

/**
 * The way of the brewing water. In order the jet takes 0.8 bar and the screen 0.2 bar at 500
 * mL/min; what an opening takes goes with the inverse square of its area. From memory.
 *
 * @param pump the pump in order
 * @param opening the pressure at which the over-pressure valve opens in order, Pa
 */
record BrewPath(VibrationPump pump, double opening)
    implements Circumstances<BrewPath.Brewing>, Circumstances.Solver<BrewPath.Brewing> {

  private static final double AT = 500 * BrewWords.ML_PER_MIN;
  private static final double JET = 0.8 * BrewWords.BAR / (AT * AT); // Pa s2/m6
  private static final double SCREEN = 0.2 * BrewWords.BAR / (AT * AT); // Pa s2/m6
  private static final double LEAST = 0.02; // ratio, of a pump or an opening

  @Override
  public Circumstances.Solver<Brewing> under(Conditions conditions) {
    return this;
  }

  @Override
  public Brewing in(State state) {
    double suction = Math.max(LEAST, state.of(BrewFigure.SUCTION));
    double flow = Math.max(LEAST * LEAST, state.of(BrewFigure.FLOW) * suction);
    double pressure = Math.max(LEAST, state.of(BrewFigure.PRESSURE));
    VibrationPump now = new VibrationPump(pump.freeFlow() * flow, pump.deadPressure() * pressure);
    double jet = square(JET, state.of(BrewFigure.JET));
    double screen = square(SCREEN, state.of(BrewFigure.SCREEN));
    double kept = 1 - 0.9 * state.of(BrewFigure.EXHAUST);
    double opens = opening * state.of(BrewFigure.OPENS_AT);
    return new Brewing(now, kept * now.through(jet + screen), kept * now.through(jet), opens, kept);
  }

  private static double square(double inOrder, double open) {
    double left = Math.max(LEAST, open);
    return inOrder / (left * left);
  }

  /**
   * A machine that pumps.
   *
   * @param pump the pump as it is
   * @param withScreen the flow rate at the group, m3/s
   * @param withoutScreen the same with the screen out, m3/s
   * @param opensAt the pressure at which the over-pressure valve opens, Pa
   * @param kept what does not escape through the exhaust, ratio
   */
  record Brewing(
      VibrationPump pump, double withScreen, double withoutScreen, double opensAt, double kept) {

    double freeFlow() {
      return pump.freeFlow();
    }

    /** Against a blind gauge: that of the pump or of the over-pressure valve, Pa. */
    double blind() {
      return kept * Math.min(pump.deadPressure(), opensAt);
    }
  }
}

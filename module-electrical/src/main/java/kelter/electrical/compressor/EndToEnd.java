package kelter.electrical.compressor;

import kelter.core.diagnosis.model.Circumstances;
import kelter.core.diagnosis.model.State;
import kelter.core.job.Conditions;
import kelter.electrical.copper.CopperCoil;

/**
 * Run and start winding in series, from their free ends, Ohm.
 *
 * @param run the run winding
 * @param start the start winding
 */
record EndToEnd(CopperCoil run, CopperCoil start) implements Circumstances<Double> {

  @Override
  public Solver<Double> under(Conditions conditions) {
    return new InSeries(run.under(conditions), start.under(conditions));
  }

  private record InSeries(Solver<Double> run, Solver<Double> start) implements Solver<Double> {
    @Override
    public Double in(State state) {
      return run.in(state) + start.in(state);
    }
  }
}

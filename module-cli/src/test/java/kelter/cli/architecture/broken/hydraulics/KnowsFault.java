package kelter.cli.architecture.broken.hydraulics;

import kelter.core.diagnosis.model.Circumstances;
import kelter.core.diagnosis.model.FaultRow;
import kelter.core.diagnosis.model.State;

record KnowsFault(FaultRow row) implements Circumstances.Solver<Double> {
  @Override
  public Double in(State state) {
    return row.prior();
  }
}

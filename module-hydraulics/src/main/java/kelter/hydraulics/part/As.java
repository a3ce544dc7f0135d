package kelter.hydraulics.part;

import java.util.function.ToDoubleFunction;
import kelter.core.diagnosis.model.Figure;
import kelter.core.diagnosis.model.State;

/**
 * A figure as it is, in its own unit.
 *
 * @param figure the figure
 */
public record As(Figure figure) implements ToDoubleFunction<State> {
  @Override
  public double applyAsDouble(State state) {
    return state.of(figure);
  }
}

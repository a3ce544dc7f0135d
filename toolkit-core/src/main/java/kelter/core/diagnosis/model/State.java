package kelter.core.diagnosis.model;

/**
 * The figures of a part, or of a circuit of parts, in one state. Where several components have
 * figures of their own, a state speaks for one of them; figures of the whole are the same in all.
 */
public final class State {

  private final FigurePlaces layout;
  private final double[] values;
  private final int component;

  State(FigurePlaces layout, double[] values, int component) {
    this.layout = layout;
    this.values = values;
    this.component = component;
  }

  /**
   * A figure.
   *
   * @param figure a figure of this component or of the whole
   * @return its value, in the unit of the figure
   */
  public double of(Figure figure) {
    return values[layout.place(figure, component)];
  }

  /**
   * Whether something is there that a figure counts.
   *
   * @param figure a figure that is 0 where nothing is
   * @return whether it is above 0
   */
  public boolean has(Figure figure) {
    return of(figure) > 0;
  }

  /**
   * The components that have figures of a set.
   *
   * @param figures their figures
   * @return the state as each of them has it, in the order in which the model named them; none if
   *     the circuit has no such component
   */
  public State[] each(FigureSet figures) {
    int[] components = layout.having(figures);
    State[] each = new State[components.length];
    for (int i = 0; i < each.length; i++) {
      each[i] = as(components[i]);
    }
    return each;
  }

  State as(int other) {
    return other == component ? this : new State(layout, values, other);
  }
}

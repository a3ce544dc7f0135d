package kelter.core.diagnosis.model;

import java.util.function.ToDoubleFunction;

/** How something that is read, seen, heard or smelt follows from a figure, without any physics. */
public sealed interface Look extends ToDoubleFunction<State> {

  /**
   * A figure as it is: the place on the scale of a grade, or the probability of a yes, brought into
   * the range from 0 to 1.
   *
   * @param figure the figure
   */
  record Shown(Figure figure) implements Look {
    @Override
    public double applyAsDouble(State state) {
      return Math.min(1, Math.max(0, state.of(figure)));
    }
  }

  /**
   * A value in proportion to a figure.
   *
   * @param figure the figure
   * @param ofOne the value where the figure is 1, in the coherent SI unit
   */
  record InProportion(Figure figure, double ofOne) implements Look {
    @Override
    public double applyAsDouble(State state) {
      return ofOne * state.of(figure);
    }
  }

  /**
   * The probability that somebody notices it, a logistic curve over the figure from 0.03, the
   * chance that it is said though nothing is there, to 0.97. The thresholds are those of a
   * practised person: common practice, no source.
   *
   * @param figure the figure
   * @param threshold the figure at which half of all people notice it, in its unit
   * @param width how sharp that is, in its unit: above 0 if a larger figure is noticed more, below
   *     0 if less
   */
  record Noticed(Figure figure, double threshold, double width) implements Look {
    @Override
    public double applyAsDouble(State state) {
      return probability(state.of(figure), threshold, width);
    }
  }

  /**
   * The probability that something is noticed, as {@link Noticed} has it.
   *
   * @param figure what it follows
   * @param threshold the figure at which half of all people notice it, same unit
   * @param width how sharp that is, same unit
   * @return a probability from 0.03 to 0.97
   */
  static double probability(double figure, double threshold, double width) {
    double blunder = 0.03;
    double logistic = 1 / (1 + Math.exp((threshold - figure) / width));
    return blunder + (1 - 2 * blunder) * logistic;
  }

  /**
   * The probability that something is noticed for one of two reasons.
   *
   * @param one the probability by the one, from 0 to 1
   * @param other the probability by the other, from 0 to 1
   * @return the probability that not both fail
   */
  static double either(double one, double other) {
    return 1 - (1 - one) * (1 - other);
  }
}

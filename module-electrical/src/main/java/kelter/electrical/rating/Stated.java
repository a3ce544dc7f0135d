package kelter.electrical.rating;

import java.util.Optional;
import kelter.core.quantity.Quantity;

/**
 * Figures that a job may state, in the coherent SI unit. Where it states none they are NaN, which
 * is neither above nor below any limit.
 */
public final class Stated {

  private Stated() {}

  /**
   * A figure.
   *
   * @param figure what the job states
   * @return the figure in the coherent SI unit, or NaN
   */
  public static double si(Optional<Quantity> figure) {
    return figure.isPresent() ? figure.get().si() : Double.NaN;
  }

  /**
   * A figure, or what to take where none is stated.
   *
   * @param figure what the job states
   * @param usual what is taken otherwise, in the coherent SI unit
   * @return the figure in the coherent SI unit
   */
  public static double si(Optional<Quantity> figure, double usual) {
    return figure.isPresent() ? figure.get().si() : usual;
  }

  /**
   * A figure that may stand in two places.
   *
   * @param figure what the job states in the place that counts first
   * @param otherwise what it states in the other
   * @return the figure in the coherent SI unit, or NaN
   */
  public static double si(Optional<Quantity> figure, Optional<Quantity> otherwise) {
    return si(figure.isPresent() ? figure : otherwise);
  }
}

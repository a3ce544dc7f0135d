package kelter.hydraulics.part;

import java.util.Optional;
import kelter.core.quantity.Quantity;

/** Figures that a job may give, in the coherent SI unit. */
public final class Given {

  private Given() {}

  /**
   * A figure.
   *
   * @param figure what the job gives
   * @return the figure in the coherent SI unit, or empty
   */
  public static Optional<Double> si(Optional<Quantity> figure) {
    return figure.isPresent() ? Optional.of(figure.get().si()) : Optional.empty();
  }

  /**
   * A figure, or what is taken where a job gives none.
   *
   * @param figure what the job gives
   * @param usual what is taken otherwise, in the coherent SI unit
   * @return the figure in the coherent SI unit
   */
  public static double si(Optional<Quantity> figure, double usual) {
    return figure.isPresent() ? figure.get().si() : usual;
  }

  /**
   * A figure that may stand in two places.
   *
   * @param figure what the job gives in the place that counts first
   * @param otherwise what it gives in the other
   * @return the figure in the coherent SI unit, or empty
   */
  public static Optional<Double> si(Optional<Quantity> figure, Optional<Quantity> otherwise) {
    return si(figure.isPresent() ? figure : otherwise);
  }
}

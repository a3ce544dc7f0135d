package kelter.hydraulics.part;

import java.util.Optional;
import kelter.core.job.RatedRange;
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
   * What a nameplate says.
   *
   * @param rated the figure or range of figures
   * @return the figure, or the mean of the range, in the coherent SI unit, or empty
   */
  public static Optional<Double> mean(Optional<RatedRange> rated) {
    return rated.isPresent() ? Optional.of(rated.get().meanSi()) : Optional.empty();
  }
}

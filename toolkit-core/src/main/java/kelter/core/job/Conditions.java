package kelter.core.job;

import java.util.Map;
import java.util.Optional;
import kelter.core.problem.Required;
import kelter.core.quantity.Quantity;
import kelter.core.vocabulary.Characteristic;

/**
 * The circumstances of a reading.
 *
 * @param figures what holds while the reading is taken, by the words of the module
 */
public record Conditions(Map<String, Quantity> figures) {

  /** Nothing is stated. */
  public static final Conditions NONE = new Conditions(Map.of());

  /** Checks that nothing is null. */
  public Conditions {
    figures = Required.map(figures, "conditions of a reading");
  }

  /**
   * A figure that was stated.
   *
   * @param name a word of the module
   * @return the figure, or empty if it was not stated
   */
  public Optional<Quantity> figure(String name) {
    return Optional.ofNullable(figures.get(name));
  }

  /**
   * The value of a figure, or what to take where none was stated.
   *
   * @param name a word of the module
   * @param otherwise the value to take, in the coherent SI unit
   * @return the value in the coherent SI unit
   */
  public double si(String name, double otherwise) {
    Quantity stated = figures.get(name);
    return stated == null ? otherwise : stated.si();
  }

  /**
   * A figure that was stated.
   *
   * @param figure which
   * @return the figure, or empty if it was not stated
   */
  public Optional<Quantity> figure(Characteristic figure) {
    return figure(figure.id());
  }

  /**
   * The value of a figure, or what to take where none was stated.
   *
   * @param figure which
   * @param otherwise the value to take, in the coherent SI unit
   * @return the value in the coherent SI unit
   */
  public double si(Characteristic figure, double otherwise) {
    return si(figure.id(), otherwise);
  }
}

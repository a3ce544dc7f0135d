package kelter.core.job;

import java.util.Map;
import java.util.Optional;
import kelter.core.problem.Required;
import kelter.core.quantity.Quantity;
import kelter.core.quantity.Scale;
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

  /** So far apart conditions may be that are taken as alike, as a ratio, and in K. */
  private static final double NEAR = 0.1;

  private static final double WARMER = 15;

  /**
   * Whether others are alike as far as both are told: within a tenth, or 15 K of a temperature; own
   * choice.
   *
   * @param other the circumstances of another reading
   * @return true if nothing that both tell is farther apart
   */
  public boolean isAlike(Conditions other) {
    for (Map.Entry<String, Quantity> each : figures.entrySet()) {
      double there = other.si(each.getKey(), each.getValue().si());
      double apart = Math.abs(there - each.getValue().si());
      boolean temperature = each.getValue().kind().scale() == Scale.TEMPERATURE;
      if (apart > (temperature ? WARMER : NEAR * Math.abs(each.getValue().si()))) {
        return false;
      }
    }
    return true;
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

package kelter.core.vocabulary;

import java.util.Objects;
import kelter.core.quantity.QuantityKind;

/**
 * A curve that a component has, such as head over flow rate.
 *
 * @param id the word in a job file, lower case with hyphens
 * @param title the words for a person
 * @param x what runs along the axis
 * @param y what is told at each point
 */
public record CurveKind(String id, String title, QuantityKind x, QuantityKind y) {

  /** Checks the id. */
  public CurveKind {
    Ids.require(id);
    Objects.requireNonNull(title);
    Objects.requireNonNull(x);
    Objects.requireNonNull(y);
  }
}

package kelter.core.vocabulary;

import java.util.Objects;
import kelter.core.quantity.QuantityKind;

/**
 * A figure that a component has or that holds while something is measured.
 *
 * @param id the word in a job file, lower case with hyphens
 * @param title the words for a person
 * @param kind what it measures
 */
public record Characteristic(String id, String title, QuantityKind kind) {

  /** Checks the id. */
  public Characteristic {
    Ids.require(id);
    Objects.requireNonNull(title);
    Objects.requireNonNull(kind);
  }
}

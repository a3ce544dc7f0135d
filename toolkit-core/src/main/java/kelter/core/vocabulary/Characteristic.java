package kelter.core.vocabulary;

import java.util.Objects;
import java.util.Optional;
import kelter.core.quantity.QuantityKind;

/**
 * A figure that a component has or that holds while something is measured.
 *
 * @param id the word in a job file, lower case with hyphens
 * @param title the words for a person
 * @param kind what it measures
 * @param span everything that it can be, in the coherent SI unit; empty where its kind says that
 *     ({@link Possible})
 */
public record Characteristic(String id, String title, QuantityKind kind, Optional<Span> span) {

  /** Checks the id. */
  public Characteristic {
    Ids.require(id);
    Objects.requireNonNull(title);
    Objects.requireNonNull(kind);
    Objects.requireNonNull(span);
  }

  /**
   * A figure that can be what its kind can be.
   *
   * @param id the word in a job file, lower case with hyphens
   * @param title the words for a person
   * @param kind what it measures
   */
  public Characteristic(String id, String title, QuantityKind kind) {
    this(id, title, kind, Optional.empty());
  }

  /**
   * The same with a span of its own.
   *
   * @param own everything that it can be, in the coherent SI unit
   * @return the figure
   */
  public Characteristic within(Span own) {
    return new Characteristic(id, title, kind, Optional.of(own));
  }
}

package kelter.core.module;

import java.util.Objects;
import kelter.core.quantity.QuantityKind;
import kelter.core.quantity.Unit;
import kelter.core.vocabulary.Ids;

/**
 * What a calculation gives.
 *
 * @param id the word in a result
 * @param title the words for a person
 * @param kind what it measures
 */
public record Output(String id, String title, QuantityKind kind) {

  /** Checks the id. */
  public Output {
    Ids.require(id);
    Objects.requireNonNull(title);
    Objects.requireNonNull(kind);
  }

  /**
   * The same told in another unit.
   *
   * @param unit a unit that fits the kind
   * @return the output
   */
  Output toldIn(Unit unit) {
    return new Output(id, title, kind.toldIn(unit));
  }
}

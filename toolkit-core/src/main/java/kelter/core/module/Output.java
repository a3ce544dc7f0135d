package kelter.core.module;

import java.util.Objects;
import kelter.core.quantity.QuantityKind;
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
}

package kelter.core.shop;

import java.util.Objects;
import java.util.Optional;
import kelter.core.vocabulary.Ids;

/**
 * What a column of the shop's instrument logs holds.
 *
 * @param column the heading of the column, as it stands in the logs
 * @param component the id of the component that it speaks of
 * @param observable the word for the observable
 * @param condition the word for a condition of that observable, if the column holds the condition
 * @param unit the unit of the column, if its heading does not tell it, as a person writes it
 * @param instrument the id of the instrument that wrote it, if it is known
 */
public record LogColumn(
    String column,
    String component,
    String observable,
    Optional<String> condition,
    Optional<String> unit,
    Optional<String> instrument) {

  /**
   * Checks the words.
   *
   * @throws IllegalArgumentException if the heading is blank or a word is not an id
   */
  public LogColumn {
    if (column.isBlank()) {
      throw new IllegalArgumentException("the heading of a column is not blank");
    }
    Ids.require(component);
    Ids.require(observable);
    condition.ifPresent(Ids::require);
    Objects.requireNonNull(unit);
    instrument.ifPresent(Ids::require);
  }

  /**
   * What the column holds, in one word.
   *
   * @return component, observable and condition joined by dots
   */
  public String target() {
    return component + "." + observable + condition.map(word -> "." + word).orElse("");
  }
}

package kelter.core.job;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import kelter.core.vocabulary.Ids;

/**
 * What was read of an observable: one reading, or several of the same thing under the same
 * conditions.
 *
 * @param component the id of the component
 * @param observable the word for the observable
 * @param readings one reading or more
 * @param conditions the circumstances
 * @param instrument the id of the instrument, if one is named
 * @param note a remark, may be empty
 */
public record Measurement(
    String component,
    String observable,
    List<Reading> readings,
    Conditions conditions,
    Optional<String> instrument,
    String note) {

  /**
   * Checks the readings.
   *
   * @throws IllegalArgumentException if there is no reading
   */
  public Measurement {
    Ids.require(component);
    Ids.require(observable);
    readings = List.copyOf(readings);
    Objects.requireNonNull(conditions);
    Objects.requireNonNull(instrument);
    Objects.requireNonNull(note);
    if (readings.isEmpty()) {
      throw new IllegalArgumentException("a measurement has a reading");
    }
  }
}

package kelter.core.diagnosis;

import java.util.Objects;
import kelter.core.source.Source;
import kelter.core.vocabulary.Ids;

/**
 * Something that nobody has measured and that moves several forecasts of a model together, such as
 * the voltage of the mains or the temperature of the supplied water. It is a standard normal
 * deviate: 0 at what is usual, 1 where it is one standard deviation higher. Readings that depend on
 * it are weighed jointly, so that what they have in common is not counted twice.
 *
 * @param id a word for it, unique in the model
 * @param title the words for a person, with its standard deviation and unit
 * @param source where the standard deviation comes from
 * @param standsIn whether it stands in for a figure that the job could state, so that it is told
 */
public record SharedQuantity(String id, String title, Source source, boolean standsIn) {

  /**
   * A quantity that no job states.
   *
   * @param id a word for it, unique in the model
   * @param title the words for a person, with its standard deviation and unit
   * @param source where the standard deviation comes from
   */
  public SharedQuantity(String id, String title, Source source) {
    this(id, title, source, false);
  }

  /** Checks the id. */
  public SharedQuantity {
    Ids.require(id);
    Objects.requireNonNull(title);
    Objects.requireNonNull(source);
  }
}

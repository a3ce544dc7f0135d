package kelter.core.catalogue;

import java.util.Objects;
import kelter.core.quantity.Quantity;
import kelter.core.vocabulary.Ids;

/**
 * What has to come off before parts can be reached.
 *
 * @param id its name within the kind
 * @param title the cover, for a person
 * @param minutes how long it takes off and on, as a time
 */
public record Cover(String id, String title, Quantity minutes) {

  /** Checks words. */
  public Cover {
    Ids.require(id);
    Objects.requireNonNull(title);
    Objects.requireNonNull(minutes);
  }
}
